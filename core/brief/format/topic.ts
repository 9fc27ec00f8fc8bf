/**
 * The topic of a place, under which its label and help stand: settings of all fences share theirs, and so do the runs of alley,
 * chute and return alley. `fences.chute.left.height` gives `fence.height`, `alley.runs[].angle` gives `runs[].angle`, any other its own pattern.
 */
export function topicOf(pattern: string): string {
  const fence = /^fences\.\w+\.(?:(?:left|right)\.)?(\w+)$/.exec(pattern);
  if (fence?.[1] !== undefined) return `fence.${fence[1]}`;
  const run = /^(?:alley|chute|returnAlley)\.(runs\[\].*)$/.exec(pattern);
  return run?.[1] ?? pattern;
}
