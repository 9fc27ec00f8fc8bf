import { mkdtempSync, readdirSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import Papa from 'papaparse';
import { describe, expect, it, onTestFinished } from 'vitest';
import { type Io } from '../../electron/command/io.ts';
import { runCutList } from '../../electron/command/run-cut-list.ts';
import { nodeDisk } from '../../electron/disk/index.ts';

const PIECES = 'quantity,mark,section,length\n12,R1,pipe 2 sch 40,95.875\n3,R2,pipe 2 sch 40,"10\'-6"""\n4,P1,pipe 2 1/2 sch 40,2438.4 mm\n';

function temporaryFolder(): string {
  const folder = mkdtempSync(join(tmpdir(), 'penwright-'));
  onTestFinished(() => { rmSync(folder, { recursive: true, force: true }); });
  return folder;
}

async function run(folder: string, words: readonly string[], signal = new AbortController().signal) {
  const out: string[] = [];
  const err: string[] = [];
  const io: Io = { cwd: folder, disk: nodeDisk, signal, out: (line) => void out.push(line), err: (line) => void err.push(line), progress: () => undefined, guard: (write) => write(), pause: () => Promise.resolve() };
  return { code: await runCutList(words, io), out, err };
}

describe('the cut list from a CSV of pieces', () => {
  it('is written with the bars of each section and the bound', async () => {
    const folder = temporaryFolder();
    writeFileSync(join(folder, 'pieces.csv'), PIECES);
    const done = await run(folder, ['pieces.csv', '--stock', 'pipe 2 sch 40=21 ft', '--stock', 'pipe 2 1/2 sch 40=24 ft', '--kerf', '1/8', '--out', 'cuts.csv']);
    expect(done.err).toEqual([]);
    expect(done.code).toBe(0);
    // By hand: no bar of 252 in takes three (3 x 95 7/8 is over), nor two of 126 in and a kerf; 15 pieces, two a bar, are 8 bars: three of 126 in each with one of 95 7/8, nine more of those on five.
    expect(done.out.slice(0, 2)).toEqual(['pipe 2 sch 40: 8 bars, at least 8', 'pipe 2 1/2 sch 40: 2 bars, at least 2']);
    const { data, meta } = Papa.parse<Record<string, string>>(readFileSync(join(folder, 'cuts.csv'), 'utf8'), { header: true, skipEmptyLines: true });
    expect(meta.fields).toEqual(['section', 'stock_length', 'bar', 'cut', 'mark', 'length', 'kerf', 'drop']);
    expect(data.length).toBe(19);
    expect(data.filter((row) => row['mark'] === 'P1').map((row) => row['length'])).toEqual(['96.0000', '96.0000', '96.0000', '96.0000']);
    expect(readdirSync(folder).sort()).toEqual(['cuts.csv', 'pieces.csv']);
  });

  it('fits pieces that fill a bar exactly where the saw takes nothing', async () => {
    const folder = temporaryFolder();
    writeFileSync(join(folder, 'p.csv'), 'mark,section,length,quantity\nA,s,84,6\n');
    const done = await run(folder, ['p.csv', '--stock', 's=21 ft', '--kerf', '0', '--out', 'c.csv']);
    expect(done.out[0]).toBe('s: 2 bars, at least 2');
  });

  it('comes out the same twice', async () => {
    const folder = temporaryFolder();
    writeFileSync(join(folder, 'pieces.csv'), PIECES);
    const words = ['pieces.csv', '--stock', 'pipe 2 sch 40=21 ft', '--stock', 'pipe 2 1/2 sch 40=24 ft', '--out'];
    await run(folder, [...words, 'a.csv']);
    await run(folder, [...words, 'b.csv']);
    expect(readFileSync(join(folder, 'a.csv'), 'utf8')).toBe(readFileSync(join(folder, 'b.csv'), 'utf8'));
  });

  it('names every row and option that is at fault, and writes nothing', async () => {
    const folder = temporaryFolder();
    writeFileSync(join(folder, 'p.csv'), 'mark,section,length,quantity\n,s,84,6\nB,t,12,1\nC,s,long,1\nD,s,300,1\nE,s,3,1.5\n');
    const done = await run(folder, ['p.csv', '--stock', 's=21 ft', '--out', 'c.csv']);
    expect(done.code).toBe(2);
    expect(done.err.map((line) => /row \d, \w+/.exec(line)?.[0])).toEqual(['row 1, mark', 'row 2, section', 'row 3, length', 'row 4, D', 'row 5, quantity']);
    expect(done.err.every((line) => line.startsWith('p.csv: ') && line.includes('allowed'))).toBe(true);
    expect(readdirSync(folder)).toEqual(['p.csv']);
    const words = await run(folder, ['--stock', 's', '--kerf', '9', '--seconds', 'x', '--speed']);
    expect(words.code).toBe(2);
    expect(words.err.map((line) => line.split(':')[0]).sort()).toEqual(['--kerf', '--out', '--seconds', '--speed', '--stock', 'PIECES.csv']);
  });

  it('leaves what stands there where it can\'t be written, or is the list of pieces itself', async () => {
    const folder = temporaryFolder();
    writeFileSync(join(folder, 'p.csv'), 'mark,section,length,quantity\nA,s,84,6\n');
    const same = await run(folder, ['p.csv', '--stock', 's=21 ft', '--out', './p.csv']);
    expect([same.code, readFileSync(join(folder, 'p.csv'), 'utf8')]).toEqual([3, 'mark,section,length,quantity\nA,s,84,6\n']);
    expect((await run(folder, ['p.csv', '--stock', 's=21 ft', '--out', '.'])).code).toBe(3);
    expect((await run(folder, ['p.csv', '--stock', 's=21 ft', '--out', 'no/such/c.csv'])).code).toBe(3);
  });

  it('is given up where a person stops it', async () => {
    const folder = temporaryFolder();
    writeFileSync(join(folder, 'p.csv'), 'mark,section,length,quantity\nA,s,84,6\n');
    const stop = new AbortController();
    stop.abort(new Error('SIGINT'));
    const done = await run(folder, ['p.csv', '--stock', 's=21 ft', '--out', 'c.csv'], stop.signal);
    expect(done.code).toBe(130);
    expect(readdirSync(folder)).toEqual(['p.csv']);
  });
});
