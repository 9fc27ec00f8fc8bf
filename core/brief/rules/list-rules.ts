import { SAME_LENGTH } from '../../base/tolerance.ts';
import { inches, type Inches } from '../../base/quantity.ts';
import { say } from '../../text/index.ts';
import { allowedRange } from '../allowed.ts';
import { showValue } from '../json/show-value.ts';
import { type Judged } from '../judged.ts';
import { type Path } from '../path-fault.ts';
import { DEFAULTS } from '../defaults.ts';
import { type FenceDraft } from '../resolve/fence-draft.ts';
import { printExactly } from '../resolve/print-exactly.ts';
import { plainText } from '../schema/plain-text.ts';

/** A piece's signature is ours and may be long; a person's name for a price is not. */
const LONGEST_KEY = 400;

function holdKeys(judged: Judged, path: Path, keys: readonly string[]): void {
  for (const key of keys) {
    const plain = plainText(key);
    if ('control' in plain) judged.report([...path, key], 'fault.control', { value: plain.control });
    else if (key === '' || key.length > LONGEST_KEY) {
      const allowed = say('allowed.text', { range: allowedRange({ least: 1, greatest: LONGEST_KEY, unit: 'none' }) });
      judged.report([...path, key], 'fault.characters', { value: key.length, allowed });
    }
  }
}

/** One mark for each piece's signature, one signature for each mark. */
export function holdMarks(judged: Judged): void {
  const marks = Object.entries(judged.file.marks ?? {});
  const seen = new Set<string>();
  holdKeys(judged, ['marks'], marks.map(([signature]) => signature));
  holdKeys(judged, ['shop', 'prices'], Object.keys(judged.file.shop?.prices ?? {}));
  for (const [signature, mark] of marks) {
    if (seen.has(mark)) judged.report(['marks', signature], 'fault.mark-twice', { mark: showValue(mark) });
    seen.add(mark);
  }
}

/** Stakeout points that are points of their own: a tie from two points in one place sets nothing out. */
export function holdControl(judged: Judged): void {
  const { b, c } = judged.file.control ?? {};
  const apart = (p: readonly Inches[], q: readonly number[]): number => Math.hypot((p[0] ?? 0) - (q[0] ?? 0), (p[1] ?? 0) - (q[1] ?? 0));
  const pivot = [0, 0];
  if (b !== undefined && apart(b, pivot) < SAME_LENGTH) judged.report(['control', 'b'], 'fault.control-same', { other: say('term.pivot-post') });
  if (c === undefined) return;
  if (apart(c, pivot) < SAME_LENGTH) judged.report(['control', 'c'], 'fault.control-same', { other: say('term.pivot-post') });
  else if (!judged.isFaulty(['control', 'b']) && apart(c, b ?? DEFAULTS.control.b) < SAME_LENGTH) judged.report(['control', 'c'], 'fault.control-same', { other: 'control.b' });
}

/** Stitches that lie one over the other are none. */
export function holdWelds(judged: Judged): void {
  const welds = judged.file.shop?.welds ?? {};
  if (judged.isFaulty(['shop', 'welds', 'skinLength']) || judged.isFaulty(['shop', 'welds', 'skinPitch'])) return;
  const length = welds.skinLength ?? DEFAULTS.shop.welds.skinLength;
  const pitch = welds.skinPitch ?? DEFAULTS.shop.welds.skinPitch;
  const field = welds.skinPitch === undefined ? 'skinLength' : 'skinPitch';
  if (length > pitch) judged.report(['shop', 'welds', field], 'fault.stitches', { length: printExactly(inches(length), judged.file.units ?? 'in'), pitch: printExactly(inches(pitch), judged.file.units ?? 'in') });
}

/** A fence with sheet needs a stock sheet to be cut from. */
export function holdSheets(judged: Judged, built: readonly FenceDraft[]): void {
  if (judged.file.shop?.sheets?.length !== 0) return;
  const sheeted = built.some(({ sheet, solidTo }) => sheet !== undefined && sheet.value !== null && solidTo !== undefined && solidTo.value > 0);
  if (sheeted) judged.report(['shop', 'sheets'], 'fault.sheets-none', {});
}
