import { type JsonObject } from '../../../../core/brief/json/types.ts';
import { type Handle } from '../../../../core/board/types.ts';
import { isJsonObject } from '../../../../core/brief/json/types.ts';
import { valueAt } from '../../../project/json-path.ts';
import { runPath, runPlace } from './run-place.ts';
import { runsOf } from './run-list.ts';

/** The fields of the file that make a run what it is, in the order in which they are decided; those that a hand may drag behind them. */
export function runPaths(project: JsonObject, run: string, handles: readonly Handle[]): readonly string[] {
  const dragged = handles.filter((handle) => handle.run === run).map(({ path }) => path);
  return [...new Set([...ownPaths(project, run), ...dragged])];
}

function ownPaths(project: JsonObject, run: string): readonly string[] {
  const place = runPlace(run);
  if (place !== null) {
    const path = runPath(place);
    const said = runsOf(project, place.part)[place.index];
    const arc = isJsonObject(said) && said['kind'] === 'arc';
    const own = arc ? [`${path}.insideRadius`, `${path}.angle`, `${path}.hand`] : [`${path}.length`];
    return place.part === 'chute' ? [...own, 'chute.width'] : own;
  }
  const numbered = /^(hold|return|sort|load|unload)-(\d+)(?:-(?:in|back|out))?$/.exec(run);
  if (run === 'crowd-pen') return ['crowdPen.radius', 'crowdPen.sweep', 'crowdPen.hand', 'crowdPen.gateClearance', 'crowdPen.pivotPost'];
  if (run === 'junction') return ['crowdPen.funnelAngle', 'chute.width'];
  if (run === 'squeeze-pad') return ['squeezePad.length', 'squeezePad.width'];
  if (run === 'pad-shoulder') return ['chute.width', 'squeezePad.width'];
  if (run === 'sort-shoulder') return [valueAt(project, 'squeezePad') === undefined ? 'chute.width' : 'squeezePad.width', 'sortPens[0].gate'];
  if (numbered === null) return [];
  const index = Number(numbered[2]) - 1;
  if (numbered[1] === 'sort') return [`sortPens[${String(index)}].side`, `sortPens[${String(index)}].gate`];
  if (numbered[1] === 'return') {
    const path = `returnAlley.runs[${String(index)}]`;
    const arc = valueAt(project, `${path}.kind`) === 'arc';
    return [...(arc ? ['insideRadius', 'angle', 'hand'] : ['length']).map((field) => `${path}.${field}`), 'returnAlley.width'];
  }
  if (numbered[1] === 'hold') return ['head', 'length', 'width', 'gate', 'swings', 'hangs', 'hingePost'].map((field) => `holdingPens[${String(index)}].${field}`);
  const ramp = rampIndex(project, numbered[1] ?? '', index);
  return ramp === null ? [] : rampPaths(project, ramp);
}

/** Index in the file of the `nth` ramp of a kind. */
export function rampIndex(project: JsonObject, kind: string, nth: number): number | null {
  const ramps = valueAt(project, 'ramps');
  if (!Array.isArray(ramps)) return null;
  const of = ramps.flatMap((ramp, index) => (isJsonObject(ramp) && ramp['kind'] === kind ? [index] : []));
  return of[nth] ?? null;
}

/** The figures of a ramp: a stepped one has treads, a cleated one a slope. */
export function rampPaths(project: JsonObject, index: number): readonly string[] {
  const path = `ramps[${String(index)}]`;
  const surface = valueAt(project, `${path}.surface`);
  const ways = surface === 'cleated' ? ['slope', 'cleat'] : surface === 'stepped' ? ['tread'] : ['tread', 'slope'];
  return ['dockHeight', 'width', 'surface', ...ways, 'dockLength', 'heading'].map((field) => `${path}.${field}`);
}
