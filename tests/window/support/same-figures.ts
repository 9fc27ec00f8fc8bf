/** Where two texts are not the same but for figures that differ by no more than 1e-9, of their size where that is over 1; null: they are. */
export function firstDifference(a: string, b: string): string | null {
  if (a === b) return null;
  const figure = /-?\d+(?:\.\d+)?(?:[eE][+-]?\d+)?/g;
  const words = (text: string): string[] => text.split(figure);
  const figures = (text: string): number[] => [...text.matchAll(figure)].map(([found]) => Number(found));
  const [wordsA, wordsB, figuresA, figuresB] = [words(a), words(b), figures(a), figures(b)];
  if (wordsA.length !== wordsB.length) return `${String(wordsA.length)} words, not ${String(wordsB.length)}`;
  for (const [index, word] of wordsA.entries()) {
    if (word !== wordsB[index]) return `"${word.slice(0, 40)}", not "${(wordsB[index] ?? '').slice(0, 40)}"`;
    const [left, right] = [figuresA[index], figuresB[index]];
    if (left === undefined || right === undefined) continue;
    if (!(Math.abs(left - right) <= 1e-9 * Math.max(1, Math.abs(left)))) return `${String(left)}, not ${String(right)}, after "${word.slice(-40)}"`;
  }
  return null;
}
