/** A path of a fault as steps: `shop.stock["pipe 2 sch 40"][0]`. */
export function stepsOf(path: string): (string | number)[] {
  return [...path.matchAll(/\["((?:[^"\\]|\\.)*)"\]|\[(\d+)\]|([^.[\]]+)/g)].map(([, quoted, index, name]) =>
    quoted !== undefined ? (JSON.parse(`"${quoted}"`) as string) : index !== undefined ? Number(index) : (name ?? ''));
}
