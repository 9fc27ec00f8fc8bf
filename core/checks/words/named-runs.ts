/**
 * The runs that a finding's place names: `chute-2, 16'-0"` names chute-2, and `chute left and right` every run of the chute. Run names
 * are the format's and stand in every language's words.
 */
export function namedRuns(where: string, runs: readonly string[]): readonly string[] {
  const names = new Set(where.match(/[a-z]+(?:-[a-z]+)*(?:-\d+)?/g) ?? []);
  return runs.filter((run) => names.has(run) || names.has(run.replace(/-\d+$/, '')));
}
