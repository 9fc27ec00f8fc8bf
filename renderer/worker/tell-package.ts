import { createPipeline, makePackage, type PackageKind, BUILT_KINDS, type PackageTools } from '../../core/package/index.ts';
import { shownFault } from './answer.ts';
import { type PackageAsk, type PackageTold } from './protocol.ts';

/** Makes a package file by file, as the command does, and tells of each. Whoever asks for no more ends the work. */
export async function* tellPackage({ text, units, only }: PackageAsk, tools: PackageTools): AsyncGenerator<PackageTold, void, undefined> {
  const pipeline = createPipeline(tools.font);
  const read = pipeline.read(text, units);
  const worked = read.ok ? pipeline.design(read.brief) : read;
  if (!read.ok || !worked.ok) {
    yield { kind: 'faults', faults: (worked.ok ? [] : worked.faults).map(shownFault) };
    return;
  }
  for await (const { file, done, total } of makePackage(pipeline, { text, design: worked.design, defaults: read.defaults, only }, tools)) {
    yield { kind: 'made', path: file.path, bytes: file.bytes, done, total };
  }
  const kinds: readonly PackageKind[] = BUILT_KINDS.filter((kind) => only?.includes(kind) ?? true);
  yield { kind: 'ended', kinds, marks: worked.design.parts.marks };
}
