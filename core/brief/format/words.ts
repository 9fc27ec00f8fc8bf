import { isStringKey, say } from '../../text/index.ts';
import { topicOf } from './topic.ts';
import { type Field } from './types.ts';

function told(kind: 'field' | 'help', pattern: string): string {
  const key = `${kind}.${topicOf(pattern)}`;
  if (!isStringKey(key)) throw new Error(`no words for ${key}`);
  return say(key);
}

/** What a person calls a field. Throws for one without words: a programmer's mistake. */
export const labelOf = ({ pattern }: Field): string => told('field', pattern);

/** What a field is and why it matters. Throws for one without words. */
export const helpOf = ({ pattern }: Field): string => told('help', pattern);

/** A choice of a field in words; a name of a standard (paper, a section) is its own word. */
export function choiceOf({ pattern }: Field, choice: string): string {
  const keys = [`choice.${topicOf(pattern)}.${choice}`, `choice.${choice}`];
  const key = keys.find(isStringKey);
  return key === undefined ? choice : say(key);
}
