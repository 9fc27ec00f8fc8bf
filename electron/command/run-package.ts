import { printFault, type Fault } from '../../core/brief/index.ts';
import { createPipeline, earlierDesign, keepMarks, makePackage, PACKAGE_KINDS, type Design, type PackageFile } from '../../core/package/index.ts';
import { say } from '../../core/text/index.ts';
import { liesIn, mend, packagePlace, plain, printRefusal, readProject, recognize, Refused, refuseLesser, replaceFile, sameBytes, withReason, writePackage, type ProjectFile } from '../disk/index.ts';
import { EXIT, type Io } from './io.ts';
import { type Options, readOptions } from './options.ts';
import { tellFindings } from './tell-findings.ts';
import { packageTools } from './tools.ts';

/** The command: words to an exit code. Everything that it says goes through `io`. Throws only for a mistake in the program. */
export async function runPackage(words: readonly string[], io: Io): Promise<number> {
  const asked = readOptions(words);
  if (asked.kind === 'help') {
    io.out(say('command.usage', { kinds: PACKAGE_KINDS.join(', ') }));
    return EXIT.written;
  }
  if (asked.kind === 'wrong') {
    for (const refusal of asked.refusals) io.err(printRefusal(refusal));
    return EXIT.fault;
  }
  try {
    return await writeFrom(asked.options, io);
  } catch (error) {
    if (io.signal.aborted && error === io.signal.reason) {
      io.progress(null);
      io.err(say('command.interrupted', { folder: plain(asked.options.out) }));
      return EXIT.interrupted;
    }
    if (!(error instanceof Refused)) throw error;
    io.progress(null);
    io.err(printRefusal(error.refusal));
    return EXIT.unwritten;
  }
}

async function writeFrom(options: Options, io: Io): Promise<number> {
  const { out } = options;
  const target = await withReason(out, 'command.out-unwritten', () => packagePlace(io.disk, io.cwd, out));
  // Before anything else, whatever becomes of this run: what an interrupted one left is mended.
  await io.guard(() => withReason(out, 'command.out-unwritten', () => mend(io.disk, target, out)));
  io.signal.throwIfAborted();
  const project = await readOrRefuse(options.project, io);
  if (project === null) return EXIT.fault;

  const tools = packageTools();
  const pipeline = createPipeline(tools.font);
  const read = pipeline.read(project.text, options.units);
  if (!read.ok) return tellFaults(read.faults, io);
  const worked = pipeline.design(read.brief);
  if (!worked.ok) return tellFaults(worked.faults, io);
  const { design } = worked;
  const since = options.since === null ? null : await earlierIssue(options.since, design.brief.units, tools.font, io);
  if (since === 'faulty') return EXIT.fault;

  if (liesIn(project.path, target)) throw new Refused(out, 'command.project-in-out', { project: options.project });
  const { only } = options;
  const mayReplace: Parameters<typeof writePackage>[1]['mayReplace'] = (standing) => {
    if (only !== null) refuseLesser(standing, only, out);
  };
  // A folder that may not be replaced is told before the long part of the work.
  await withReason(out, 'command.out-unwritten', async () => { mayReplace(await recognize(io.disk, target, out)); });

  const files: PackageFile[] = [];
  for await (const made of makePackage(pipeline, { text: project.text, design, defaults: read.defaults, only, since }, tools)) {
    files.push(made.file);
    io.progress(say('command.progress', { done: made.done, total: made.total, path: made.file.path }));
    await io.pause();
    io.signal.throwIfAborted();
  }
  const leftover = await io.guard(() => writePackage(io.disk, { target, shown: out, files, mayReplace, signal: io.signal }));
  io.progress(null);
  io.out(say('command.written', { files: files.length, folder: plain(out) }));
  if (leftover !== null) io.err(say('command.leftover', { folder: plain(leftover) }));
  if (only?.includes('plates') ?? true) {
    for (const { mark, refusal } of pipeline.plates(design).plates) if (refusal !== null) io.err(say('plates.refused', { mark, reason: say(`plates.refusal.${refusal}`) }));
  }
  const findings = pipeline.findings(design);
  tellFindings(findings, io);
  if (options.keepMarks) await io.guard(() => keepInProject(project, design.parts.marks, read.brief.marks, options, io));
  return options.strict && findings.some((finding) => finding.result === 'fix') ? EXIT.fix : EXIT.written;
}

/** The design of an earlier issue in this one's units; what is wrong with its file is told. */
async function earlierIssue(shown: string, units: 'in' | 'mm', font: ReturnType<typeof packageTools>['font'], io: Io): Promise<Design | 'faulty'> {
  const project = await readOrRefuse(shown, io);
  if (project === null) return 'faulty';
  const worked = earlierDesign(font, project.text, units);
  if (worked.ok) return worked.design;
  for (const fault of worked.faults) io.err(say('command.since-fault', { fault: plain(printFault(fault)) }));
  return 'faulty';
}

async function readOrRefuse(shown: string, io: Io): Promise<ProjectFile | null> {
  try {
    return await readProject(io.disk, io.cwd, shown);
  } catch (error) {
    if (!(error instanceof Refused)) throw error;
    io.err(printRefusal(error.refusal));
    return null;
  }
}

function tellFaults(faults: readonly Fault[], io: Io): number {
  for (const fault of faults) io.err(plain(printFault(fault)));
  return EXIT.fault;
}

/** Writes the marks that were issued back into the project file, everything else in it as it was. */
async function keepInProject(
  project: ProjectFile,
  marks: Readonly<Record<string, string>>,
  before: Readonly<Record<string, string>>,
  options: Options,
  io: Io,
): Promise<void> {
  const shown = plain(options.project);
  const text = keepMarks(project.text, marks);
  if (text === project.text) {
    io.out(say('command.marks-none', { project: shown }));
    return;
  }
  const bytes = new TextEncoder().encode(project.byteOrderMark ? `\ufeff${text}` : text);
  await withReason(options.project, 'command.marks-unwritten', async () => {
    const kept = await replaceFile(io.disk, project.path, bytes, (now) => now !== null && sameBytes(now, project.bytes));
    if (!kept) throw new Refused(options.project, 'command.marks-changed');
  });
  const count = Object.keys(marks).filter((signature) => before[signature] === undefined).length;
  io.out(say('command.marks-kept', { count, project: shown }));
}
