/** Ways out for people and for the last animal: the brief's openings, which a later version draws. */
import { say } from '../../text/index.ts';
import { judged, later, type Judge } from '../outcome.ts';

/** Where cattle are shut in and people go after them. */
const CONFINED = ['crowd-pen', 'chute'] as const;

const eachPlace = (key: 'where.noManGate' | 'where.noWayOut'): Judge => ({ brief, layout }) => {
  if (brief.later.openings > 0) return later();
  return CONFINED.map((place) => judged(false, 0, say(key, { place }), place === 'chute' ? layout.mouth : layout.pivot));
};

/** No opening at all is no escape: that is unmet whatever this version draws. */
export const manGate = eachPlace('where.noManGate');
export const loneAnimal = eachPlace('where.noWayOut');
