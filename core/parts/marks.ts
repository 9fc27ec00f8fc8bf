import { type PieceKind } from './types.ts';

/** The letter that a kind's marks begin with: rail, post, cap of a post, skin, closing plate, piece of a gate, cleat, deck, bumper; bearer, bracket, toe board, guard and step of a catwalk; template of a ramp's forms. */
const LETTER: Readonly<Record<PieceKind, string>> = {
  rail: 'R', post: 'P', cap: 'V', skin: 'S', plate: 'C', gate: 'G', cleat: 'K', deck: 'D', bumper: 'B',
  bearer: 'E', bracket: 'A', 'toe-board': 'T', guard: 'U', step: 'F', form: 'W',
};

/** Numbers of more digits are a person's own marks: they are never given again, but do not drive the count on. */
const MOST_DIGITS = 6;

/** Gives marks: a signature's own where it has one, else the next number of its letter. */
export interface MarkBook {
  readonly markOf: (kind: PieceKind, signature: string) => string;
  /** All marks so far, signature to mark: those issued before and those given now. */
  readonly marks: () => Readonly<Record<string, string>>;
}

/** Opens the book on the marks issued already. New ones go on past the highest number ever used: a mark is never given twice. */
export function markBook(issued: Readonly<Record<string, string>>): MarkBook {
  const marks = new Map(Object.entries(issued));
  const used = new Set(marks.values());
  const highest = new Map<string, number>();
  for (const mark of used) {
    const match = /^([A-Z])(\d+)$/.exec(mark);
    if (match === null || match[2]!.length > MOST_DIGITS) continue;
    highest.set(match[1]!, Math.max(highest.get(match[1]!) ?? 0, Number(match[2])));
  }
  const next = (letter: string): string => {
    const number = (highest.get(letter) ?? 0) + 1;
    highest.set(letter, number);
    const mark = `${letter}${String(number)}`;
    return used.has(mark) ? next(letter) : mark;
  };
  return {
    markOf: (kind, signature) => {
      const known = marks.get(signature);
      if (known !== undefined) return known;
      const mark = next(LETTER[kind]);
      marks.set(signature, mark);
      used.add(mark);
      return mark;
    },
    marks: () => Object.fromEntries(marks),
  };
}
