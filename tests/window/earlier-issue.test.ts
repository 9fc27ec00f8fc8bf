/** Drawings compared with an earlier issue in the window: the same set that the command writes with `--since`. */
import { readFileSync } from 'node:fs';
import { describe, expect, it } from 'vitest';
import { createPipeline, type Design } from '../../core/package/index.ts';
import { packageTools } from '../../electron/command/tools.ts';
import { createEarlier } from '../../renderer/worker/earlier.ts';
import { tellPackage } from '../../renderer/worker/tell-package.ts';
import { directWork } from './support/opened.ts';

const text = (chute: number): string =>
  readFileSync(new URL('../../shared/examples/tight-curve.penwright.json', import.meta.url), 'utf8').replace(/("chute": \{ "width": )\d+/, `$1${String(chute)}`);
const [before, now] = [text(30), text(31)];

function designOf(project: string): Design {
  const pipeline = createPipeline(packageTools().font);
  const read = pipeline.read(project, null);
  const worked = read.ok ? pipeline.design(read.brief) : read;
  if (!worked.ok) throw new Error(JSON.stringify(worked.faults));
  return worked.design;
}

describe('an earlier issue', () => {
  it('clouds what changed in the drawings, and leaves them plain again', async () => {
    const work = directWork();
    const earlier = createEarlier(work);
    await work.ask('lay', { text: now, board: null });
    const plan = async () => {
      const index = (await work.ask('sheets', null)).findIndex(({ number }) => number === '101');
      return (await work.ask('sheet', { index })).sheet;
    };
    const plain = await plan();
    await earlier.choose('before.penwright.json', before);
    expect(earlier.state.get()).toEqual({ kind: 'chosen', name: 'before.penwright.json', text: before });
    const clouded = await plan();
    expect(clouded.primitives.length).toBeGreaterThan(plain.primitives.length);
    const drawn = createPipeline(packageTools().font).drawings(designOf(now), null, designOf(before)).find(({ number }) => number === '101');
    expect(clouded).toEqual(drawn);
    await earlier.drop();
    expect(await plan()).toEqual(plain);
  });

  it('that is no project, or can\'t be laid out, is told by its fields and clouds nothing', async () => {
    const work = directWork();
    const earlier = createEarlier(work);
    await work.ask('lay', { text: now, board: null });
    await earlier.choose('torn.penwright.json', before.replace(/"radius": [^,]+,/, '"radius": 5,'));
    expect(earlier.state.get()).toMatchObject({ kind: 'refused', name: 'torn.penwright.json' });
    expect(JSON.stringify(earlier.state.get())).toContain('crowdPen.radius: ');
    const told = [];
    for await (const what of tellPackage({ kind: 'package', text: now, units: null, only: ['stations'], since: '{' }, packageTools())) told.push(what);
    expect(told).toHaveLength(1);
    expect(told[0]).toMatchObject({ kind: 'faults' });
    expect(JSON.stringify(told[0])).toContain('the earlier issue');
  });
});
