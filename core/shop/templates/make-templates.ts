import { type Brief } from '../../brief/index.ts';
import { type Parts, type Piece } from '../../parts/index.ts';
import { copeKey, copeOf, turnOf } from './cope-of.ts';
import { lowestFirst } from './lowest-first.ts';
import { sectionsByName } from './section-named.ts';
import { type Cope, type Template } from './types.ts';

/** The copes of a mark's two ends; null where an end is cut square. */
interface Marked {
  readonly piece: Piece;
  readonly quantity: number;
  readonly keys: readonly [string | null, string | null];
}

/** One template for every distinct cope and mitre of a pipe, by the lowest mark that each serves. */
export function makeTemplates(brief: Brief, parts: Parts): readonly Template[] {
  const sections = sectionsByName(brief);
  const copes = new Map<string, Cope>();
  const marked = [...byMark(parts.pieces)].map(([, pieces]): Marked => {
    const piece = pieces[0]!;
    const section = sections(piece.section);
    const keyOf = (end: 0 | 1): string | null => {
      const cope = section === null ? null : copeOf(piece, piece.ends[end], section);
      if (cope === null) return null;
      const key = copeKey(cope);
      if (!copes.has(key)) copes.set(key, cope);
      return key;
    };
    return { piece, quantity: pieces.length, keys: [keyOf(0), keyOf(1)] };
  }).filter(({ keys }) => keys[0] !== null || keys[1] !== null);
  marked.sort((a, b) => lowestFirst(a.piece.mark, b.piece.mark));
  const names = nameCopes(marked, new Set(parts.pieces.map(({ mark }) => mark)));
  return [...names].map(([key, name]) => {
    const served = marked.filter(({ keys }) => keys.includes(key));
    return {
      name,
      cope: copes.get(key)!,
      sections: [...new Set(served.map(({ piece }) => piece.section))],
      uses: served.map(({ piece, quantity, keys: [first, second] }) => {
        const far = first === key ? second : first;
        return {
          mark: piece.mark,
          quantity,
          ends: first === second ? 2 : 1,
          other: far === null || far === key ? null : names.get(far)!,
          turn: far === null ? null : turnOf(piece),
        };
      }),
    };
  });
}

function byMark(pieces: readonly Piece[]): ReadonlyMap<string, readonly Piece[]> {
  const groups = new Map<string, Piece[]>();
  for (const piece of pieces) {
    const group = groups.get(piece.mark);
    if (group === undefined) groups.set(piece.mark, [piece]);
    else group.push(piece);
  }
  return groups;
}

/** Each cope's name: the lowest mark's own, or with a letter where that mark has named another cope already. */
function nameCopes(marked: readonly Marked[], taken: ReadonlySet<string>): ReadonlyMap<string, string> {
  const names = new Map<string, string>();
  const given = new Set<string>();
  for (const { piece: { mark }, keys } of marked) {
    for (const key of keys) {
      if (key === null || names.has(key)) continue;
      let name = mark;
      // B, C, … past any mark of a person's own that reads the same.
      for (let letter = 66; given.has(name) || (name !== mark && taken.has(name)); letter++) name = `${mark}-${String.fromCharCode(letter)}`;
      given.add(name);
      names.set(key, name);
    }
  }
  return names;
}
