/** The welds of the catwalks: deck, bearers, brackets, legs, toe boards, foot cleats, guards and steps. */
import { inches, type Inches } from '../../base/quantity.ts';
import { CATWALK_PRACTICE } from '../../brief/catwalk-practice.ts';
import { gateSection } from '../../brief/gate-steel.ts';
import { type Brief } from '../../brief/types.ts';
import { type Catwalk, type Layout } from '../../layout/index.ts';
import { type CatwalkPart, type EndCut, type Parts, type Piece } from '../../parts/index.ts';
import { type Section } from '../../steel/index.ts';
import { filletArea, squareArea } from './deposit.ts';
import { endLength, perimeter } from './fence-welds.ts';
import { filletLot, lotOf } from './lot.ts';
import { WELD_PRACTICE } from './practice.ts';
import { bracketWeld, buttWeld, deckEndWeld, deckSeamWeld } from './symbols.ts';
import { type Weld, type WeldLot } from './types.ts';

const { deck, bearer, bracket, leg, toeBoard, cleat, guard, steps } = CATWALK_PRACTICE;
const thinner = (...parts: readonly number[]): Inches => inches(Math.min(...parts));

export function catwalkWelds(brief: Brief, layout: Layout, parts: Parts): readonly WeldLot[] {
  const own = new Map<string, Piece[]>();
  for (const piece of parts.pieces) {
    if (piece.place.kind !== 'catwalk') continue;
    const key = `${piece.place.catwalk} ${piece.place.part}`;
    const list = own.get(key);
    if (list === undefined) own.set(key, [piece]);
    else list.push(piece);
  }
  return layout.catwalks.flatMap((catwalk) => {
    const of = (part: CatwalkPart): readonly Piece[] => own.get(`${catwalk.path} ${part}`) ?? [];
    const run = catwalk.stretches[0]!.run;
    return [...deckLots(brief, layout, catwalk, of, run), ...edgeLots(brief, of, run), ...stepLots(brief, catwalk, of, run)];
  });
}

type Of = (part: CatwalkPart) => readonly Piece[];

const endsOf = (pieces: readonly Piece[]): readonly EndCut[] => pieces.flatMap(({ ends }) => ends);
/** Ends of a bar, all round, one lot for each cut. */
function endLots(run: string, weld: Weld, ends: readonly EndCut[], bar: Section): readonly WeldLot[] {
  const area = filletArea(weld.symbol.arrow!.size!);
  const counts = new Map<string, { readonly each: number; count: number }>();
  for (const end of ends) {
    const known = counts.get(JSON.stringify(end));
    if (known === undefined) counts.set(JSON.stringify(end), { each: endLength(end, bar), count: 1 });
    else known.count += 1;
  }
  return [...counts.values()].map(({ each, count }) => lotOf(run, weld, count, each, area));
}

/** Joints of a row of bars in one line: one fewer than the bars; each takes as much as a bar's square end. */
const lineLots = (brief: Brief, run: string, joint: 'bearer-joint' | 'guard-mitre', count: number, bar: Section): readonly WeldLot[] =>
  [lotOf(run, buttWeld(brief, joint, bar.wall, 0, true), count, perimeter(bar), squareArea(bar.wall, 0, WELD_PRACTICE.leastGap))];

function deckLots(brief: Brief, layout: Layout, catwalk: Catwalk, of: Of, run: string): readonly WeldLot[] {
  const [bar, pipe] = [gateSection(bearer.section), gateSection(leg.section)];
  const bearers = of('bearer');
  const [brackets, legs] = [of('bracket'), of('leg')];
  const post = layout.fences.find((fence) => fence.run === run && fence.side === catwalk.side)?.brief.post.wall ?? deck.thickness;
  const parts = catwalk.stretches.reduce((sum, stretch) => sum + stretch.parts.length, 0);
  const onPost = bracketWeld(brief, 'bracket-post', thinner(bracket.thickness, post));
  const onBracket = bracketWeld(brief, 'bearer-bracket', thinner(bracket.thickness, bar.wall));
  return [
    filletLot(run, deckSeamWeld(brief, 'deck-bearer', thinner(deck.thickness, bar.wall)), bearers.map(({ length }) => length)),
    // Two rows, from one end of the catwalk to the other.
    ...(bearers.length > 0 ? lineLots(brief, run, 'bearer-joint', 2 * (parts - 1), bar) : []),
    ...endLots(run, deckEndWeld(brief, 'bearer-cross', bar.wall), endsOf(of('cross')), bar),
    filletLot(run, onPost, brackets.map(({ flatHeight }) => flatHeight ?? 0)),
    // Both bearers cross each of them.
    filletLot(run, onBracket, brackets.flatMap(() => [bearer.size, bearer.size])),
    ...endLots(run, deckEndWeld(brief, 'leg-end', thinner(pipe.wall, leg.foot.thickness)), endsOf(legs), pipe),
  ];
}

function edgeLots(brief: Brief, of: Of, run: string): readonly WeldLot[] {
  const [post, top, mid] = [guard.post, guard.top, guard.mid].map(gateSection) as [Section, Section, Section];
  const rails = of('top-rail').filter(({ place }) => place.kind === 'catwalk' && place.end === null);
  const across = of('top-rail').length - rails.length;
  return [
    filletLot(run, deckSeamWeld(brief, 'toe-deck', thinner(toeBoard.thickness, deck.thickness)), of('toe').map(({ length }) => length)),
    filletLot(run, deckSeamWeld(brief, 'cleat-deck', thinner(cleat.thickness, deck.thickness)), of('foot-cleat').map(({ length }) => length)),
    // Foot on the deck and head under the rail.
    ...endLots(run, deckEndWeld(brief, 'guard-post', thinner(post.wall, deck.thickness)), endsOf(of('guard-post')), post),
    ...(rails.length > 0 ? lineLots(brief, run, 'guard-mitre', Math.max(0, rails.length - 1) + across, top) : []),
    ...endLots(run, deckEndWeld(brief, 'guard-rail', thinner(mid.wall, post.wall)), endsOf(of('mid-rail')), mid),
  ];
}

function stepLots(brief: Brief, catwalk: Catwalk, of: Of, run: string): readonly WeldLot[] {
  const [stringer, rail] = [gateSection(steps.stringer), gateSection(steps.rail)];
  const flights = catwalk.flights.filter(({ risers }) => risers > 1);
  const treads = of('tread');
  const head = deckEndWeld(brief, 'stringer-deck', thinner(stringer.wall, deck.thickness));
  // Of each stringer its upper end, plumb.
  const heads = flights.flatMap(({ angle }) => [angle, angle].map((one): EndCut => ({ kind: 'slope-mitre', angle: one })));
  return [
    ...endLots(run, head, heads, stringer),
    filletLot(run, deckSeamWeld(brief, 'tread-stringer', thinner(steps.tread.thickness, stringer.wall)), treads.flatMap(({ flatHeight }) => [flatHeight ?? 0, flatHeight ?? 0])),
    ...endLots(run, deckEndWeld(brief, 'step-rail', rail.wall), endsOf([...of('step-rail'), ...of('step-post')]), rail),
  ];
}
