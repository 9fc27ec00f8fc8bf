import { mkdir, mkdtemp, readdir, rm, symlink, writeFile } from 'node:fs/promises';
import { connect } from 'node:net';
import { networkInterfaces, tmpdir } from 'node:os';
import { join } from 'node:path';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { type Loopback, startLoopback } from '../../electron/loopback/index.ts';
import { ask } from './support.ts';

let home = '';
let loopback: Loopback;
let port = 0;

beforeAll(async () => {
  home = await mkdtemp(join(tmpdir(), 'penwright-'));
  const page = join(home, 'page');
  await mkdir(join(page, 'assets'), { recursive: true });
  await writeFile(join(home, 'secret.txt'), 'secret');
  await writeFile(join(page, 'index.html'), '<!doctype html><title>Window</title>');
  await writeFile(join(page, 'assets', 'a b.js'), 'export {};');
  await writeFile(join(page, 'assets', 'font.ttf'), 'font');
  for (const name of ['package-worker-Ab_1-2.js', 'cut-worker-x.js', 'worker-x.js']) await writeFile(join(page, 'assets', name), 'export {};');
  await symlink(join(home, 'secret.txt'), join(page, 'assets', 'link.txt'));
  loopback = await startLoopback(page);
  port = Number(new URL(loopback.address).port);
});

afterAll(async () => {
  await loopback.close();
  await rm(home, { recursive: true, force: true });
});

describe('the loopback server', () => {
  it('serves the page and its files, each with its type', async () => {
    expect(loopback.address).toBe(`http://127.0.0.1:${String(port)}/`);
    const page = await ask(port, '/');
    expect([page.status, page.body, page.headers['content-type']]).toEqual([200, '<!doctype html><title>Window</title>', 'text/html; charset=utf-8']);
    expect((await ask(port, '/index.html?x=1')).body).toBe(page.body);
    expect((await ask(port, '/assets/a%20b.js')).headers['content-type']).toBe('text/javascript; charset=utf-8');
    expect((await ask(port, '/assets/font.ttf')).headers['content-type']).toBe('font/ttf');
  });

  it('tells the size alone to HEAD', async () => {
    const head = await ask(port, '/', {}, 'HEAD');
    expect([head.status, head.body, head.headers['content-length']]).toEqual([200, '', '36']);
  });

  it('sends the strict policy with every answer, refusals too', async () => {
    for (const path of ['/', '/none']) {
      const { headers } = await ask(port, path);
      expect(headers['content-security-policy']).toBe(
        "default-src 'none'; script-src 'self'; worker-src 'self'; style-src 'self'; img-src 'self' blob: data:; font-src 'self'; " +
        "connect-src 'self'; base-uri 'none'; form-action 'none'; frame-ancestors 'none'",
      );
      expect(headers['x-content-type-options']).toBe('nosniff');
      expect(headers['access-control-allow-origin']).toBeUndefined();
    }
  });

  it('lets the workers that plan cuts compile the solver, by their own answers alone', async () => {
    const scripts = async (path: string): Promise<string | undefined> =>
      String((await ask(port, path)).headers['content-security-policy']).split('; ').find((rule) => rule.startsWith('script-src'));
    for (const path of ['/assets/package-worker-Ab_1-2.js', '/assets/cut-worker-x.js']) expect(await scripts(path), path).toBe("script-src 'self' 'wasm-unsafe-eval'");
    for (const path of ['/', '/index.html', '/assets/a%20b.js', '/assets/worker-x.js', '/assets/cut-worker-x.js.txt', '/assets/none/my-cut-worker-x.js']) {
      expect(await scripts(path), path).toBe("script-src 'self'");
    }
  });

  it.each(['/../secret.txt', '/assets/../../secret.txt', '/%2e%2e/secret.txt', '/..%2fsecret.txt', '/assets/..%2f..%2fsecret.txt', '/..%5csecret.txt', '/%252e%252e/secret.txt',
    '/assets/link.txt', '/assets', '/assets/', '//secret.txt', '/index.html%00.js', '/%', '/INDEX.HTML', '/index.html/', '*', 'http://127.0.0.1/secret.txt'])('has nothing at %s', async (path) => {
    const { status, body } = await ask(port, path);
    expect([status, body]).toEqual([404, '']);
  });

  it.each(['POST', 'PUT', 'DELETE', 'PATCH', 'OPTIONS', 'PROPFIND'])('refuses %s and changes nothing', async (method) => {
    const before = await readdir(join(home, 'page'), { recursive: true });
    const { status, headers } = await ask(port, '/new.txt', {}, method, 'text');
    expect([status, headers['allow']]).toEqual([405, 'GET, HEAD']);
    expect(await readdir(join(home, 'page'), { recursive: true })).toEqual(before);
  });

  it.each(['localhost', '127.0.0.1', 'penwright.example', '127.0.0.1:1', '[::1]'])('refuses the host "%s"', async (host) => {
    expect((await ask(port, '/', { Host: host })).status).toBe(421);
  });

  it('refuses another site\'s page, and lets its own and a person in', async () => {
    const own = `http://127.0.0.1:${String(port)}`;
    const answers = async (headers: Record<string, string>): Promise<number> => (await ask(port, '/', headers)).status;
    expect(await answers({ Origin: 'http://penwright.example' })).toBe(403);
    expect(await answers({ Origin: 'null' })).toBe(403);
    expect(await answers({ Origin: `http://127.0.0.1:${String(port + 1)}` })).toBe(403);
    for (const site of ['cross-site', 'same-site', 'anything']) expect(await answers({ 'Sec-Fetch-Site': site })).toBe(403);
    expect(await answers({ Origin: own, 'Sec-Fetch-Site': 'same-origin' })).toBe(200);
    expect(await answers({ 'Sec-Fetch-Site': 'none' })).toBe(200);
  });

  it('refuses a GET with a body', async () => {
    expect((await ask(port, '/', { 'Content-Length': '4' }, 'GET', 'text')).status).toBe(400);
  });

  it('stands on this machine alone', async () => {
    const others = Object.values(networkInterfaces()).flatMap((list) => list ?? []).filter((at) => !at.internal && at.family === 'IPv4').map((at) => at.address);
    for (const address of [...others, '127.0.0.2']) {
      const reached = await new Promise<boolean>((done) => {
        const socket = connect({ host: address, port }, () => { socket.destroy(); done(true); });
        socket.on('error', () => { done(false); });
      });
      expect([address, reached]).toEqual([address, false]);
    }
  });

  it('gives each start a port of its own, and none once it is closed', async () => {
    const second = await startLoopback(join(home, 'page'));
    expect(second.address).not.toBe(loopback.address);
    await second.close();
    await expect(ask(Number(new URL(second.address).port), '/')).rejects.toThrow('ECONNREFUSED');
  });
});
