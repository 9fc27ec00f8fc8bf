/** Where in the project file a run of the walk is said. */
export interface RunPlace {
  readonly part: 'alley' | 'chute';
  readonly index: number;
}

/** `chute-2` is the chute's second run. null: a run that no list holds, as the crowd pen. */
export function runPlace(run: string): RunPlace | null {
  const match = /^(alley|chute)-(\d+)$/.exec(run);
  if (match === null) return null;
  return { part: match[1] === 'alley' ? 'alley' : 'chute', index: Number(match[2]) - 1 };
}

export const runName = ({ part, index }: RunPlace): string => `${part}-${String(index + 1)}`;
export const runPath = ({ part, index }: RunPlace): string => `${part}.runs[${String(index)}]`;
