import { type DefaultUsed } from '../brief/index.ts';
import { say } from '../text/index.ts';
import { writeJson } from '../writers/index.ts';
import { drawingJobs } from './drawing-jobs.ts';
import { type CutList } from '../shop/cut-list/index.ts';
import { type Job } from './job.ts';
import { keepMarks } from './keep-marks.ts';
import { BUILT_KINDS, type PackageKind } from './kinds.ts';
import { makeManifest, MANIFEST_PATH } from './manifest.ts';
import { createPipeline, type Design, type EarlierIssue, type Pipeline } from './pipeline.ts';
import { nestJobs, plateJobs } from './plate-jobs.ts';
import { reportJobs } from './report/report-jobs.ts';
import { scheduleJobs } from './schedule-jobs.ts';
import { slug } from './slug.ts';
import { templateJobs } from './template-jobs.ts';
import { type PackageTools } from './tools.ts';
import { type PackageFile } from './types.ts';
import { utf8 } from './utf8.ts';

export interface PackageInput {
  /** The project as it was read. */
  readonly text: string;
  readonly design: Design;
  readonly defaults: readonly DefaultUsed[];
  /** null: all kinds that this version makes. */
  readonly only: readonly PackageKind[] | null;
  /** An earlier issue: what changed in the drawings since stands in clouds. */
  readonly since?: EarlierIssue | null;
}

/** A file that is made, and how far the work is. */
export interface Made {
  readonly file: PackageFile;
  readonly done: number;
  readonly total: number;
}

/**
 * The files of a package, one by one in their fixed order, the manifest last. Whoever asks for no more of them ends the work.
 * The same input gives the same bytes.
 */
export async function* makePackage(pipeline: Pipeline, input: PackageInput, tools: PackageTools): AsyncGenerator<Made, void, undefined> {
  const { brief } = input.design;
  const kinds = BUILT_KINDS.filter((kind) => input.only?.includes(kind) ?? true);
  const cuts = kinds.includes('drawings') || kinds.includes('schedules') ? await cutListOf(pipeline, input.design, tools) : null;
  const since = input.since ?? null;
  const before = since === null || !kinds.includes('drawings') ? null : { ...since, cuts: await cutListOf(createPipeline(tools.font), since, tools) };
  const jobs = packageJobs(pipeline, { ...input, since: before }, kinds, cuts, tools);
  const total = jobs.length + 1;
  const files: PackageFile[] = [];
  for (const job of jobs) {
    const file = { path: job.path, kind: job.kind, title: job.title, bytes: await job.make() };
    files.push(file);
    yield { file, done: files.length, total };
  }
  const head = { project: brief.title, revision: brief.revision.letter, date: brief.revision.date, units: brief.units, kinds };
  const manifest = utf8(writeJson(makeManifest(head, files, tools.sha256)));
  yield { file: { path: MANIFEST_PATH, kind: 'manifest', title: say('package.manifest'), bytes: manifest }, done: total, total };
}

/** The cut list, planned to its end: a package holds no lesser one. Rejects where the solver can't be had. */
async function cutListOf(pipeline: Pipeline, design: Design, tools: PackageTools): Promise<CutList> {
  const solve = await tools.solver().catch((error: unknown) => {
    throw new Error(say('package.no-solver', { reason: error instanceof Error ? error.message : String(error) }), { cause: error });
  });
  const plans = pipeline.cutList(pipeline.cutJobs(design), solve);
  for (;;) {
    const step = plans.next();
    if (step.done === true) return step.value;
  }
}

function packageJobs(pipeline: Pipeline, input: PackageInput, kinds: readonly PackageKind[], cuts: CutList | null, tools: PackageTools): readonly Job[] {
  const { design, defaults } = input;
  const { brief } = design;
  const has = (kind: PackageKind): boolean => kinds.includes(kind);
  const schedules = pipeline.schedules(design);
  const jobs: Job[] = [{
    path: `${slug(brief.title)}.penwright.json`,
    kind: 'project',
    title: brief.title,
    make: () => utf8(keepMarks(input.text, design.parts.marks)),
  }];
  if (has('stations')) jobs.push({ path: 'stations.json', kind: 'stations', title: say('package.stations'), make: () => utf8(writeJson(schedules.stations)) });
  if (has('drawings')) jobs.push(...drawingJobs(pipeline.drawings(design, cuts, input.since ?? null), brief, tools));
  if (has('plates')) jobs.push(...plateJobs(pipeline.plates(design), brief.units));
  if (has('nests')) jobs.push(...nestJobs(pipeline.plates(design), brief.units));
  if (has('templates')) jobs.push(...templateJobs(design, tools));
  if (has('schedules')) jobs.push(...scheduleJobs(design, schedules, cuts));
  if (has('report')) jobs.push(...reportJobs({ brief, layout: design.layout, findings: pipeline.findings(design), defaults }, tools));
  const paths = new Set(jobs.map((job) => job.path));
  if (paths.size !== jobs.length) throw new Error(`two files in one place: ${jobs.map((job) => job.path).join(', ')}`);
  return jobs;
}
