import { printLength } from '../../units/index.ts';
import { showValue } from '../json/show-value.ts';
import { type Judged } from '../judged.ts';
import { pathText } from '../path-fault.ts';

const numbered = (name: string, count: number): readonly string[] => Array.from({ length: count }, (_, index) => `${name}-${String(index + 1)}`);

/** The drive alley along the holding pens, and the fences round them. */
const holdingNames = (count: number): readonly string[] =>
  numbered('hold', count).flatMap((name, i) => [name, ...(i === 0 ? [`${name}-start`] : []), `${name}-back`, `${name}-end`]);

/** The sort alley's runs, each with the fences of its pen: the start of one that the pen before it on its side has built is that one's end. */
const sortNames = (pens: readonly { readonly side: string }[]): readonly string[] => pens.flatMap(({ side }, i) => {
  const name = `sort-${String(i + 1)}`;
  return [name, ...(i > 0 && pens[i - 1]!.side === side ? [] : [`${name}-in`]), `${name}-back`, `${name}-out`];
});

/** The names of the runs of a project, in walking order, and `chute` for the whole of it. */
function runNames({ file }: Judged): readonly string[] {
  const ramps = file.ramps ?? [];
  return [
    ...holdingNames(file.holdingPens?.length ?? 0), ...numbered('alley', file.alley?.runs?.length ?? 1), 'crowd-pen', 'junction', 'chute', ...numbered('chute', file.chute?.runs?.length ?? 0),
    ...(file.squeezePad === undefined ? [] : ['squeeze-pad']), ...sortNames(file.sortPens ?? []),
    ...numbered('return', file.returnAlley?.runs?.length ?? 0),
    ...numbered('load', ramps.filter(({ kind }) => kind === 'load').length), ...numbered('unload', ramps.filter(({ kind }) => kind === 'unload').length),
  ];
}

/** The lists that the names of runs follow from: where one is faulty, no name can be called wrong. */
const NAME_SOURCES = [['returnAlley'], ['holdingPens'], ['alley', 'runs'], ['chute', 'runs'], ['squeezePad'], ['sortPens'], ['ramps']];

/** Runs with a fence on either side and an even width between them. */
const TWO_SIDED = /^(chute|(hold|alley|chute|return)-\d+)$/;

/** Openings and catwalks stand on runs that there are; what makes them is whole. */
export function holdSubjects(judged: Judged): void {
  const { file } = judged;
  const names = runNames(judged);
  const unknowable = NAME_SOURCES.some((place) => judged.isFaulty(place));
  const holdRun = (list: string, index: number, run: string): void => {
    if (!unknowable && !names.includes(run)) {
      judged.report([list, index, 'run'], 'fault.run-name', { value: showValue(run), allowed: names.slice(0, 60).join(', ') });
    }
  };
  file.openings?.forEach((opening, index) => {
    holdRun('openings', index, opening.run);
    if (opening.kind !== 'backstop' && opening.side === undefined) judged.report(['openings', index, 'side'], 'fault.missing', { allowed: 'left, right' });
    if (opening.kind === 'backstop' && !unknowable && names.includes(opening.run) && !/^chute(-\d+)?$/.test(opening.run)) {
      const chute = names.filter((name) => /^chute(-\d+)?$/.test(name));
      judged.report(['openings', index, 'run'], 'fault.backstop-run', { value: showValue(opening.run), allowed: chute.slice(0, 60).join(', ') });
    }
  });
  const back = file.returnAlley?.from?.run;
  if (back !== undefined && !unknowable && (!names.includes(back) || back.startsWith('return-') || /^(load|unload)-/.test(back))) {
    const allowed = names.filter((name) => !/^(return|load|unload)-/.test(name)).slice(0, 60).join(', ');
    judged.report(['returnAlley', 'from', 'run'], 'fault.run-name', { value: showValue(back), allowed });
  }
  file.openings?.forEach(({ kind, run, swings }, index) => {
    const ways = kind === 'pen-gate' ? ['in', 'out'] : kind === 'alley-gate' ? ['forward', 'back'] : null;
    if (ways !== null && swings !== undefined && !ways.includes(swings)) {
      judged.report(['openings', index, 'swings'], 'fault.choice', { value: showValue(swings), allowed: ways.join(', ') });
    }
    if (kind === 'alley-gate' && !unknowable && names.includes(run) && !TWO_SIDED.test(run)) {
      const allowed = names.filter((name) => TWO_SIDED.test(name)).slice(0, 60).join(', ');
      judged.report(['openings', index, 'run'], 'fault.alley-gate-run', { value: showValue(run), allowed });
    }
  });
  file.catwalks?.forEach((catwalk, index) => {
    holdRun('catwalks', index, catwalk.run);
    if (catwalk.to !== undefined && catwalk.to <= (catwalk.from ?? 0)) {
      const units = file.units ?? 'in';
      judged.report(['catwalks', index, 'to'], 'fault.order', { value: printLength(catwalk.to, units), other: pathText(['catwalks', index, 'from']) });
    }
  });
}

function holdOnce(judged: Judged, path: readonly (string | number)[], entries: readonly (string | number)[]): void {
  entries.forEach((entry, index) => {
    if (entries.indexOf(entry) < index) judged.report([...path, index], 'fault.repeated', { value: showValue(entry) });
  });
}

/** Working hours that end after they begin; months and open sides once each. */
export function holdHours(judged: Judged): void {
  const work = judged.file.site?.work;
  if (work !== undefined) {
    const clock = (minutes: number): string => `${String(Math.floor(minutes / 60)).padStart(2, '0')}:${String(minutes % 60).padStart(2, '0')}`;
    if (work.to <= work.from) judged.report(['site', 'work', 'to'], 'fault.order', { value: clock(work.to), other: 'site.work.from' });
    holdOnce(judged, ['site', 'work', 'months'], work.months);
  }
  holdOnce(judged, ['squeezePad', 'roof', 'open'], judged.file.squeezePad?.roof?.open ?? []);
}
