/** What a hand may take hold of on the live plan. */
import { type Brief } from '../../brief/types.ts';
import { type Layout } from '../../layout/index.ts';
import { type Handle } from '../types.ts';
import { catwalkHandles } from './catwalk-handles.ts';
import { fenceHandles } from './fence-handles.ts';
import { gateWidthHandles } from './gate-width-handles.ts';
import { holdingHandles } from './holding-handles.ts';
import { openingHandles } from './opening-handles.ts';
import { penHandles } from './pen-handles.ts';
import { rampHandles } from './ramp-handles.ts';
import { roofHandles } from './roof-handles.ts';
import { runHandles } from './run-handles.ts';
import { yardHandles } from './yard-handles.ts';

/** Who has handles to give; what is built later adds its own here. */
const GIVERS: readonly ((brief: Brief, layout: Layout) => readonly Handle[])[] = [penHandles, runHandles, fenceHandles, openingHandles, gateWidthHandles, catwalkHandles, rampHandles, yardHandles, roofHandles, holdingHandles];

/** Every handle of a set-out brief, each field's figure, place and range. Lengths in inches, angles in radians. */
export function handles(brief: Brief, layout: Layout): readonly Handle[] {
  return GIVERS.flatMap((give) => give(brief, layout));
}
