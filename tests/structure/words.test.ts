import { join } from 'node:path';
import { pathToFileURL } from 'node:url';
import { describe, expect, it } from 'vitest';
import { allFiles, ROOT } from './sources.ts';

type Words = Readonly<Record<string, string>>;

/** Every list of words, by its file. */
async function lists(): Promise<readonly (readonly [string, Words])[]> {
  const files = allFiles().filter((file) => file.startsWith('core/text/en/'));
  return Promise.all(files.map(async (file) => {
    const module = await import(pathToFileURL(join(ROOT, file)).href) as Readonly<Record<string, Words>>;
    return [file, Object.assign({}, ...Object.values(module)) as Words] as const;
  }));
}

describe('the table of words', () => {
  it('has each key once: a second would take the first one\'s place in silence', async () => {
    const homes = new Map<string, string[]>();
    for (const [file, words] of await lists()) for (const key of Object.keys(words)) homes.set(key, [...(homes.get(key) ?? []), file]);
    expect(homes.size).toBeGreaterThan(200);
    expect([...homes].filter(([, files]) => files.length > 1)).toEqual([]);
  });

  it('holds no word that breaks a line, but for how a command is used', async () => {
    const broken = (await lists()).flatMap(([, words]) => Object.entries(words).filter(([key, text]) => !key.endsWith('.usage') && /[\n\r\t]/.test(text)).map(([key]) => key));
    expect(broken).toEqual([]);
  });

  it('says of every fault what is allowed or must be', async () => {
    const faults = (await lists()).flatMap(([, words]) => Object.entries(words).filter(([key]) => key.startsWith('fault.')));
    expect(faults.filter(([, text]) => !/allowed|must be/.test(text))).toEqual([]);
  });
});
