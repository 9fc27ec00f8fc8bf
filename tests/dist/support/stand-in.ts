/** Folders that look to the packer like Electron's runtime for each system, with nothing in them that runs. */
import { mkdir, writeFile } from 'node:fs/promises';
import { createRequire } from 'node:module';
import { dirname, join } from 'node:path';
import { ROOT } from '../../structure/sources.ts';

/** What marks the place of the fuses in a runtime (Electron's documentation, "Fuses"), their version, how many, and each switched on. */
const FUSES = Buffer.concat([Buffer.from('dL7pKGdnNz796PbbjQWNKmHXBZaB9tsX'), Buffer.from([1, 8]), Buffer.from('11111111'), Buffer.alloc(64)]);
/** In a packed program: run as Node, cookie encryption, NODE_OPTIONS, inspect, asar integrity, asar alone, snapshot, file protocol; `0` off, `1` on. */
export const fusesIn = (program: Buffer): string => {
  const at = program.indexOf(FUSES.subarray(0, 34));
  return at < 0 ? 'none' : program.subarray(at + 34, at + 42).toString('latin1');
};

/** A module that the packer itself uses. */
export const packerModule = <T>(name: string): Promise<T> => {
  const packer = createRequire(createRequire(join(ROOT, 'package.json')).resolve('electron-builder'));
  return import(createRequire(packer.resolve('app-builder-lib')).resolve(name)) as Promise<T>;
};

const put = async (folder: string, files: Readonly<Record<string, string | Uint8Array>>): Promise<string> => {
  for (const [name, content] of Object.entries(files)) {
    await mkdir(dirname(join(folder, name)), { recursive: true });
    await writeFile(join(folder, name), content, { mode: 0o755 });
  }
  return folder;
};

export const linuxRuntime = (folder: string): Promise<string> => put(folder, { electron: FUSES, 'locales/en-US.pak': '', LICENSE: 'licence' });

interface PeModule {
  NtExecutable: { createEmpty(is32: boolean, isDll: boolean): { generate(): ArrayBuffer } };
  NtExecutableResource: { from(exe: unknown): { entries: unknown[]; outputResource(exe: unknown): void } };
  Resource: { VersionInfo: { createEmpty(): { setStringValues(lang: { lang: number; codepage: number }, values: Record<string, string>): void; outputToResourceEntries(entries: unknown[]): void } } };
}

/** A program of Windows that holds its version and no code. */
export async function windowsRuntime(folder: string): Promise<string> {
  const { NtExecutable, NtExecutableResource, Resource } = await packerModule<PeModule>('resedit');
  const exe = NtExecutable.createEmpty(false, false);
  const resources = NtExecutableResource.from(exe);
  const version = Resource.VersionInfo.createEmpty();
  version.setStringValues({ lang: 1033, codepage: 1200 }, { ProductName: 'Electron' });
  version.outputToResourceEntries(resources.entries);
  resources.outputResource(exe);
  return put(folder, { 'electron.exe': Buffer.concat([Buffer.from(exe.generate()), FUSES]), 'locales/en-US.pak': '' });
}

const plist = (name: string): string =>
  `<?xml version="1.0" encoding="UTF-8"?><plist version="1.0"><dict><key>CFBundleExecutable</key><string>${name}</string><key>CFBundleName</key><string>${name}</string></dict></plist>`;

export function macRuntime(folder: string): Promise<string> {
  const inside = 'Electron.app/Contents';
  const files: Record<string, string | Uint8Array> = {
    [`${inside}/Info.plist`]: plist('Electron'),
    [`${inside}/MacOS/Electron`]: '',
    [`${inside}/Resources/en.lproj/locale.pak`]: '',
    [`${inside}/Frameworks/Electron Framework.framework/Electron Framework`]: FUSES,
  };
  for (const name of ['Electron Helper', 'Electron Helper (Renderer)', 'Electron Helper (GPU)', 'Electron Helper (Plugin)']) {
    files[`${inside}/Frameworks/${name}.app/Contents/Info.plist`] = plist(name);
    files[`${inside}/Frameworks/${name}.app/Contents/MacOS/${name}`] = '';
  }
  return put(folder, files);
}
