/** What the site decides. */
import { say } from '../../text/index.ts';
import { judged, unset, type Judge } from '../outcome.ts';

export const tenure: Judge = ({ brief }) => {
  switch (brief.site.tenure) {
    case null: return unset(['site.tenure']);
    case 'owned': return [judged(true, null, say('where.owned'))];
    case 'leased': return [judged(false, null, say('where.leased'))];
  }
};

/** A note for a person: no brief names its lamps. */
export const nightLight: Judge = () => [{ verdict: 'look', measured: null, where: say('where.lightNote'), at: null }];
