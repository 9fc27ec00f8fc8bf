import { type ReactElement } from 'react';
import { type JsonObject } from '../../../../core/brief/json/types.ts';
import { say } from '../../../../core/text/index.ts';
import { type Laid, type PieceTitle } from '../../../worker/protocol.ts';
import { runPaths } from '../edits/run-paths.ts';
import { runPlace } from '../edits/run-place.ts';
import { FieldList } from './FieldList.tsx';
import { FindingList } from './FindingList.tsx';
import { PieceMarks } from './PieceMarks.tsx';
import { RunEdits } from './RunEdits.tsx';
import { StandingList } from './StandingList.tsx';

/** A run of the walk: its figures, what may be done with it, what it breaks, what stands on it, what it is made of. */
export function ChosenRun({ project, laid, run: name, pieces }: {
  readonly project: JsonObject; readonly laid: Laid; readonly run: string; readonly pieces: readonly PieceTitle[];
}): ReactElement {
  const run = laid.stations.runs.find((one) => one.run === name);
  const place = runPlace(name);
  const paths = runPaths(project, name, laid.handles);
  // What only stands on the run or at it is called as its handle is: `Clear width` alone would not tell whose. A spacing has many handles.
  const own = runPaths(project, name, []);
  const labels = new Map(laid.handles.filter((one) => one.run === name && !own.includes(one.path) && !one.path.endsWith('.postSpacing')).map(({ path, label }) => [path, label.charAt(0).toUpperCase() + label.slice(1)]));
  return (
    <>
      <h2>{name}</h2>
      <section aria-label={say('place-lay-out.figures', { run: name })}><FieldList paths={paths} labels={labels} /></section>
      {run === undefined || place === null ? null : <RunEdits project={project} place={place} run={run} units={laid.units} />}
      <FindingList laid={laid} run={name} />
      {run === undefined ? null : <StandingList project={project} run={run} units={laid.units} />}
      <PieceMarks pieces={pieces} run={name} />
    </>
  );
}
