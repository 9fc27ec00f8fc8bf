import { spawn } from 'node:child_process';
import { cp, mkdtemp, rm, symlink } from 'node:fs/promises';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { ask } from '../loopback/support.ts';
import { ROOT } from '../structure/sources.ts';

let home = '';

/** A copy of the program, so that what is built here is nobody else's. */
beforeAll(async () => {
  home = await mkdtemp(join(tmpdir(), 'penwright-'));
  for (const part of ['core', 'electron', 'renderer', 'shared', 'package.json', 'vite.config.ts', 'tsconfig.base.json', 'tsconfig.json']) await cp(join(ROOT, part), join(home, part), { recursive: true });
  await symlink(join(ROOT, 'node_modules'), join(home, 'node_modules'));
});
afterAll(() => rm(home, { recursive: true, force: true }));

describe('npm start', () => {
  it('builds the window, serves it to the browser from another folder, and ends with Ctrl-C', async () => {
    const child = spawn('npm', ['--prefix', home, 'start', '--', '--browser', '--no-open'], { cwd: tmpdir(), detached: true, stdio: ['ignore', 'pipe', 'pipe'] });
    let out = '';
    let err = '';
    child.stderr.on('data', (part: Buffer) => { err += part.toString('utf8'); });
    const ended = new Promise<number | null>((done) => child.on('close', done));
    const port = await new Promise<number>((found, failed) => {
      child.stdout.on('data', (part: Buffer) => {
        out += part.toString('utf8');
        const told = /http:\/\/127\.0\.0\.1:(\d+)\//.exec(out)?.[1];
        if (told !== undefined) found(Number(told));
      });
      void ended.then(() => { failed(new Error(`${out}${err}`)); });
    });
    const page = await ask(port, '/');
    expect(page.status).toBe(200);
    const named = [...page.body.matchAll(/(?:src|href)="\.(\/[^"]+)"/g)].map(([, path]) => path ?? '');
    expect(named.length).toBeGreaterThan(1);
    for (const path of named) expect([path, (await ask(port, path)).status]).toEqual([path, 200]);
    // What a terminal does: every process of the command is told.
    process.kill(-child.pid!, 'SIGINT');
    await ended;
    await expect(ask(port, '/')).rejects.toThrow('ECONNREFUSED');
    expect(err).toBe('');
  });
});
