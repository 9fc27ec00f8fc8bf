import { inches } from '../../base/quantity.ts';
import { say } from '../../text/index.ts';
import { printLength, type LengthUnits } from '../../units/index.ts';
import { DEFAULTS } from '../defaults.ts';
import { isJsonObject, type Json, type JsonObject } from '../json/types.ts';
import { type Path } from '../path-fault.ts';
import { printExactly } from '../resolve/print-exactly.ts';
import { saidAround, saidOf } from './fence-standing.ts';
import { DEFAULT_FIGURES, figuresByKind } from './figures.ts';
import { fieldAt } from './format.ts';
import { printValue } from './print-value.ts';
import { type Field } from './types.ts';

/** What holds where the file does not say a field. */
export interface Standing {
  /** As a person reads it in the project's units. */
  readonly words: string;
  /** The group of a fence that it is taken from; null: it is no other field's. */
  readonly from: Path | null;
  /** As the file would write it; undefined where it is no figure, or follows from others. */
  readonly value: Json | undefined;
}

/** The units that a project prints in. */
export const unitsOf = (project: JsonObject): LengthUnits => (project['units'] === 'mm' ? 'mm' : 'in');

const plain = (words: string, value?: Json): Standing => ({ words, from: null, value });

function fenceStanding(field: Field, path: Path, project: JsonObject): Standing | null {
  const scope = path.slice(0, -1);
  const setting = String(path.at(-1));
  const around = saidAround(project, scope, setting);
  if (around !== null) {
    const words = printValue(field.what, around.value, unitsOf(project));
    return { words: words ?? JSON.stringify(around.value), from: around.scope, value: around.value };
  }
  if (setting === 'solidTo') {
    const height = saidOf(project, scope, 'height')?.value ?? DEFAULTS.fence.height;
    const words = printValue(field.what, height, unitsOf(project));
    return plain(say('term.own-height', { height: words ?? JSON.stringify(height) }));
  }
  return figure(field, DEFAULT_FIGURES[`fences.crowdPen.${setting}`], unitsOf(project));
}

function figure(field: Field, value: Json | undefined, units: LengthUnits): Standing | null {
  if (value === undefined) return null;
  const words = printValue(field.what, value, units) ?? (typeof value === 'string' ? value : null);
  if (words === null) throw new Error(`a default that is none of ${field.pattern}: ${JSON.stringify(value)}`);
  return plain(words, value);
}

/** Defaults that are no single figure. */
function madeStanding(pattern: string, units: LengthUnits): Standing | null {
  const print = (value: number): string => printLength(inches(value), units);
  switch (pattern) {
    case 'alley.runs': {
      const length = DEFAULTS.alleyLength;
      return plain(say('term.straight-run', { length: print(length) }), [{ kind: 'straight', length }]);
    }
    case 'control.b':
      return plain(say('term.point', { x: print(DEFAULTS.control.b[0]), y: print(DEFAULTS.control.b[1]) }), [...DEFAULTS.control.b]);
    case 'control.b[]':
      return null;
    case 'shop.sheets': {
      const sheets = DEFAULTS.shop.sheets.map((pair) => [...pair]);
      const side = (value: number | undefined): string => printLength(inches(value ?? NaN), units, 'inches');
      return plain(sheets.map(([a, b]) => say('term.figure-pair', { a: side(a), b: side(b) })).join(', '), sheets);
    }
    case 'shop.stock':
      return plain(say('term.stock-each', { length: print(DEFAULTS.stockLength) }));
    case 'shop.stock[*]':
      return plain(print(DEFAULTS.stockLength), [DEFAULTS.stockLength]);
    case 'crowdPen.pivotLength':
      return plain(say('term.height-and-depth'));
    case 'catwalks[].deckHeight':
      return plain(say('term.under-the-fence', { below: printExactly(inches(DEFAULTS.railHeight), units) }));
    case 'catwalks[].to':
      return plain(say('term.run-end'));
    case 'holdingPens[].length':
    case 'holdingPens[].width':
      return plain(say('term.by-head'));
    case 'holdingPens[].hingePost':
    case 'openings[].hingePost':
      return plain(say('term.by-gate-width'));
    case 'ramps[].at':
    case 'ramps[].heading':
      return plain(say('term.clear-of-all'));
    default:
      return null;
  }
}

/**
 * What holds at a place of the format that the file leaves out: a default, what the fence around it says, or that it stays unset.
 * Null for a field that is asked for, and for a place that the format has not. As the report lists it (`DefaultUsed`).
 */
export function standingAt(path: Path, project: JsonObject): Standing | null {
  const field = fieldAt(path);
  if (field === null) return null;
  const { pattern } = field;
  const units = unitsOf(project);
  const made = madeStanding(pattern, units);
  if (made !== null) return made;
  if (field.asked !== 'never' && !pattern.startsWith('fences.')) return null;
  if (/^fences\..*\.\w+$/.test(pattern) && field.what.kind !== 'group') return fenceStanding(field, path, project);
  if (/^(openings|ramps)\[\]\.\w+$/.test(pattern)) {
    const [list, index, name] = path;
    const entries = project[String(list)];
    const entry = Array.isArray(entries) ? (entries as readonly Json[])[Number(index)] : undefined;
    return figure(field, figuresByKind(String(list), isJsonObject(entry) ? entry : {})[String(name)], units) ?? plain(say('term.unset'));
  }
  const said = figure(field, DEFAULT_FIGURES[pattern], units);
  if (said !== null) return said;
  return plain(say(pattern.startsWith('site.') ? 'term.unset' : 'term.none'));
}
