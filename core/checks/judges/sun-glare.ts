import { say } from '../../text/index.ts';
import { judged, unset, type Judge } from '../outcome.ts';
import { lowSuns, sunSite } from '../sun/low-suns.ts';
import { runGlare } from '../sun/run-glare.ts';
import { glareWords } from '../words/glare.ts';

/**
 * Each run against the sun. Measured: the least angle between the way the cattle walk and a sun under 30 deg, in working hours; met
 * where that is over 30 deg or the sun is never low then. Sun and heading are compared from above, as they lie on a compass.
 */
export const sunGlare: Judge = ({ brief, layout }) => {
  const site = sunSite(brief);
  if (!('work' in site)) return unset(site);
  const suns = lowSuns(site);
  return layout.runs.filter((run) => run.length > 0).map((run) => {
    const glare = runGlare(run, site.bearing, suns);
    return judged(glare.hours.length === 0, glare.least, say('where.glare', { run: run.name, hours: glareWords(glare) }), glare.at);
  });
};
