import { type Vec } from '../../../../core/base/points.ts';

export interface BoardCorner {
  /** Pixels from the window's upper left corner. */
  at(): Vec;
  /** What stands around the board has moved. */
  forget(): void;
  end(): void;
}

/** Where the board stands in the window, asked of the page only after something may have moved it: a scroll, a new size, a hand that comes down or in. */
export function boardCorner(element: Element): BoardCorner {
  let known: Vec | null = null;
  const forget = (): void => { known = null; };
  const events = [['scroll', window], ['resize', window], ['pointerdown', element], ['pointerenter', element]] as const;
  for (const [name, target] of events) target.addEventListener(name, forget, true);
  return {
    at: () => {
      if (known === null) {
        const { left, top } = element.getBoundingClientRect();
        known = { x: left, y: top };
      }
      return known;
    },
    forget,
    end: () => { for (const [name, target] of events) target.removeEventListener(name, forget, true); },
  };
}
