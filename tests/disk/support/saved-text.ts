/** A project's text that tells whether it is whole: its number, and as much filling as the number asks for. */
export function textOf(n: number): string {
  const fill = String(n % 10).repeat(20_000 + ((n * 7919) % 400_000));
  return JSON.stringify({ n, fill });
}

/** The number of a whole text. Throws for one that is not whole. */
export function numberIn(text: string): number {
  const { n } = JSON.parse(text) as { n: number };
  if (text !== textOf(n)) throw new Error(`text ${String(n)} is not whole: ${String(text.length)} of ${String(textOf(n).length)}`);
  return n;
}
