/** The lines of a DXF file: a group code and its value by turns. */
import { type Vec } from '../../base/points.ts';
import { plainNumber } from '../plain-number.ts';

/** Decimals of a length: 1e-10 in is far under anything that a double at 1e5 in can hold apart. */
const LENGTH_PLACES = 10;
/** Decimals of an angle in degrees and of a ratio: 1e-12° at a radius of 1e4 in is 2e-10 in. */
const ANGLE_PLACES = 12;

export interface Tags {
  readonly lines: readonly string[];
  /** A name, a text that is already fit for the file, or an integer. */
  put(code: number, value: string | number): void;
  /** A length in drawing units. */
  real(code: number, value: number): void;
  /** An angle in degrees, or a ratio. */
  fine(code: number, value: number): void;
  /** A point in three groups (x, y, and z = 0), or in two where the format has no z. */
  point(code: number, at: Vec): void;
  point2(code: number, at: Vec): void;
}

/** Starts an empty list of tags. */
export function startTags(): Tags {
  const lines: string[] = [];
  const put = (code: number, value: string | number): void => {
    lines.push(String(code), typeof value === 'number' ? integer(value) : value);
  };
  const real = (code: number, value: number): void => {
    lines.push(String(code), decimal(value, LENGTH_PLACES));
  };
  const point2 = (code: number, at: Vec): void => {
    real(code, at.x);
    real(code + 10, at.y);
  };
  return {
    lines,
    put,
    real,
    fine: (code, value) => {
      lines.push(String(code), decimal(value, ANGLE_PLACES));
    },
    point2,
    point: (code, at) => {
      point2(code, at);
      real(code + 20, 0);
    },
  };
}

function integer(value: number): string {
  if (!Number.isSafeInteger(value)) throw new Error(`not an integer: ${String(value)}`);
  return String(value);
}

/** A real always shows its decimal point, as the reference's own examples do. */
function decimal(value: number, places: number): string {
  const text = plainNumber(value, places);
  return text.includes('.') ? text : `${text}.0`;
}
