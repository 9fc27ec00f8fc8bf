import { pounds } from '../../base/quantity.ts';
import { say } from '../../text/index.ts';
import { printWeight } from '../../units/index.ts';
import { DEFAULTS } from '../defaults.ts';
import { type ProjectFile } from '../schema/project.ts';
import { type Brief } from '../types.ts';
import { type Filler } from './filler.ts';

export function resolveRevision(file: ProjectFile, filler: Filler): Brief['revision'] {
  const { letter, date, note } = file.revision ?? {};
  return {
    letter: filler.word('revision.letter', letter, DEFAULTS.revisionLetter),
    date: filler.word('revision.date', date, ''),
    note: filler.word('revision.note', note, ''),
  };
}

export function resolveRevisions(file: ProjectFile, filler: Filler): Brief['revisions'] {
  if (file.revisions === undefined) filler.note('revisions', say('term.none'));
  return (file.revisions ?? []).map(({ letter, date, note }, i) => ({
    letter,
    date: filler.word(`revisions[${String(i)}].date`, date, ''),
    note: filler.word(`revisions[${String(i)}].note`, note, ''),
  }));
}

/** What of the site was said; the rest stays unset, and what needs it says so. */
export function resolveSite(file: ProjectFile, filler: Filler): Brief['site'] {
  const site = file.site ?? {};
  return {
    latitude: filler.unset('site.latitude', site.latitude),
    longitude: filler.unset('site.longitude', site.longitude),
    timeZone: filler.unset('site.timeZone', site.timeZone),
    bearing: filler.unset('site.bearing', site.bearing),
    soil: filler.unset('site.soil', site.soil),
    volume: filler.unset('site.volume', site.volume),
    jurisdiction: filler.unset('site.jurisdiction', site.jurisdiction),
    tenure: filler.unset('site.tenure', site.tenure),
    work: filler.unset('site.work', site.work),
  };
}

export function resolveCattle(file: ProjectFile, filler: Filler): Brief['cattle'] {
  const cattle = file.cattle ?? {};
  const { weight, kind, flighty, horned, bodyLength, eyeHeight, headPerDay } = DEFAULTS.cattle;
  if (cattle.weight === undefined) filler.note('cattle.weight', printWeight(pounds(weight), filler.units));
  return {
    weight: cattle.weight ?? pounds(weight),
    kind: filler.word('cattle.kind', cattle.kind, kind),
    flighty: filler.flag('cattle.flighty', cattle.flighty, flighty),
    horned: filler.flag('cattle.horned', cattle.horned, horned),
    bodyLength: filler.length('cattle.bodyLength', cattle.bodyLength, bodyLength),
    eyeHeight: filler.length('cattle.eyeHeight', cattle.eyeHeight, eyeHeight),
    headPerDay: filler.number('cattle.headPerDay', cattle.headPerDay, headPerDay),
  };
}
