/** What the site decides. */
import { say } from '../../text/index.ts';
import { judged, later, none, unset, type Judge } from '../outcome.ts';

export const tenure: Judge = ({ brief }) => {
  switch (brief.site.tenure) {
    case null: return unset(['site.tenure']);
    case 'owned': return [judged(true, null, say('where.owned'))];
    case 'leased': return [judged(false, null, say('where.leased'))];
  }
};

/** A note for a person: no brief names its lamps. */
export const nightLight: Judge = () => [{ verdict: 'look', measured: null, where: say('where.lightNote'), at: null }];

/** Of a catwalk outside the United States. */
export const railOtherJurisdiction: Judge = ({ brief }) => {
  if (brief.later.catwalks === 0 || brief.site.jurisdiction === 'us') return none();
  return brief.site.jurisdiction === null ? unset(['site.jurisdiction']) : later();
};
