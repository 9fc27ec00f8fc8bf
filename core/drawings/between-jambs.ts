import { type Fence } from '../layout/index.ts';

/** The parts of a stretch of face (inches along it) that are fence: what an opening takes between its jambs is left out. */
export function betweenJambs(fence: Fence, from: number, to: number): readonly (readonly [number, number])[] {
  return fence.spans
    .map((span) => [
      Math.max(from, span.start.kind === 'jamb' ? span.skinFrom : -Infinity),
      Math.min(to, span.end.kind === 'jamb' ? span.skinTo : Infinity),
    ] as const)
    .filter(([a, b]) => b > a);
}
