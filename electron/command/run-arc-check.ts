import { parseArgs } from 'node:util';
import { inches, type Inches } from '../../core/base/quantity.ts';
import { arcCheck, type ArcCheck } from '../../core/shop/index.ts';
import { CLASSES_13920, type Class13920 } from '../../core/steel/tables/iso-13920.ts';
import { say, type Params, type StringKey } from '../../core/text/index.ts';
import { parseLength, printDecimalInches, printLength } from '../../core/units/index.ts';
import { printRefusal, type Refusal } from '../disk/index.ts';
import { EXIT, type Io } from './io.ts';

/** What a tape is read to where nobody says (contract of the command). */
const READ = inches(1 / 32);
const LENGTHS = ['chord', 'rise', 'radius', 'read'] as const;

/** Radius, and whether it is the one drawn, from a measured chord and rise: words to an exit code. */
export function runArcCheck(words: readonly string[], io: Pick<Io, 'out' | 'err'>): number {
  const { values, tokens } = parseArgs({
    args: [...words], strict: false, tokens: true,
    options: { chord: { type: 'string' }, rise: { type: 'string' }, radius: { type: 'string' }, read: { type: 'string' }, class: { type: 'string' }, json: { type: 'boolean' }, help: { type: 'boolean', short: 'h' } },
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
  const known = new Set<string>([...LENGTHS, 'class', 'json']);
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
  const chord = length('chord', true, 'over');
  const rise = length('rise', true, 'over');
  const expected = length('radius', false, 'over');
  const read = length('read', false, 'from') ?? READ;
  const grade = readClass(values.class, refuse);
  if (chord !== null && read >= chord / 2) refuse('--read', 'arc-check.read-over-chord', { most: printLength(inches(chord / 2), 'in', 'bracket') });
  if (refusals.length === 0 && chord !== null && rise !== null && grade !== null) {
    const checked = arcCheck({ chord, rise, read, expected, grade });
    if (typeof checked !== 'string') {
      tell(checked, grade, read, values.json === true, io);
      return EXIT.written;
    }
    if (checked === 'rise-over-half-chord') refuse('--rise', 'arc-check.rise-over-half-chord', { most: printLength(inches(chord / 2), 'in', 'bracket') });
    else refuse('--chord', 'arc-check.chord-over-diameter', { most: printLength(inches(2 * (expected ?? 0)), 'in', 'bracket') });
  }
  for (const refusal of refusals) io.err(printRefusal(refusal));
  return EXIT.fault;
}

function readClass(value: string | boolean | undefined, refuse: (path: string, key: StringKey, params?: Params) => null): Class13920 | null {
  if (value === undefined) return 'B';
  return CLASSES_13920.find((grade) => grade === value) ?? refuse('--class', 'arc-check.class', { value: String(value) });
}

function tell(checked: ArcCheck, grade: Class13920, read: Inches, json: boolean, io: Pick<Io, 'out'>): void {
  const { radius, low, high, expected, error, tolerance, within } = checked;
  if (json) {
    io.out(JSON.stringify({ radius, low, high, expected, error, within }));
    return;
  }
  const size = (length: Inches): string => printLength(length, 'in', 'bracket');
  io.out(say('arc-check.radius', { radius: size(radius), low: size(low), high: high === null ? say('arc-check.open') : size(high) }));
  if (expected === null || error === null) return;
  io.out(say('arc-check.error', {
    expected: size(expected), error: printDecimalInches(inches(Math.abs(error))), grade, tolerance: printDecimalInches(tolerance),
    way: say(error === 0 ? 'arc-check.true' : error > 0 ? 'arc-check.tight' : 'arc-check.slack'),
    verdict: say(within === true ? 'arc-check.within' : 'arc-check.outside'),
  }));
  // One reading further either way and the verdict would be the other.
  if (Math.abs(Math.abs(error) - tolerance) < read) io.out(say('arc-check.unsure'));
}
