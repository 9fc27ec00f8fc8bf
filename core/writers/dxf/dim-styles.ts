/** One dimension style for each scale among the views: its factor makes a drawn length read as steel. */
import { type Sheet } from '../../drafting/primitives.ts';

export interface DimStyle {
  readonly name: string;
  /** DIMLFAC: what a length in drawing units is multiplied by before it is read. 1 at the drawing's own scale. */
  readonly factor: number;
}

export interface DimStyles {
  readonly all: readonly DimStyle[];
  /** The style of a view. Throws where the sheet has no such view. */
  of(view: string): DimStyle;
  /** At the sheet's own scale. */
  readonly main: DimStyle;
}

/** Styles are numbered as their scales first come up; the sheet's own scale is always the first. */
export function dimStylesOf(sheet: Sheet): DimStyles {
  const main: DimStyle = { name: 'SIZES-1', factor: 1 };
  const byScale = new Map<number, DimStyle>([[sheet.scale, main]]);
  const byView = new Map<string, DimStyle>();
  for (const view of sheet.views) {
    if (!(view.scale > 0)) throw new Error(`view ${view.id} has no scale: ${String(view.scale)}`);
    const style = byScale.get(view.scale) ?? { name: `SIZES-${String(byScale.size + 1)}`, factor: sheet.scale / view.scale };
    byScale.set(view.scale, style);
    byView.set(view.id, style);
  }
  return {
    main,
    all: [...byScale.values()],
    of: (view) => {
      const style = byView.get(view);
      if (style === undefined) throw new Error(`sheet ${sheet.number} has no view ${view}`);
      return style;
    },
  };
}
