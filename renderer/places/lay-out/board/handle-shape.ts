/** What a handle looks like: a ring on the sheet with an arrow the way its figure grows. Small to see, wide to touch. */
import { type Container, type G } from '@svgdotjs/svg.js';
import { type Handle } from '../../../../core/board/types.ts';

/** Half of 44 pixels and a little, so that a gloved finger finds it. */
const TOUCH = 23;
const RING = 7;

export interface HandleShape {
  readonly group: G;
  /** Where it stands and the way of its arrow (radians, counter-clockwise). */
  put(x: number, y: number, grows: number): void;
}

export function handleShape(parent: Container, figure: Handle['figure']): HandleShape {
  const group = parent.group().addClass('handle');
  group.element('circle').attr({ r: TOUCH }).addClass('handle-touch');
  group.element('circle').attr({ r: TOUCH - 4 }).addClass('handle-focus');
  const arrow = group.element('path').addClass('handle-arrow');
  // A length's arrow is straight, an angle's lies on a turn.
  arrow.attr('d', figure === 'length' ? 'M10 0H26M20 -4L27 0L20 4' : 'M9 -2Q19 -2 25 7M24 -1L26 8L18 5');
  group.element('circle').attr({ r: RING }).addClass('handle-ring');
  let shown = '';
  return {
    group,
    put: (x, y, grows) => {
      const where = `translate(${x.toFixed(1)} ${y.toFixed(1)})`;
      if (where !== shown) group.node.setAttribute('transform', where);
      shown = where;
      arrow.node.setAttribute('transform', `rotate(${((-grows * 180) / Math.PI).toFixed(1)})`);
    },
  };
}
