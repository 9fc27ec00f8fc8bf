/** The best of so many runs, milliseconds: what the machine can do when nothing else disturbs it. `prepare` is not timed. */
export function best<T>(runs: number, prepare: (run: number) => T, work: (input: T) => void): number {
  let least = Infinity;
  for (let run = 0; run < runs; run += 1) {
    const input = prepare(run);
    const begun = performance.now();
    work(input);
    least = Math.min(least, performance.now() - begun);
  }
  return least;
}

export const ms = (value: number): string => `${value.toFixed(value < 10 ? 2 : 1)} ms`;

/** A table in columns as wide as they need. */
export function table(rows: readonly (readonly string[])[]): string {
  const widths = (rows[0] ?? []).map((_, column) => Math.max(...rows.map((row) => (row[column] ?? '').length)));
  return rows.map((row) => row.map((cell, column) => (column === 0 ? cell.padEnd(widths[column] ?? 0) : cell.padStart(widths[column] ?? 0))).join('   ')).join('\n');
}
