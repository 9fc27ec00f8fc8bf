/** The package that the window makes is the command's, byte for byte: the same function of the same text. */
import { readFileSync } from 'node:fs';
import { describe, expect, it } from 'vitest';
import { packageTools } from '../../electron/command/tools.ts';
import { type PackageAsk, type PackageTold } from '../../renderer/worker/protocol.ts';
import { tellPackage } from '../../renderer/worker/tell-package.ts';
import { commandPackage, examplePath, EXAMPLES } from './support/command-package.ts';

const text = (name: string): string => readFileSync(examplePath(name), 'utf8');

async function told(ask: Omit<PackageAsk, 'kind'>): Promise<readonly PackageTold[]> {
  const all: PackageTold[] = [];
  for await (const what of tellPackage({ kind: 'package', ...ask }, packageTools())) all.push(what);
  return all;
}

const made = (all: readonly PackageTold[]): ReadonlyMap<string, Uint8Array> =>
  new Map(all.flatMap((what) => (what.kind === 'made' ? [[what.path, what.bytes] as const] : [])));

describe('the package of the window', () => {
  it.each(EXAMPLES)('is the command\'s, byte for byte: %s', async (name) => {
    const command = await commandPackage(name);
    const all = await told({ text: text(name), units: null, only: null });
    const window = made(all);
    expect([...window.keys()].sort()).toEqual([...command.keys()].sort());
    expect([...window].filter(([path, bytes]) => Buffer.compare(bytes, command.get(path) ?? new Uint8Array()) !== 0).map(([path]) => path)).toEqual([]);
    const manifest = JSON.parse(Buffer.from(command.get('manifest.json') ?? []).toString()) as { kinds: readonly string[] };
    expect(all.at(-1)).toMatchObject({ kind: 'ended', kinds: manifest.kinds });
  });

  it('also in other units and of some kinds alone', async () => {
    const command = await commandPackage('juniper-flat', ['--units', 'mm', '--only', 'schedules,stations']);
    const window = made(await told({ text: text('juniper-flat'), units: 'mm', only: ['schedules', 'stations'] }));
    expect([...window.keys()].sort()).toEqual([...command.keys()].sort());
    for (const [path, bytes] of window) expect(Buffer.from(bytes).equals(command.get(path) ?? new Uint8Array()), path).toBe(true);
  });

  it('tells how far it is, each file once, the list of files last', async () => {
    const all = await told({ text: text('juniper-flat'), units: null, only: ['report'] });
    const steps = all.flatMap((what) => (what.kind === 'made' ? [what] : []));
    expect(steps.map((step) => step.done)).toEqual(steps.map((_, index) => index + 1));
    expect(new Set(steps.map((step) => step.total))).toEqual(new Set([steps.length]));
    expect(steps.at(-1)?.path).toBe('manifest.json');
  });

  it('is none where the project has faults, which are told', async () => {
    expect(await told({ text: text('juniper-flat').replace('"12 ft"', '"12 yards"'), units: null, only: null }))
      .toMatchObject([{ kind: 'faults', faults: [{ path: 'crowdPen.radius' }] }]);
    // The funnel fence would lie past the alley's inner one.
    const project = JSON.parse(text('juniper-flat')) as { crowdPen: object };
    const crossed = { ...project, crowdPen: { ...project.crowdPen, sweep: 240, funnelAngle: 10 } };
    expect(await told({ text: JSON.stringify(crossed), units: null, only: null })).toMatchObject([{ kind: 'faults' }]);
  });
});
