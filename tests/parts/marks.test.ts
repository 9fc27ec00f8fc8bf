import { describe, expect, it } from 'vitest';
import { degrees, inches, radians } from '../../core/base/quantity.ts';
import { markBook } from '../../core/parts/marks.ts';
import { signatureOf } from '../../core/parts/signature.ts';
import { type EndCut, type Piece } from '../../core/parts/index.ts';
import { arc, makeBrief, straight } from '../support/brief-builder.ts';
import { partsOf } from '../support/laid-out.ts';

const MARK = /^[A-Z][A-Z0-9-]{0,11}$/;

describe('a mark book', () => {
  it('gives a signature the mark it had, and a new one the next number of its letter', () => {
    const book = markBook({ 'rail; a': 'R7', 'rail; old': 'R12', 'post; a': 'P3' });
    expect(book.markOf('rail', 'rail; a')).toBe('R7');
    expect(book.markOf('rail', 'rail; b')).toBe('R13');
    expect(book.markOf('rail', 'rail; b')).toBe('R13');
    expect(book.markOf('post', 'post; b')).toBe('P4');
    expect(book.markOf('skin', 'skin; a')).toBe('S1');
    expect(book.markOf('plate', 'plate; a')).toBe('C1');
    expect(book.marks()).toMatchObject({ 'rail; old': 'R12', 'rail; b': 'R13' });
  });

  it('never gives a mark twice, whatever marks a person gave', () => {
    const book = markBook({ a: 'R1', b: 'R-2', c: 'RAIL', d: 'R99999999999', e: 'R02' });
    const given = Array.from({ length: 50 }, (_, i) => book.markOf('rail', `rail; ${String(i)}`));
    expect(new Set([...given, 'R1', 'R-2', 'RAIL', 'R99999999999', 'R02']).size).toBe(55);
    for (const mark of given) expect(mark).toMatch(MARK);
  });

  it('takes a signature by any name, also those of an object\'s own members', () => {
    const book = markBook({});
    expect(book.markOf('rail', 'constructor')).toBe('R1');
    expect(book.markOf('rail', '__proto__')).toBe('R2');
  });
});

describe('a signature', () => {
  const piece = (length: number, ends: readonly [EndCut, EndCut], radius: number | null = null): string => {
    const bend = radius === null ? null : { radius: inches(radius), angle: radians(length / radius) };
    return signatureOf({ kind: 'rail', section: 'pipe 2 sch 40', ends }, { length: inches(length), lengthShort: null, flatHeight: null, bend, weight: 0 as never });
  };
  const square: EndCut = { kind: 'square' };
  const mitre = (angle: number): EndCut => ({ kind: 'mitre', angle: degrees(angle) });

  it('does not part pieces by floating noise at any fraction of an inch', () => {
    for (let i = 0; i < 512; i++) {
      const length = 100 + i / 512;
      expect(piece(length + 3e-10, [square, square])).toBe(piece(length - 3e-10, [square, square]));
    }
  });

  it('parts pieces that differ by two steps', () => {
    for (let i = 0; i < 100; i++) expect(piece(100 + i * 0.0137, [square, square])).not.toBe(piece(100.0002 + i * 0.0137, [square, square]));
  });

  it('is one for a piece turned end for end, and parts cuts, bends and the side of a mitre on a bend', () => {
    expect(piece(80, [square, mitre(15)])).toBe(piece(80, [mitre(15), square]));
    const all = [
      piece(80, [square, square]), piece(80, [square, mitre(15)]), piece(80, [square, square], 145),
      piece(80, [square, mitre(15)], 145), piece(80, [square, mitre(-15)], 145), piece(80, [{ kind: 'cope', postRadius: inches(1.4375) }, square]),
    ];
    expect(new Set(all).size).toBe(all.length);
  });
});

describe('piece marks', () => {
  const figures = (p: Piece): string => JSON.stringify([p.kind, p.section, p.length, p.lengthShort, p.flatHeight, p.bend, p.weight]);

  it('match what can be painted, and one mark has one set of figures', () => {
    const { pieces } = partsOf(makeBrief());
    const byMark = new Map<string, string>();
    for (const piece of pieces) {
      expect(piece.mark).toMatch(MARK);
      expect(figures(piece)).toBe(byMark.get(piece.mark) ?? figures(piece));
      byMark.set(piece.mark, figures(piece));
    }
  });

  it('stay with the pieces that a change leaves alone, and are not given again to others', () => {
    const before = partsOf(makeBrief());
    const changed = makeBrief({
      marks: before.marks,
      chute: { width: inches(28), runs: [straight(120), arc(180, 90, 'right'), straight(72)] },
    });
    const after = partsOf(changed);
    const markAt = new Map(before.pieces.map((p) => [p.key, p.mark]));
    for (const piece of after.pieces.filter((p) => p.run !== 'chute-2')) expect(piece.mark).toBe(markAt.get(piece.key));
    const old = new Set(Object.values(before.marks));
    const rolled = after.pieces.filter((p) => p.run === 'chute-2' && p.kind !== 'post' && p.kind !== 'cap');
    expect(rolled.length).toBeGreaterThan(10);
    for (const piece of rolled) expect(old.has(piece.mark)).toBe(false);
    // Going back gives the old marks back.
    expect(partsOf(makeBrief({ marks: after.marks })).pieces.map((p) => p.mark)).toEqual(before.pieces.map((p) => p.mark));
  });
});

describe('weights', () => {
  it('are those of the handbook: 8 ft of 2 1/2 in pipe at 5.79 lb/ft, 6 ft of 2 in at 3.65 (ASME B36.10M, within 0.3 %)', () => {
    const { pieces } = partsOf(makeBrief());
    const post = pieces.find((p) => p.kind === 'post' && p.run === 'chute-3')!;
    expect(Math.abs(post.weight / (8 * 5.79) - 1)).toBeLessThan(0.003);
    const rail = pieces.find((p) => p.kind === 'rail' && p.run === 'chute-3')!;
    expect(Math.abs(rail.weight / ((71.875 / 12) * 3.65) - 1)).toBeLessThan(0.003);
    // A 1/4 in plate weighs 10.21 lb/ft² at 0.2836 lb/in³.
    const plate = pieces.find((p) => p.kind === 'plate')!;
    expect(plate.weight).toBeCloseTo(19.72974 * 58 * 0.25 * 0.2836, 3);
  });
});
