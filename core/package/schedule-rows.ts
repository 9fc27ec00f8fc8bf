import { type Brief } from '../brief/index.ts';
import { type Layout } from '../layout/index.ts';
import { type Parts } from '../parts/index.ts';
import {
  bendRows, type BendRow, materialRows, type MaterialRow, pieceRows, type PieceRow, stakeoutRows, type StakeRow, stations, type Stations,
} from '../schedules/index.ts';

/** Every schedule of a project, as rows with full figures. */
export interface Schedules {
  readonly pieces: readonly PieceRow[];
  readonly bends: readonly BendRow[];
  readonly materials: readonly MaterialRow[];
  readonly stakeout: readonly StakeRow[];
  readonly stations: Stations;
}

export const scheduleRows = (brief: Brief, layout: Layout, parts: Parts): Schedules => ({
  pieces: pieceRows(parts),
  bends: bendRows(brief, parts),
  materials: materialRows(brief, parts),
  stakeout: stakeoutRows(brief, layout),
  stations: stations(brief, layout),
});
