import { type Brief } from '../../brief/types.ts';
import { type Fence, type Layout } from '../../layout/index.ts';
import { type DraftPiece } from '../draft-piece.ts';
import { type FaultList } from '../faults.ts';
import { deckPieces } from './deck-pieces.ts';
import { formTemplate } from './form-template.ts';
import { copedSlopeRails, lappedSlopeRails, slopedSpans } from './slope-rails.ts';
import { slopeSkins } from './slope-skins.ts';

/** Whether a fence stands beside a ramp: its rails and skins follow the slope. */
export const isRampFence = (layout: Layout, fence: Pick<Fence, 'run'>): boolean => layout.ramps.some((ramp) => ramp.name === fence.run);

/** Rails, skins, planks, cleats and bumpers of every ramp; its posts are made with all others. */
export function rampPieces(brief: Brief, layout: Layout, faults: FaultList): readonly DraftPiece[] {
  return layout.ramps.flatMap((ramp) => {
    const spans = layout.fences.filter((fence) => fence.run === ramp.name).flatMap((fence) => slopedSpans(ramp, fence));
    const fenced = spans.flatMap((sloped) => [
      ...(sloped.fence.brief.construction === 'lapped' ? lappedSlopeRails(brief, sloped, faults) : copedSlopeRails(brief, sloped, faults)),
      ...slopeSkins(brief, sloped, faults),
    ]);
    return [...fenced, ...deckPieces(ramp), ...formTemplate(ramp)];
  });
}
