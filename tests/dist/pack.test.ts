import { cp, mkdir, mkdtemp, readdir, readFile, rm, symlink, writeFile } from 'node:fs/promises';
import { builtinModules } from 'node:module';
import { tmpdir } from 'node:os';
import { dirname, join } from 'node:path';
import { Arch, build, Platform } from 'electron-builder';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { BUILT_PAGE, BUILT_SHELL } from '../../electron/page/index.ts';
import { buildPage, buildShell } from '../../electron/start/build-window.ts';
import { readSource, ROOT } from '../structure/sources.ts';
import { fusesIn, linuxRuntime, macRuntime, packerModule, windowsRuntime } from './support/stand-in.ts';

interface AsarModule {
  listPackage(archive: string, options: { isPack: boolean }): string[];
  extractFile(archive: string, path: string): Buffer;
}

/** Where each system's build has its archive and the file that holds its fuses. */
const SYSTEMS = [
  ['Linux', Platform.LINUX.createTarget('dir', Arch.x64), linuxRuntime, 'linux-unpacked/resources/app.asar', 'linux-unpacked/penwright'],
  ['Windows', Platform.WINDOWS.createTarget('dir', Arch.x64), windowsRuntime, 'win-unpacked/resources/app.asar', 'win-unpacked/Penwright.exe'],
  ['macOS', Platform.MAC.createTarget('dir', Arch.arm64), macRuntime, 'mac-arm64/Penwright.app/Contents/Resources/app.asar', 'mac-arm64/Penwright.app/Contents/Frameworks/Electron Framework.framework/Electron Framework'],
] as const;

let home = '';
let asar: AsarModule;

/** A copy of what is packed from, with things beside it that have no business in a program. */
async function makeHome(): Promise<void> {
  home = await mkdtemp(join(tmpdir(), 'penwright-'));
  for (const file of ['package.json', 'electron-builder.yml', 'electron/installer', 'shared']) await cp(join(ROOT, file), join(home, file), { recursive: true });
  await symlink(join(ROOT, 'node_modules'), join(home, 'node_modules'));
  await buildPage(ROOT, join(home, BUILT_PAGE));
  await buildShell(ROOT, join(home, BUILT_SHELL));
  for (const stray of ['tests/x.test.ts', 'core/x.ts', 'out/demo/manifest.json', '.build/tests/x.js', '.build/window/x.js.map', '.env', 'notes.txt']) {
    await mkdir(dirname(join(home, stray)), { recursive: true });
    await writeFile(join(home, stray), 'stray');
  }
}

beforeAll(async () => {
  await makeHome();
  asar = await packerModule<AsarModule>('@electron/asar');
});
afterAll(() => rm(home, { recursive: true, force: true }));

describe.each(SYSTEMS)('packed for %s with a stand-in for the runtime', (_, targets, runtime, archive, program) => {
  let files: string[] = [];
  const read = (path: string): Buffer => asar.extractFile(join(home, 'packed', archive), path);

  beforeAll(async () => {
    await rm(join(home, 'packed'), { recursive: true, force: true });
    const electronDist = await runtime(join(home, 'runtime'));
    await build({ projectDir: home, publish: 'never', targets, config: { electronDist, directories: { output: join(home, 'packed') } } });
    await rm(electronDist, { recursive: true });
    files = asar.listPackage(join(home, 'packed', archive), { isPack: false }).map((path) => path.replaceAll('\\', '/').slice(1));
  });

  it('holds the shell, the page and the licenses of the letters, and nothing else', () => {
    const folders = new Set(files.map((file) => dirname(file)));
    const leaves = files.filter((file) => !folders.has(file));
    const page = leaves.filter((file) => file.startsWith('.build/window/'));
    expect(leaves.filter((file) => !page.includes(file)).sort()).toEqual(['.build/shell/main.cjs', '.build/shell/preload.cjs', 'package.json', 'shared/fonts/HERSHEY.txt', 'shared/fonts/OFL.txt']);
    expect(page).toContain('.build/window/index.html');
    expect(page.filter((file) => !/^\.build\/window\/(index\.html|assets\/[^/]+\.(js|css|ttf|svg|icc|wasm|json))$/.test(file))).toEqual([]);
  });

  it('begins where its package says, and needs nothing that is not in it', () => {
    const own = JSON.parse(read('package.json').toString()) as { main: string };
    expect(own.main).toBe('.build/shell/main.cjs');
    for (const file of [own.main, '.build/shell/preload.cjs']) {
      const needs = [...read(file).toString().matchAll(/\brequire\(["']([^"']+)["']\)/g)].map(([, name]) => name ?? '');
      expect(needs).toContain('electron');
      expect(needs.filter((name) => name !== 'electron' && !builtinModules.includes(name.replace(/^node:/, '')))).toEqual([]);
    }
    // A sandboxed preload can load Electron and nothing more.
    expect([...read('.build/shell/preload.cjs').toString().matchAll(/\brequire\(/g)]).toHaveLength(1);
  });

  it('has every file that the page names, the drawing font as it is, and the examples', async () => {
    const html = read('.build/window/index.html').toString();
    const named = [...html.matchAll(/(?:src|href)="\.\/([^"]+)"/g)].map(([, name]) => `.build/window/${name ?? ''}`);
    expect(named.length).toBeGreaterThan(1);
    expect(named.filter((name) => !files.includes(name))).toEqual([]);
    expect(html).not.toMatch(/(src|href)="(https?:)?\/\//);
    const font = files.find((file) => file.endsWith('.ttf'));
    expect(read(font ?? '').equals(await readFile(join(ROOT, 'shared/fonts/drawing.ttf')))).toBe(true);
    const scripts = files.filter((file) => /\.(js|json)$/.test(file)).map((file) => read(file).toString()).join('\n');
    const titles = (await readdir(join(ROOT, 'shared/examples'))).map((file) => (JSON.parse(readSource(`shared/examples/${file}`)) as { title: string }).title);
    expect(titles.length).toBeGreaterThan(2);
    expect(titles.filter((title) => !scripts.includes(title))).toEqual([]);
  });

  it('has the doors of the runtime shut that it has no use for', async () => {
    expect(fusesIn(await readFile(join(home, 'packed', program)))).toBe('01001110');
  });
});

describe('the file type', () => {
  it('is registered for macOS by its short ending', async () => {
    const told = await readFile(join(home, 'packed', 'mac-arm64/Penwright.app/Contents/Info.plist'), 'utf8');
    expect(told).toMatch(/<key>CFBundleTypeExtensions<\/key>\s*<array>\s*<string>penwright<\/string>\s*<\/array>/);
    expect(told).toMatch(/<key>CFBundleTypeRole<\/key>\s*<string>Editor<\/string>/);
    expect(told).toContain('ElectronAsarIntegrity');
  });

  it('and the targets of each system are those that are handed out', () => {
    const told = readSource('electron-builder.yml');
    expect(told).toMatch(/^fileAssociations:\n {2}- ext: penwright$/m);
    expect(told).toMatch(/^linux:\n(?:.*\n)*? {2}fileAssociations:\n {4}- ext: penwright\.json$/m);
    for (const part of ['win:\n  target: nsis\n', 'mac:\n  target: dmg\n', 'linux:\n  target:\n    - AppImage\n    - deb\n']) expect(told).toContain(part);
  });
});
