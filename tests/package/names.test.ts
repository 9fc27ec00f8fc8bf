import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { makeManifest, readManifest } from '../../core/package/manifest.ts';
import { slug } from '../../core/package/slug.ts';
import { utf8 } from '../../core/package/utf8.ts';
import { sha256 } from '../../electron/disk/index.ts';

describe('a title as a file name', () => {
  it('keeps what any system can hold', () => {
    expect(slug('Juniper Flat')).toBe('juniper-flat');
    expect(slug('  Crème & Söhne: Hof №2 ')).toBe('creme-sohne-hof-no2');
    expect(slug('../../etc/passwd')).toBe('etc-passwd');
    expect(slug('=1+1 <b> 🐄')).toBe('1-1-b');
    expect(slug('🐄')).toBe('project');
    expect(slug('CON')).toBe('con-project');
    expect(slug(`${'a'.repeat(59)} b`)).toBe('a'.repeat(59));
  });

  it('is plain for any title', () => {
    fc.assert(fc.property(fc.string({ unit: 'binary', maxLength: 80 }), (title) => {
      expect(slug(title)).toMatch(/^[a-z0-9]([a-z0-9-]{0,66}[a-z0-9])?$/);
    }), { seed: 20260302, numRuns: 1000 });
  });
});

describe('UTF-8', () => {
  it('is what the platform writes, for any text', () => {
    fc.assert(fc.property(fc.string({ unit: 'binary' }), (text) => {
      expect([...utf8(text)]).toEqual([...new TextEncoder().encode(text)]);
    }), { seed: 20260302, numRuns: 1000 });
    for (const text of ['\ud83d', 'a\udc04b', '\ud83d\ud83d\udc04', '🐄é☃\u0000']) expect([...utf8(text)]).toEqual([...new TextEncoder().encode(text)]);
  });
});

describe('a manifest', () => {
  const head = { project: 'A', revision: 'B', date: '2026-03-02', units: 'mm', kinds: ['schedules'] } as const;
  const file = { path: 'schedules/pieces.csv', kind: 'schedules', title: 'Pieces', bytes: utf8('abc') } as const;

  it('tells size and digest of each file (the value for "abc" is the one of FIPS 180-2, appendix B.1, from memory)', () => {
    expect(makeManifest(head, [file], sha256).files).toEqual([
      { path: 'schedules/pieces.csv', kind: 'schedules', title: 'Pieces', bytes: 3, sha256: 'ba7816bf8f01cfea414140de5dae2223b00361a396177a9cb410ff61f20015ad' },
    ]);
  });

  it('is read back, and nothing else is taken for one', () => {
    const manifest = makeManifest(head, [file], sha256);
    expect(readManifest(JSON.stringify(manifest))).toEqual(manifest);
    expect(readManifest(JSON.stringify({ ...manifest, later: 1 }))).toEqual(manifest);
    for (const other of ['', 'null', '[]', '{"name":"x"}', JSON.stringify({ ...manifest, version: 2 }), JSON.stringify({ ...manifest, files: [{ path: 'a' }] })]) {
      expect(readManifest(other)).toBeNull();
    }
  });
});
