import { resolve } from 'node:path';
import { cutColumns, cutRows, type CutRow, planCuts, type CutPlan, toSteps } from '../../core/shop/cutting/index.ts';
import { type LinearSolver } from '../../core/shop/linear-solver.ts';
import { say } from '../../core/text/index.ts';
import { writeCsv } from '../../core/writers/index.ts';
import { plain, printRefusal, Refused, replaceFile, withReason } from '../disk/index.ts';
import { createSolver } from '../solver/highs.ts';
import { type CutListOptions, readCutListOptions } from './cut-list-options.ts';
import { EXIT, type Io } from './io.ts';
import { type PieceToCut, readPieces } from './read-pieces.ts';

/** Far over any list of pieces; a file of another kind given by mistake is told before it fills the memory. */
const GREATEST_BYTES = 16 * 1024 * 1024;

/** Pieces from a CSV cut from stock lengths: words to an exit code. */
export async function runCutList(words: readonly string[], io: Io): Promise<number> {
  const asked = readCutListOptions(words);
  if (asked.kind === 'help') {
    io.out(say('cut-list.usage'));
    return EXIT.written;
  }
  if (asked.kind === 'wrong') {
    for (const refusal of asked.refusals) io.err(printRefusal(refusal));
    return EXIT.fault;
  }
  const { options } = asked;
  try {
    return await cutFrom(options, io);
  } catch (error) {
    io.progress(null);
    if (io.signal.aborted && error === io.signal.reason) {
      io.err(say('cut-list.interrupted', { file: plain(options.out) }));
      return EXIT.interrupted;
    }
    if (!(error instanceof Refused)) throw error;
    io.err(printRefusal(error.refusal));
    return EXIT.unwritten;
  }
}

async function cutFrom(options: CutListOptions, io: Io): Promise<number> {
  const text = await readText(options, io).catch((error: unknown) => {
    if (!(error instanceof Refused)) throw error;
    io.err(printRefusal(error.refusal));
    return null;
  });
  if (text === null) return EXIT.fault;
  const read = readPieces(text, options.pieces, options.stock);
  if (read.some((entry) => 'key' in entry)) {
    for (const entry of read) if ('key' in entry) io.err(printRefusal(entry));
    return EXIT.fault;
  }
  const pieces = read as readonly PieceToCut[];
  await mayWrite(options, io);
  const solve = await createSolver();
  const end = options.seconds === null ? null : performance.now() + options.seconds * 1000;
  const left = (): number | null => (end === null ? null : (end - performance.now()) / 1000);
  const rows: CutRow[] = [];
  for (const section of new Set(pieces.map((piece) => piece.section))) {
    const plan = await planSection(section, pieces, options, solve, left, io);
    rows.push(...cutRows(section, plan));
    io.progress(null);
    io.out(plain(say('cut-list.section', { section, bars: plan.bars.length, least: plan.atLeast })));
  }
  io.signal.throwIfAborted();
  await io.guard(() => withReason(options.out, 'cut-list.unwritten', async () => {
    const given = resolve(io.cwd, options.out);
    const target = (await io.disk.kindOf(given)) === null ? given : await io.disk.realPath(given);
    await replaceFile(io.disk, target, new TextEncoder().encode(writeCsv(cutColumns('in'), rows)), () => true);
  }));
  io.out(say('cut-list.written', { rows: rows.length, file: plain(options.out) }));
  return EXIT.written;
}

async function planSection(section: string, pieces: readonly PieceToCut[], options: CutListOptions, solve: LinearSolver, left: () => number | null, io: Io): Promise<CutPlan> {
  const job = {
    needs: pieces.filter((piece) => piece.section === section).map(({ mark, length, quantity }) => ({ mark, length: toSteps(length), quantity })),
    stock: (options.stock.get(section) ?? []).map((length) => ({ length: toSteps(length), price: null, count: null })),
    kerf: toSteps(options.kerf),
  };
  const plans = planCuts(job, solve, left);
  for (;;) {
    const step = plans.next();
    if (step.done === true) {
      // Every piece was held against its stock, and the rack is not counted here.
      if ('kind' in step.value) throw new Error(`no plan for ${section}: ${step.value.kind}`);
      return step.value;
    }
    io.progress(say('cut-list.progress', { section: plain(section), bars: step.value.bars.length, least: step.value.atLeast }));
    await io.pause();
    io.signal.throwIfAborted();
  }
}

async function readText({ pieces }: CutListOptions, io: Io): Promise<string> {
  return withReason(pieces, 'cut-list.unreadable', async () => {
    const path = resolve(io.cwd, pieces);
    if ((await io.disk.kindOf(path)) === null) throw new Refused(pieces, 'cut-list.missing');
    const bytes = await io.disk.read(path);
    if (bytes.length > GREATEST_BYTES) throw new Refused(pieces, 'cut-list.too-large', { mb: GREATEST_BYTES / 1024 / 1024 });
    return new TextDecoder().decode(bytes);
  });
}

/** Told before the long part of the work. */
async function mayWrite({ pieces, out }: CutListOptions, io: Io): Promise<void> {
  const target = resolve(io.cwd, out);
  const kind = await io.disk.kindOf(target);
  if (kind === null) return;
  const real = await io.disk.realPath(target).catch(() => target);
  if (real === (await io.disk.realPath(resolve(io.cwd, pieces)))) throw new Refused(out, 'cut-list.out-is-pieces');
  if ((await io.disk.kindOf(real)) !== 'file') throw new Refused(out, 'cut-list.out-folder');
}
