import { printFault } from '../../core/brief/index.ts';
import { createPipeline, earlierDesign, makePackage, type PackageKind, BUILT_KINDS, type PackageTools } from '../../core/package/index.ts';
import { say } from '../../core/text/index.ts';
import { shownFault } from './answer.ts';
import { type PackageAsk, type PackageTold } from './protocol.ts';

/** Makes a package file by file, as the command does, and tells of each. Whoever asks for no more ends the work. */
export async function* tellPackage({ text, units, only, since }: PackageAsk, tools: PackageTools): AsyncGenerator<PackageTold, void, undefined> {
  const pipeline = createPipeline(tools.font);
  const read = pipeline.read(text, units);
  const worked = read.ok ? pipeline.design(read.brief) : read;
  if (!read.ok || !worked.ok) {
    yield { kind: 'faults', faults: (worked.ok ? [] : worked.faults).map(shownFault) };
    return;
  }
  const earlier = since === undefined ? null : earlierDesign(tools.font, since, worked.design.brief.units);
  if (earlier?.ok === false) {
    yield { kind: 'faults', faults: earlier.faults.map((fault) => ({ path: '', words: say('command.since-fault', { fault: printFault(fault) }) })) };
    return;
  }
  for await (const { file, done, total } of makePackage(pipeline, { text, design: worked.design, defaults: read.defaults, only, since: earlier?.design ?? null }, tools)) {
    yield { kind: 'made', path: file.path, bytes: file.bytes, done, total };
  }
  const kinds: readonly PackageKind[] = BUILT_KINDS.filter((kind) => only?.includes(kind) ?? true);
  yield { kind: 'ended', kinds, marks: worked.design.parts.marks };
}
