/** The order in which the steel goes up: posts first, then from the pivot post outward along the walk, gates last. */
import { type Layout } from '../../layout/index.ts';
import { gateMarks, type Parts, type Piece, type PieceKind } from '../../parts/index.ts';

export type StepWork = 'pivot' | 'posts' | 'cure' | 'rails' | 'skins' | 'plates' | 'other' | 'load' | 'gate';

export interface ErectionStep {
  readonly work: StepWork;
  /** Run, or a gate's mark; null for a step of the whole. */
  readonly where: string | null;
  /** Each mark with how many. */
  readonly marks: readonly { readonly mark: string; readonly count: number }[];
}

const WORK: Readonly<Partial<Record<PieceKind, StepWork>>> = { rail: 'rails', skin: 'skins', plate: 'plates', post: 'posts', cap: 'posts' };

export function erectionSteps(layout: Layout, parts: Parts): readonly ErectionStep[] {
  const runs = outward(layout);
  const fixed = parts.pieces.filter(({ place }) => place.kind !== 'gate' && place.kind !== 'form');
  const pivotPost = layout.posts.find(({ kind }) => kind === 'pivot-post');
  const isPivot = (piece: Piece): boolean => pivotPost !== undefined && (piece.place.kind === 'post' || piece.place.kind === 'cap')
    && Math.hypot(piece.place.at.x - pivotPost.at.x, piece.place.at.y - pivotPost.at.y) < 1e-6;
  const inRun = (run: string, work: StepWork): ErectionStep[] => {
    const pieces = fixed.filter((piece) => piece.run === run && (WORK[piece.kind] ?? 'other') === work && !isPivot(piece));
    return pieces.length === 0 ? [] : [{ work, where: run, marks: counted(pieces) }];
  };
  return [
    { work: 'pivot', where: null, marks: counted(fixed.filter(isPivot)) },
    ...runs.flatMap((run) => inRun(run, 'posts')),
    { work: 'cure', where: null, marks: [] },
    ...runs.flatMap((run) => (['rails', 'plates', 'skins', 'other'] as const).flatMap((work) => inRun(run, work))),
    { work: 'load', where: null, marks: [] },
    ...[...gateMarks(layout)].map(([path, mark]): ErectionStep => ({
      work: 'gate', where: mark, marks: counted(parts.pieces.filter(({ place }) => place.kind === 'gate' && place.gate === path)),
    })),
  ];
}

/** The junction and the crowd pen, which hang on the pivot post, then the chute down the walk and the alley back up it, then what stands by itself. */
function outward(layout: Layout): readonly string[] {
  const names = layout.runs.map(({ name }) => name);
  const alleys = names.filter((name) => name.startsWith('alley-')).reverse();
  const first = ['junction', 'crowd-pen'].filter((name) => names.includes(name));
  const rest = names.filter((name) => !first.includes(name) && !alleys.includes(name));
  const chutes = rest.filter((name) => name.startsWith('chute-'));
  return [...first, ...alleys, ...chutes, ...rest.filter((name) => !chutes.includes(name))];
}

function counted(pieces: readonly Piece[]): ErectionStep['marks'] {
  const counts = new Map<string, number>();
  for (const { mark } of pieces) counts.set(mark, (counts.get(mark) ?? 0) + 1);
  return [...counts].map(([mark, count]) => ({ mark, count }));
}
