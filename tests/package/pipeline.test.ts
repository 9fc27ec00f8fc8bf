import { describe, expect, it } from 'vitest';
import { readFileSync } from 'node:fs';
import { createPipeline, makePackage, scheduleTables, type Design, type PackageFile, type PackageInput } from '../../core/package/index.ts';
import { packageTools } from '../../electron/command/tools.ts';

const TEXT = readFileSync(new URL('../../shared/examples/juniper-flat.penwright.json', import.meta.url), 'utf8');
const tools = packageTools();

type Pipe = ReturnType<typeof createPipeline>;

function design(pipeline: Pipe, text = TEXT): Design {
  const read = pipeline.read(text, null);
  if (!read.ok) throw new Error(JSON.stringify(read.faults));
  const worked = pipeline.design(read.brief);
  if (!worked.ok) throw new Error(JSON.stringify(worked.faults));
  return worked.design;
}

async function packageOf(pipeline: Pipe, over: Partial<PackageInput> = {}): Promise<readonly PackageFile[]> {
  const files: PackageFile[] = [];
  for await (const { file } of makePackage(pipeline, { text: TEXT, design: design(pipeline), defaults: [], only: null, ...over }, tools)) files.push(file);
  return files;
}

describe('the graph of what follows from what', () => {
  it('does each step once for one project, read twice', () => {
    const pipeline = createPipeline(tools.font);
    const first = design(pipeline);
    const kept = [first.layout, first.parts, pipeline.findings(first), pipeline.schedules(first), pipeline.plan(first)];
    const second = design(pipeline);
    [second.layout, second.parts, pipeline.findings(second), pipeline.schedules(second), pipeline.plan(second)].forEach((result, index) => {
      expect(result).toBe(kept[index]);
    });
  });

  it('keeps what a change does not touch: a title leaves the steel, a date the findings', () => {
    const pipeline = createPipeline(tools.font);
    const first = design(pipeline);
    const findings = pipeline.findings(first);
    const plan = pipeline.plan(first);
    const second = design(pipeline, TEXT.replace('Juniper Flat', 'Juniper Hill').replace('2026-03-02', '2026-03-09'));
    expect(second.brief.title).toBe('Juniper Hill');
    expect(second.layout).toBe(first.layout);
    expect(second.parts).toBe(first.parts);
    expect(pipeline.findings(second)).toBe(findings);
    expect(pipeline.plan(second)).not.toBe(plan);
  });

  it('drafts the board again for another scale or another thing to show, not for another title', () => {
    const pipeline = createPipeline(tools.font);
    const options = { scale: 1 / 60, sizes: true, marks: true, sights: true, dragged: null };
    const first = design(pipeline);
    const board = pipeline.board(first, options);
    expect(pipeline.board(first, { ...options })).toBe(board);
    expect(pipeline.board(design(pipeline, TEXT.replace('Juniper Flat', 'Juniper Hill')), { ...options })).toBe(board);
    for (const change of [{ scale: 1 / 30 }, { sizes: false }, { marks: false }, { sights: false }, { dragged: 'chute.width' }]) {
      expect(pipeline.board(first, { ...options, ...change })).not.toBe(board);
      pipeline.board(first, options);
    }
    expect(pipeline.board(design(pipeline, TEXT.replace('"width": 28', '"width": 29')), options)).not.toBe(board);
  });

  it('does again what a change touches', () => {
    const pipeline = createPipeline(tools.font);
    const first = design(pipeline);
    const findings = pipeline.findings(first);
    const cattle = design(pipeline, TEXT.replace('"eyeHeight": 50', '"eyeHeight": 51').replace('"weight": 1250', '"weight": 1150'));
    expect(cattle.layout).toBe(first.layout);
    expect(pipeline.findings(cattle)).not.toBe(findings);
    const wider = design(pipeline, TEXT.replace('"width": 28', '"width": 29'));
    expect(wider.layout).not.toBe(first.layout);
    expect(wider.parts).not.toBe(first.parts);
  });

  it('gives what a fresh one gives, whatever it did before', async () => {
    const worn = createPipeline(tools.font);
    for (const change of ['"width": 29', '"width": 30']) void worn.drawings(design(worn, TEXT.replace('"width": 28', change)));
    const files = async (pipeline: Pipe): Promise<string[]> => (await packageOf(pipeline)).map((file) => `${file.path} ${tools.sha256(file.bytes)}`);
    expect(await files(worn)).toEqual(await files(createPipeline(tools.font)));
  });
});

describe('a package', () => {
  it('comes in its fixed order, the manifest last', async () => {
    const paths = (await packageOf(createPipeline(tools.font))).map((file) => file.path);
    expect(paths.slice(0, 2)).toEqual(['juniper-flat.penwright.json', 'stations.json']);
    expect(paths.at(-1)).toBe('manifest.json');
    const drawings = paths.filter((path) => path.startsWith('drawings/'));
    expect(drawings.at(-1)).toBe('drawings/all.pdf');
    const names = [...new Set(drawings.slice(0, -1).map((path) => path.replace(/\.\w+$/, '')))];
    expect(drawings.slice(0, -1)).toEqual(names.flatMap((name) => ['dxf', 'svg', 'pdf'].map((form) => `${name}.${form}`)));
    expect(names).toContain('drawings/101 plan');
    const numbers = names.map((name) => Number(/\d+/.exec(name)?.[0]));
    expect(numbers).toEqual([...numbers].sort((a, b) => a - b));
  });

  it('makes no file that was not asked for', async () => {
    const files = await packageOf(createPipeline(tools.font), { only: ['stations', 'schedules'] });
    expect([...new Set(files.map((file) => file.kind))]).toEqual(['project', 'stations', 'schedules', 'manifest']);
    expect(JSON.parse(new TextDecoder().decode(files.at(-1)?.bytes))).toMatchObject({ kinds: ['schedules', 'stations'] });
  });

  it('ends when nobody asks for more', async () => {
    let count = 0;
    const pipeline = createPipeline(tools.font);
    const tables = scheduleTables(design(pipeline), pipeline.schedules(design(pipeline)), null).length;
    for await (const made of makePackage(pipeline, { text: TEXT, design: design(pipeline), defaults: [], only: ['schedules'] }, tools)) {
      count += 1;
      expect(made.done).toBe(count);
      // The project, the manifest and the cut list with them.
      expect(made.total).toBe(tables + 3);
      if (count === 2) break;
    }
    expect(count).toBe(2);
  });
});
