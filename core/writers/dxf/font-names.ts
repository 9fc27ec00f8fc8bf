/** The names that a TrueType font gives itself in its `name` table (OpenType specification, name IDs 1 and 6). */
import { type Font } from '../../drafting/font.ts';

export interface FontNames {
  /** As an operating system lists it. */
  readonly family: string;
  /** One word; the font's file is usually called so. */
  readonly postScript: string;
}

const WINDOWS = 3;

/** Throws where the font does not name itself: the font comes with the program. */
export function fontNames(font: Font): FontNames {
  const names = readNames(font.bytes);
  const name = (id: number): string => {
    const found = names.get(id);
    if (found === undefined) throw new Error(`font has no name ${String(id)}`);
    return found;
  };
  return { family: name(1), postScript: name(6) };
}

function readNames(bytes: Uint8Array): Map<number, string> {
  const view = new DataView(bytes.buffer, bytes.byteOffset, bytes.byteLength);
  const table = findTable(view, 'name');
  const texts = table + view.getUint16(table + 4);
  const out = new Map<number, string>();
  for (let i = 0; i < view.getUint16(table + 2); i += 1) {
    const at = table + 6 + 12 * i;
    if (view.getUint16(at) !== WINDOWS) continue;
    const units: number[] = [];
    for (let k = 0; k < view.getUint16(at + 8); k += 2) units.push(view.getUint16(texts + view.getUint16(at + 10) + k));
    out.set(view.getUint16(at + 6), String.fromCharCode(...units));
  }
  return out;
}

function findTable(view: DataView, tag: string): number {
  for (let i = 0; i < view.getUint16(4); i += 1) {
    const at = 12 + 16 * i;
    if ([...tag].every((char, k) => view.getUint8(at + k) === char.charCodeAt(0))) return view.getUint32(at + 8);
  }
  throw new Error(`font has no ${tag} table`);
}
