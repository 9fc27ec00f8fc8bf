import { type Brief } from '../brief/index.ts';
import { type Layout } from '../layout/index.ts';
import { type Parts } from '../parts/index.ts';
import {
  bendRows, type BendRow, type MaterialLine, materialLines, type OpeningRow, openingRows, pieceRows, type PieceRow, stakeoutRows, type StakeRow, stations, type Stations, type WeldRow, weldRows,
} from '../schedules/index.ts';
import { plateRows, type PlateRow } from '../shop/plates/index.ts';
import { sheetsOf, type ShopPlates } from '../shop/nesting/index.ts';

/** Every schedule of a project, as rows with full figures. */
export interface Schedules {
  readonly pieces: readonly PieceRow[];
  readonly bends: readonly BendRow[];
  readonly materials: readonly MaterialLine[];
  readonly openings: readonly OpeningRow[];
  readonly plates: readonly PlateRow[];
  readonly stakeout: readonly StakeRow[];
  readonly welds: readonly WeldRow[];
  readonly stations: Stations;
  /** How the plates lie on stock sheets: the bill buys these. */
  readonly nests: ShopPlates;
}

export function scheduleRows(brief: Brief, layout: Layout, parts: Parts, cut: ShopPlates): Schedules {
  const welds = weldRows(brief, layout, parts);
  return {
    pieces: pieceRows(parts),
    bends: bendRows(brief, parts),
    materials: materialLines(brief, layout, parts, welds),
    openings: openingRows(brief, layout),
    plates: plateRows(cut.plates, (mark) => sheetsOf(cut, mark)),
    stakeout: stakeoutRows(brief, layout),
    welds,
    stations: stations(brief, layout),
    nests: cut,
  };
}
