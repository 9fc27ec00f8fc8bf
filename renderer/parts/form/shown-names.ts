import { type Json } from '../../../core/brief/json/types.ts';

/** Fields that one kind of an entry, or one surface of a ramp, has no use for. */
const IDLE: Readonly<Record<string, Readonly<Record<string, readonly string[]>>>> = {
  openings: {
    'man-gate': ['held', 'swings', 'hangs', 'hingePost'], backstop: ['side', 'width', 'swings', 'hangs', 'hingePost'], 'pen-gate': ['held'],
    'alley-gate': ['held', 'width', 'hangs'],
  },
  ramps: { stepped: ['slope', 'cleat'], cleated: ['tread'] },
};

/** The fields of an entry that are shown: all but what its kind has no use for, unless the file says it all the same. */
export function shownNames(list: string, names: readonly string[], kind: Json | undefined, said: readonly string[]): readonly string[] {
  const idle = (typeof kind === 'string' ? IDLE[list]?.[kind] : undefined) ?? [];
  return names.filter((name) => !idle.includes(name) || said.includes(name));
}
