import { type ReactElement } from 'react';
import { isJsonObject, type JsonObject } from '../../../../core/brief/json/types.ts';
import { RANGES } from '../../../../core/brief/index.ts';
import { type StationRun } from '../../../../core/schedules/index.ts';
import { say } from '../../../../core/text/index.ts';
import { parseLength } from '../../../../core/units/index.ts';
import { useDeskWindow } from '../../../app/desk-window.ts';
import { valueAt } from '../../../project/json-path.ts';
import { type Units } from '../../../worker/protocol.ts';
import { addRun, moveRun, removeRun, replaceRun, runsOf } from '../edits/run-list.ts';
import { runName, type RunPlace } from '../edits/run-place.ts';
import { asArc, asStraight, firstStraight } from '../edits/run-shapes.ts';

/** Clear width of the chute's runs; the alley's is the crowd pen's radius (inches). */
function widthOf(project: JsonObject, part: RunPlace['part']): number {
  const said = valueAt(project, part === 'chute' ? 'chute.width' : 'crowdPen.radius');
  return typeof said === 'number' || typeof said === 'string' ? (parseLength(said) ?? 0) : 0;
}

/** What may be done with a run as a whole. */
export function RunEdits({ project, place, run, units }: {
  readonly project: JsonObject; readonly place: RunPlace; readonly run: StationRun; readonly units: Units;
}): ReactElement {
  const { session, select } = useDeskWindow();
  const runs = runsOf(project, place.part);
  const said = runs[place.index];
  const arc = isJsonObject(said) && said['kind'] === 'arc';
  const full = runs.length >= RANGES.runs.greatest;
  const last = runs.length - 1;
  /** The next state, and the run that is looked at in it. */
  const change = (next: JsonObject, index: number, words: 'add-before' | 'add-after' | 'earlier' | 'later' | 'make-arc' | 'make-straight' | 'remove'): void => {
    session.change(next, { label: say(`place-lay-out.run.${words}`) });
    select({ run: runName({ part: place.part, index }), field: null, finding: null, mark: null });
  };
  const at = (index: number): RunPlace => ({ part: place.part, index });
  const way = (words: Parameters<typeof change>[2], disabled: boolean, next: () => JsonObject, index: number): ReactElement => (
    <button key={words} type="button" disabled={disabled} onClick={() => { change(next(), index, words); }}>{say(`place-lay-out.run.${words}`)}</button>
  );
  return (
    <section aria-label={say('place-lay-out.run.title')} className="run-edits">
      {way('add-before', full, () => addRun(project, place, firstStraight(units)), place.index)}
      {way('add-after', full, () => addRun(project, at(place.index + 1), firstStraight(units)), place.index + 1)}
      {way('earlier', place.index === 0, () => moveRun(project, place, -1), place.index - 1)}
      {way('later', place.index === last, () => moveRun(project, place, 1), place.index + 1)}
      {arc
        ? way('make-straight', false, () => replaceRun(project, place, asStraight(run, units)), place.index)
        : way('make-arc', false, () => replaceRun(project, place, asArc(run, widthOf(project, place.part), units, runs.slice(0, place.index))), place.index)}
      {way('remove', runs.length === 1, () => removeRun(project, place), Math.max(0, place.index - 1))}
    </section>
  );
}
