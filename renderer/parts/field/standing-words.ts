import { choiceOf, type Standing } from '../../../core/brief/format/index.ts';
import { isStringKey, say } from '../../../core/text/index.ts';
import { type FieldState } from './use-field.ts';

/** What holds for a field that the file does not say, as words beside it: `default: 5`, `as the crowd pen's: 5`. Null: it is asked for. */
export function standingWords({ field, standing }: Pick<FieldState, 'field' | 'standing'>): string | null {
  if (standing === null) return null;
  const value = field.what.kind === 'choice' && typeof standing.value === 'string' ? choiceOf(field, standing.value) : standing.words;
  if (standing.from === null) return standing.words === say('term.unset') ? say('place-brief.unset') : say('place-brief.default', { value });
  const key = `place-brief.of.${String(standing.from[1])}`;
  return say('place-brief.inherited', { place: isStringKey(key) ? say(key) : standing.from.join('.'), value });
}

/** What the way back to that is called: where nothing stands in for the field, it is left out. */
export const restoreWords = (standing: Standing | null): 'place-brief.restore' | 'place-brief.leave-out' =>
  (standing === null || (standing.from === null && standing.value === undefined && NOTHING().includes(standing.words)) ? 'place-brief.leave-out' : 'place-brief.restore');

const NOTHING = (): readonly string[] => [say('term.unset'), say('term.none')];
