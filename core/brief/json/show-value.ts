import { say } from '../../text/index.ts';

const LONGEST = 60;

/** A value of the file in a few characters, for the words of a fault. */
export function showValue(value: unknown): string {
  if (Array.isArray(value)) return say('fault-value.list');
  if (typeof value === 'object' && value !== null) return say('fault-value.object');
  const text = typeof value === 'number' ? String(value) : (JSON.stringify(value) ?? 'undefined');
  // Escapes what JSON leaves as it stands, so that no control character reaches a terminal.
  const safe = text.replace(/[\u007f-\u009f\u2028\u2029]/g, (c) => `\\u${c.charCodeAt(0).toString(16).padStart(4, '0')}`);
  // By characters, so that no pair is cut in half.
  const characters = [...safe.slice(0, 2 * LONGEST + 2)];
  return characters.length > LONGEST ? `${characters.slice(0, LONGEST).join('')}…` : safe;
}
