/** Handles of the fences: the post spacing, taken hold of at the second post. */
import { angleOf, sub } from '../../base/points.ts';
import { type Brief } from '../../brief/types.ts';
import { facePoint, headingAt, lengthAtOffset, radiusAtOffset, type Fence, type Layout } from '../../layout/index.ts';
import { say } from '../../text/index.ts';
import { type Drag, type Handle } from '../types.ts';
import { rangeOf } from './range-of.ts';

export function fenceHandles(_brief: Brief, layout: Layout): readonly Handle[] {
  const counts = new Map<string, number>();
  return layout.fences.flatMap((fence) => {
    const path = fence.brief.postSpacingPath;
    const number = (counts.get(path) ?? 0) + 1;
    counts.set(path, number);
    const handle = spacingHandle(fence, `${path} ${String(number)}`);
    return handle === null ? [] : [handle];
  });
}

/**
 * The spacing is the most that a bay may be, so a bay is often less: the hand moves the second post from where it stands, and the
 * figure by as much as the post is moved along the post line.
 */
function spacingHandle(fence: Fence, id: string): Handle | null {
  const [first, second] = fence.spans[0]?.posts ?? [];
  if (first === undefined || second === undefined) return null;
  const { k } = fence.section;
  const bay = lengthAtOffset(fence, first, second, k);
  const spare = fence.brief.postSpacing - bay;
  const at = facePoint(fence, second, k);
  return {
    id, path: fence.brief.postSpacingPath, label: say('board.handle.spacing', { run: fence.run, side: say(`drawings.side.${fence.side}`) }),
    figure: 'length', run: fence.run, at, grows: headingAt(fence, second), drag: dragOf(fence, first, spare),
    value: fence.brief.postSpacing, ...rangeOf('postSpacing'),
  };
}

function dragOf(fence: Fence, first: number, offset: number): Drag {
  const { face, section: { k } } = fence;
  const origin = facePoint(fence, first, k);
  const radius = radiusAtOffset(fence, k);
  if (face.kind === 'line' || radius === null) return { kind: 'along', origin, along: headingAt(fence, first), factor: 1, offset };
  return { kind: 'round', center: face.center, from: angleOf(sub(origin, face.center)), factor: Math.sign(face.sweep) * radius, offset };
}
