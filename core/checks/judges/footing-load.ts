import { type Brief } from '../../brief/types.ts';
import { say } from '../../text/index.ts';
import { printWeight } from '../../units/index.ts';
import { judged, unset, type Judge, type Outcome } from '../outcome.ts';
import { postDepths } from '../post-depths.ts';
import { least, limitText, meets } from '../rules/limit.ts';
import { depthNeeded } from '../strength/post-in-ground.ts';
import { soilBearing } from '../strength/soil-bearing.ts';
import { printed, printedBearing } from '../words/print.ts';

/**
 * Each depth at which posts stand against the depth that the brief's load asks for. No load is guessed: a person gives it
 * (`footings.load`). The ground's resistance is not doubled for a post that may move (IBC 1806.3.4): nobody said that it may.
 */
export const footingLoad: Judge = ({ brief, layout }) => {
  const { postLoad, site: { soil } } = brief;
  if (postLoad === null) return [{ verdict: 'look', measured: null, where: say('where.loadUnset'), at: null }];
  if (soil === null) return unset(['site.soil']);
  const { load, height, heldAtSurface } = postLoad;
  const push = { load, height: height / 12, width: brief.footings.diameter / 12 };
  const needed = depthNeeded(push, soilBearing(soil), heldAtSurface) * 12;
  const limit = least(needed);
  return postDepths(layout).map(({ depth, posts }): Outcome => ({
    ...judged(meets(limit, depth), depth, say('where.footing', {
      count: posts.length, depth: printed(brief, depth), needed: printed(brief, needed), ...pushWords(brief, soil, load, height, heldAtSurface),
    }), posts.length === 1 ? posts[0]?.at ?? null : null),
    limit: limitText(limit),
  }));
};

const pushWords = (brief: Brief, soil: NonNullable<Brief['site']['soil']>, load: NonNullable<Brief['postLoad']>['load'], height: number, held: boolean): Record<string, string> => ({
  load: printWeight(load, brief.units),
  height: printed(brief, height),
  hole: printed(brief, brief.footings.diameter),
  soil: printedBearing(brief, soilBearing(soil)),
  held: say(held ? 'where.footingHeld' : 'where.footingFree'),
});
