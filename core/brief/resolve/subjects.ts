import { printAngle } from '../../units/index.ts';
import { degrees, inches } from '../../base/quantity.ts';
import { say } from '../../text/index.ts';
import { DEFAULTS, openingDefaults } from '../defaults.ts';
import { pathText, type Path } from '../path-fault.ts';
import { type ProjectFile } from '../schema/project.ts';
import { type Filler } from './filler.ts';
import { printExactly } from './print-exactly.ts';

type Group = Readonly<Record<string, unknown>>;

/** Figures that are no lengths. */
const PLAIN: readonly string[] = ['daylight'];

function noteGroup(filler: Filler, path: Path, given: Group, defaults: Readonly<Record<string, string | number>>): void {
  for (const [field, value] of Object.entries(defaults)) {
    if (given[field] !== undefined) continue;
    const words = typeof value === 'string' || PLAIN.includes(field) ? String(value)
      : field === 'slope' ? printAngle(degrees(value)) : printExactly(inches(value), filler.units);
    filler.note(pathText([...path, field]), words);
  }
}

/** The defaults of a ramp by its kind; what only the other surface has is not one of them. */
function rampDefaults(ramp: Group): Readonly<Record<string, string | number>> {
  const own = DEFAULTS.ramp[ramp['kind'] === 'load' ? 'load' : 'unload'];
  const surface = ramp['surface'] ?? own.surface;
  const { dockHeight, width, dockLength } = own;
  const walk = surface === 'stepped'
    ? { tread: DEFAULTS.ramp.load.tread }
    : { slope: DEFAULTS.ramp.unload.slope, cleat: DEFAULTS.ramp.unload.cleat };
  return { dockHeight, width, surface: own.surface, dockLength, ...walk };
}

/** What a holding pen leaves out; its size by its head is no single figure. */
function noteHolding(filler: Filler, index: number, pen: NonNullable<ProjectFile['holdingPens']>[number]): void {
  const { swings, hangs } = DEFAULTS.opening;
  const path = ['holdingPens', index];
  noteGroup(filler, path, pen, { gate: DEFAULTS.holdingGate, swings: swings['pen-gate'], hangs });
  for (const field of ['length', 'width'] as const) if (pen[field] === undefined) filler.note(pathText([...path, field]), say('term.by-head'));
  if (pen.hingePost === undefined) filler.note(pathText([...path, 'hingePost']), say('term.by-gate-width'));
}

/** Notes what the subjects leave out, so that the list of defaults is whole. */
export function noteSubjectDefaults(file: ProjectFile, filler: Filler): void {
  file.openings?.forEach((opening, i) => {
    noteGroup(filler, ['openings', i], opening, openingDefaults(opening.kind));
    if ((opening.kind === 'pen-gate' || opening.kind === 'alley-gate') && opening.hingePost === undefined) filler.note(pathText(['openings', i, 'hingePost']), say('term.by-gate-width'));
  });
  file.catwalks?.forEach((catwalk, i) => {
    noteGroup(filler, ['catwalks', i], catwalk, DEFAULTS.catwalk);
    if (catwalk.to === undefined) filler.note(pathText(['catwalks', i, 'to']), say('term.run-end'));
    if (catwalk.deckHeight === undefined) filler.note(pathText(['catwalks', i, 'deckHeight']), say('term.under-the-fence', { below: printExactly(inches(DEFAULTS.railHeight), filler.units) }));
  });
  file.ramps?.forEach((ramp, i) => { noteGroup(filler, ['ramps', i], ramp, rampDefaults(ramp)); });
  file.sortPens?.forEach((pen, i) => { noteGroup(filler, ['sortPens', i], pen, { gate: DEFAULTS.sortGate }); });
  file.holdingPens?.forEach((pen, i) => { noteHolding(filler, i, pen); });
  for (const field of ['openings', 'catwalks', 'ramps', 'squeezePad', 'sortPens', 'holdingPens', 'returnAlley'] as const) {
    if (file[field] === undefined) filler.note(field, say('term.none'));
  }
  if (file.returnAlley !== undefined) noteGroup(filler, ['returnAlley'], file.returnAlley, { width: DEFAULTS.returnWidth });
  if (file.squeezePad === undefined) return;
  noteGroup(filler, ['squeezePad'], file.squeezePad, DEFAULTS.pad);
  if (file.squeezePad.roof === undefined) filler.note('squeezePad.roof', say('term.none'));
  else noteGroup(filler, ['squeezePad', 'roof'], file.squeezePad.roof, DEFAULTS.roof);
}
