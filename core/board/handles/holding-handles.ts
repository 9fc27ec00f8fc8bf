/** Handles of the holding pens: the length at the near corner upstream, the width at the back. */
import { angleOf, sub } from '../../base/points.ts';
import { type Brief } from '../../brief/types.ts';
import { type Layout } from '../../layout/index.ts';
import { say } from '../../text/index.ts';
import { type Handle } from '../types.ts';
import { rangeOf } from './range-of.ts';

/** The row stands still at the alley: a pen's downstream end does whatever its figures are. */
export function holdingHandles(_: Brief, layout: Layout): readonly Handle[] {
  const { least, greatest } = rangeOf('holdingPen');
  return layout.holdingPens.flatMap(({ brief: { name, path, length, width }, corners: [start, end, far] }): readonly Handle[] => {
    const [upstream, out] = [angleOf(sub(start, end)), angleOf(sub(far, end))];
    const common = { figure: 'length', run: name, least } as const;
    return [
      {
        ...common, id: `${path}.length`, path: `${path}.length`, label: say('board.handle.holdingLength', { run: name }), at: start, grows: upstream,
        drag: { kind: 'along', origin: end, along: upstream, factor: 1, offset: 0 }, value: length, greatest: Math.max(greatest, length),
      },
      {
        ...common, id: `${path}.width`, path: `${path}.width`, label: say('board.handle.holdingWidth', { run: name }), at: far, grows: out,
        drag: { kind: 'along', origin: end, along: out, factor: 1, offset: 0 }, value: width, greatest: Math.max(greatest, width),
      },
    ];
  });
}
