import { isTimeZone } from '../../base/time/clock-offset.ts';
import { say, type StringKey } from '../../text/index.ts';
import { allowedChoice, allowedRange } from '../allowed.ts';
import { type Range } from '../ranges.ts';
import { isCalendarDate } from './calendar-date.ts';
import { fault, leaf } from './leaf.ts';
import { plainText } from './plain-text.ts';

/** A text on one line; a line break folds to a space, other control characters are faults; length counts characters. */
export function text(range: Range) {
  const allowed = (): string => say('allowed.text', { range: allowedRange(range) });
  return leaf<string>({ kind: 'text', range }, allowed, (value) => {
    if (typeof value !== 'string') return fault('fault.type', { allowed: allowed() });
    const plain = plainText(value);
    if ('control' in plain) return fault('fault.control', { value: plain.control });
    // A text of spaces alone says nothing; where one is asked for it counts as empty.
    const count = plain.text.trim() === '' ? 0 : [...plain.text].length;
    if (count < range.least || [...plain.text].length > range.greatest) {
      return fault('fault.characters', { value: count < range.least ? count : [...plain.text].length, allowed: allowed() });
    }
    return { value: plain.text };
  });
}

type Pattern = 'date' | 'time' | 'zone' | 'letter' | 'mark' | 'section' | 'sheet';

/** A text that must look so. */
function written(kind: Pattern, key: StringKey, fits: (value: string) => boolean) {
  const allowed = (): string => say(key);
  return leaf<string>({ kind }, allowed, (value) => {
    if (typeof value !== 'string') return fault('fault.type', { allowed: allowed() });
    return fits(value) ? { value } : fault('fault.pattern', { allowed: allowed() });
  });
}

export const date = () => written('date', 'allowed.date', (value) => value === '' || isCalendarDate(value));
export const timeZone = () => written('zone', 'allowed.zone', isTimeZone);
export const letter = () => written('letter', 'allowed.letter', (value) => /^([A-Z0-9]{1,4}|-)$/.test(value));
export const mark = () => written('mark', 'allowed.mark', (value) => /^[A-Z][A-Z0-9-]{0,11}$/.test(value));

/** A time of day, HH:MM in the file, minutes from midnight behind the door. */
export const time = () =>
  written('time', 'allowed.time', (value) => /^([01]\d|2[0-3]):[0-5]\d$/.test(value))
    .transform((value) => Number(value.slice(0, 2)) * 60 + Number(value.slice(3)));

/** The name of a section or sheet; what it stands for is looked up behind the door, where the shop's own are known. */
export const steelName = (kind: 'section' | 'sheet') => written(kind, `allowed.${kind}`, (value) => value.length <= 60 && 'text' in plainText(value));

/** One of a few words. */
export function choice<const T extends string>(choices: readonly T[]) {
  const allowed = (): string => allowedChoice(choices);
  return leaf<T>({ kind: 'choice', choices }, allowed, (value) => {
    const found = choices.find((entry) => entry === value);
    return found === undefined ? fault('fault.choice', { allowed: allowed() }) : { value: found };
  });
}

/** true or false. */
export const flag = () =>
  leaf<boolean>({ kind: 'flag' }, () => say('allowed.flag'), (value) =>
    typeof value === 'boolean' ? { value } : fault('fault.type', { allowed: say('allowed.flag') }));
