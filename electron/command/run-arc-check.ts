import { parseArgs } from 'node:util';
import { inches, type Inches } from '../../core/base/quantity.ts';
import { arcCheck, arcCheckPoints, parsePoint, type ArcCheck, type Three } from '../../core/shop/index.ts';
import { CLASSES_13920, type Class13920 } from '../../core/steel/tables/iso-13920.ts';
import { type Vec } from '../../core/base/points.ts';
import { say, type Params, type StringKey } from '../../core/text/index.ts';
import { parseLength, printDecimalInches, printLength } from '../../core/units/index.ts';
import { printRefusal, type Refusal } from '../disk/index.ts';
import { EXIT, type Io } from './io.ts';

/** What a tape is read to where nobody says (contract of the command). */
const READ = inches(1 / 32);
const LENGTHS = ['chord', 'rise', 'radius', 'read', 'length'] as const;

/** Radius, and whether it is the one drawn, from a measured chord and rise or from three points: words to an exit code. */
export function runArcCheck(words: readonly string[], io: Pick<Io, 'out' | 'err'>): number {
  const { values, tokens } = parseArgs({
    args: [...words], strict: false, tokens: true,
    options: { chord: { type: 'string' }, rise: { type: 'string' }, radius: { type: 'string' }, read: { type: 'string' }, length: { type: 'string' }, point: { type: 'string', multiple: true }, class: { type: 'string' }, json: { type: 'boolean' }, help: { type: 'boolean', short: 'h' } },
  });
  if (values.help === true) {
    io.out(say('arc-check.usage'));
    return EXIT.written;
  }
  const refusals: Refusal[] = [];
  const refuse = (path: string, key: StringKey, params: Params = {}): null => {
    refusals.push({ path, key, params });
    return null;
  };
  const known = new Set<string>([...LENGTHS, 'point', 'class', 'json']);
  for (const token of tokens) {
    if (token.kind === 'positional') refuse(token.value, 'arc-check.unknown');
    if (token.kind === 'option' && !known.has(token.name)) refuse(token.rawName, 'arc-check.unknown');
  }
  const length = (name: (typeof LENGTHS)[number], asked: boolean, least: 'over' | 'from'): Inches | null => {
    const value = values[name];
    if (value === undefined) return asked ? refuse(`--${name}`, 'arc-check.asked') : null;
    if (typeof value !== 'string') return refuse(`--${name}`, 'arc-check.no-value');
    const read = parseLength(value);
    const fits = read !== null && (least === 'over' ? read > 0 : read >= 0);
    return fits ? read : refuse(`--${name}`, least === 'over' ? 'arc-check.length' : 'arc-check.read', { value });
  };
  const points = values.point === undefined ? null : readPoints(values.point, refuse);
  const asked = values.point === undefined;
  const chord = length('chord', asked, 'over');
  const rise = length('rise', asked, 'over');
  if (!asked) for (const name of ['chord', 'rise'] as const) if (values[name] !== undefined) refuse(`--${name}`, 'arc-check.beside-points');
  const expected = length('radius', false, 'over');
  const panel = length('length', false, 'over');
  if (panel !== null && values.radius === undefined) refuse('--length', 'arc-check.length-alone');
  const read = length('read', false, 'from') ?? READ;
  const grade = readClass(values.class, refuse);
  if (chord !== null && read >= chord / 2) refuse('--read', 'arc-check.read-over-chord', { most: printLength(inches(chord / 2), 'in', 'bracket') });
  if (refusals.length === 0 && grade !== null) {
    const drawn = { read, expected, panel, grade };
    const checked = points !== null ? arcCheckPoints({ points, ...drawn }) : arcCheck({ chord: chord ?? inches(0), rise: rise ?? inches(0), ...drawn });
    if (typeof checked !== 'string') {
      tell(checked, { grade, whole: panel !== null }, values.json === true, io);
      return EXIT.written;
    }
    const most = (value: number): Params => ({ most: printLength(inches(value), 'in', 'bracket') });
    const path = points === null ? '--chord' : '--point';
    if (checked === 'rise-over-half-chord') refuse('--rise', 'arc-check.rise-over-half-chord', most((chord ?? 0) / 2));
    else if (checked === 'chord-over-diameter') refuse(path, 'arc-check.chord-over-diameter', most(2 * (expected ?? 0)));
    else if (checked === 'panel-over-half-turn') refuse('--length', 'arc-check.panel-over-half-turn');
    else refuse('--point', `arc-check.${checked}`);
  }
  for (const refusal of refusals) io.err(printRefusal(refusal));
  return EXIT.fault;
}

/** Three points, each two lengths with a comma between. */
function readPoints(texts: readonly (string | boolean)[], refuse: (path: string, key: StringKey, params?: Params) => null): Three | null {
  const points = texts.map((text): Vec | null => parsePoint(String(text)) ?? refuse('--point', 'arc-check.point', { value: String(text) }));
  if (points.length !== 3) return refuse('--point', 'arc-check.points', { count: points.length });
  const [a, b, c] = points.filter((point) => point !== null);
  return a === undefined || b === undefined || c === undefined ? null : [a, b, c];
}

function readClass(value: string | boolean | undefined, refuse: (path: string, key: StringKey, params?: Params) => null): Class13920 | null {
  if (value === undefined) return 'B';
  return CLASSES_13920.find((grade) => grade === value) ?? refuse('--class', 'arc-check.class', { value: String(value) });
}

function tell(checked: ArcCheck, against: { readonly grade: Class13920; readonly whole: boolean }, json: boolean, io: Pick<Io, 'out'>): void {
  const { radius, low, high, expected, error, tolerance, within, sure } = checked;
  if (json) {
    io.out(JSON.stringify({ radius, low, high, expected, error, within }));
    return;
  }
  const size = (length: Inches): string => printLength(length, 'in', 'bracket');
  io.out(say('arc-check.radius', { radius: size(radius), low: size(low), high: high === null ? say('arc-check.open') : size(high) }));
  if (expected === null || error === null) return;
  io.out(say(against.whole ? 'arc-check.error-piece' : 'arc-check.error', {
    expected: size(expected), error: printDecimalInches(inches(Math.abs(error))), grade: against.grade, tolerance: printDecimalInches(tolerance),
    way: say(error === 0 ? 'arc-check.true' : error > 0 ? 'arc-check.tight' : 'arc-check.slack'),
    verdict: say(within === true ? 'arc-check.within' : 'arc-check.outside'),
  }));
  if (sure === false) io.out(say('arc-check.unsure'));
}
