/** What a deck is: its plates, the bearers under their edges, brackets at the posts, legs where there is no post. */
import { flatArea } from '../../base/flat-curves.ts';
import { type FlatShape, straightPath } from '../../base/flat-shape.ts';
import { add, planPoint, scale, sub, type PlanPoint, type Vec } from '../../base/points.ts';
import { SAME_ANGLE } from '../../base/tolerance.ts';
import { CATWALK_PRACTICE } from '../../brief/catwalk-practice.ts';
import { gateSection } from '../../brief/gate-steel.ts';
import { boltHole } from '../../steel/index.ts';
import { type Catwalk, type DeckPost } from '../../layout/index.ts';
import { inches, radians } from '../../base/quantity.ts';
import { type EndCut } from '../types.ts';
import { bracketSize, deckBuild, legLength, underSlope } from './build.ts';
import { type PartFrame, type StretchFrame } from './frame.ts';
import { rectangleOf, SQUARE, type Maker, type Where } from './own.ts';

const { deck, cleat, bearer, bracket, leg } = CATWALK_PRACTICE;

/** A leg's foot with a hole in each corner for an anchor. */
const FOOT: FlatShape = {
  outer: straightPath(rectangleOf(0, leg.foot.side, 0, leg.foot.side)),
  holes: rectangleOf(leg.foot.inset, leg.foot.side - leg.foot.inset, leg.foot.inset, leg.foot.side - leg.foot.inset)
    .map((center) => ({ kind: 'circle', center, radius: boltHole(leg.foot.anchor) / 2 })),
};

export function deckSteel(catwalk: Catwalk, frame: StretchFrame, make: Maker): void {
  const { bearers, brackets } = deckBuild(catwalk.lowest, catwalk.slope);
  const { stretch } = frame;
  for (const one of frame.parts) {
    deckPlate(catwalk, frame, one, make);
    if (bearers) bearersUnder(catwalk, frame, one, make);
    if (Math.abs(Math.tan(one.part.slope)) > cleat.from) footCleats(catwalk, frame, one, make);
  }
  if (bearers) crossBearers(catwalk, frame, make);
  if (!brackets) return;
  for (const post of stretch.posts) bracketAt(frame, post, make);
  for (const joint of stretch.joints) {
    if (joint.kind === 'between') continue;
    const where = { ...ofStretch(frame), bay: joint.bay };
    const inward = scale(sub(joint.far, joint.near), bearer.size / 2 / Math.hypot(joint.far.x - joint.near.x, joint.far.y - joint.near.y));
    const x = frame.xAt(joint.u);
    const under = deckBuild(joint.height, joint.slope).bearerUnder - underSlope(gateSection(leg.section).across, joint.slope);
    legUnder(where, add(joint.near, inward), { x, y: bearer.size / 2 }, under, make);
    legUnder(where, sub(joint.far, inward), { x, y: catwalk.brief.width - bearer.size / 2 }, under, make);
  }
}

const ofStretch = ({ stretch: { run, side } }: StretchFrame): Pick<Where, 'run' | 'side'> => ({ run, side });
const whereOf = (frame: StretchFrame, { part: { bay } }: PartFrame): Where => ({ ...ofStretch(frame), bay });

function deckPlate({ brief: { width } }: Catwalk, frame: StretchFrame, one: PartFrame, make: Maker): void {
  const { part } = one;
  const [long, short] = [Math.max(part.near, part.far), Math.min(part.near, part.far)];
  const corners = [{ x: 0, y: 0 }, { x: long, y: 0 }, { x: (long + short) / 2, y: width }, { x: (long - short) / 2, y: width }];
  make.plate(whereOf(frame, one), 'deck', 'deck', deck.plate, {
    long, high: width, area: ((long + short) / 2) * width, ...(part.angle > SAME_ANGLE ? { flat: { outer: straightPath(corners), holes: [] } } : {}),
  }, { ...one.strip(0, width), ...one.band(-deck.thickness / Math.cos(part.slope), 0) });
}

/**
 * One along each long edge: mitred by half the part's turn, or where the slope breaks by half of that, plumb where a deck ends on a slope.
 * On a slope both edges are reckoned from the deck's top, so that the plate lies on them.
 */
function bearersUnder({ brief: { width } }: Catwalk, frame: StretchFrame, one: PartFrame, make: Maker): void {
  const { part, turns } = one;
  const [above, under] = [deck.thickness, deck.thickness + bearer.size];
  const leans = [0, 1].map((end) => endLean(frame, one, end as 0 | 1));
  const cuts = [0, 1].map((end): EndCut => {
    if (part.slope === 0 && turns[end] === 0) return part.angle > SAME_ANGLE ? { kind: 'mitre', angle: part.mitre } : SQUARE;
    return leans[end] === 0 ? SQUARE : { kind: 'slope-mitre', angle: radians(Math.abs(leans[end]!)) };
  });
  for (const [a, b] of [[0, bearer.size], [width - bearer.size, width]] as const) {
    const by = (depth: number): number => depth * leans.reduce((sum, lean) => sum + Math.tan(lean), 0);
    const sides = part.slope === 0 && turns[0] + turns[1] === 0 ? [one.chord(a), one.chord(b)] : [one.chord(a) + by(above), one.chord(a) + by(under)];
    make.bar(whereOf(frame, one), 'bearer', 'bearer', bearer.section, { long: Math.max(...sides), short: Math.min(...sides) }, [cuts[0]!, cuts[1]!],
      { ...one.strip(a, b), ...one.band(-under / Math.cos(part.slope), -above / Math.cos(part.slope)) });
  }
}

/** How far the end of a bearer leans out of square downward, radians: positive where its lower edge is the longer one. */
function endLean(frame: StretchFrame, one: PartFrame, end: 0 | 1): number {
  const { slope } = one.part;
  const turn = one.turns[end];
  // A dock lies over its slope: the two turn away from each other, and their lower edges are the shorter ones.
  if (turn !== 0) return -turn / 2;
  const outer = end === 0 ? one === frame.parts[0] : one === frame.parts[frame.parts.length - 1];
  return outer ? (end === 0 ? slope : -slope) : 0;
}

/** Flat bars across a deck that slopes, clear of its toe board, as few and as even as keep them no farther apart than they may be. */
function footCleats({ brief: { width } }: Catwalk, frame: StretchFrame, one: PartFrame, make: Maker): void {
  const { part, x, long } = one;
  const count = Math.max(1, Math.ceil(part.near / cleat.most - 1e-9));
  for (let i = 0; i < count; i++) {
    const share = (i + 0.5) / count;
    const half = (cleat.wide / 2) * Math.cos(part.slope);
    const at = (aside: number, by: number): PlanPoint => {
      const [p, q] = [one.at(0, aside), one.at(1, aside)];
      return add(p, scale(sub(q, p), share + by / long)) as PlanPoint;
    };
    const height = part.heights[0] + (part.heights[1] - part.heights[0]) * share;
    const rise = half * Math.tan(part.slope);
    const middle = x + (share - 0.5) * long;
    make.bar(whereOf(frame, one), 'cleat', 'foot-cleat', cleat.flat, { long: width - 2 * cleat.aside }, [SQUARE, SQUARE], {
      plan: [at(cleat.aside, -half), at(cleat.aside, half), at(width - cleat.aside, half), at(width - cleat.aside, -half)],
      roll: rectangleOf(middle - half, middle + half, cleat.aside, width - cleat.aside),
      low: inches(height - Math.abs(rise)), high: inches(height + Math.abs(rise) + cleat.thickness), over: inches(0),
      leaning: [
        { x: middle - half, y: height - rise }, { x: middle + half, y: height + rise },
        { x: middle + half, y: height + rise + cleat.thickness }, { x: middle - half, y: height - rise + cleat.thickness },
      ],
    });
  }
}

/** Between the two bearers, where parts meet off a post and where the deck ends off one. */
function crossBearers({ brief: { width } }: Catwalk, frame: StretchFrame, make: Maker): void {
  const { size, section } = bearer;
  for (const joint of frame.stretch.joints) {
    const out = sub(joint.far, joint.near);
    const total = Math.hypot(out.x, out.y);
    const long = frame.reach(joint.u, width - size) - frame.reach(joint.u, size);
    // At an end the bar stands inside it.
    const inside = joint.kind === 'between' ? 0 : joint.kind === 'start' ? size / 2 : -size / 2;
    const across = scale(out, 1 / total);
    const along = frame.stretch.side === 'left' ? { x: across.y, y: -across.x } : { x: -across.y, y: across.x };
    const place = (aside: number, by: number): PlanPoint => add(add(joint.near, scale(across, (aside * total) / width)), scale(along, by + inside)) as PlanPoint;
    const x = frame.xAt(joint.u) + inside;
    const { bearerUnder, plateUnder } = deckBuild(joint.height + inside * Math.tan(joint.slope), joint.slope);
    make.bar({ ...ofStretch(frame), bay: joint.bay }, 'bearer', 'cross', section, { long }, [SQUARE, SQUARE], {
      plan: [place(size, -size / 2), place(size, size / 2), place(width - size, size / 2), place(width - size, -size / 2)],
      low: bearerUnder, high: plateUnder, roll: rectangleOf(x - size / 2, x + size / 2, size, width - size),
    });
  }
}

/** A plate on edge against the back of a post, deepest there; a leg under its tip where it is long or shallow. Its upper edge is level. */
function bracketAt(frame: StretchFrame, post: DeckPost, make: Maker): void {
  const build = deckBuild(post.height, post.slope);
  const top = build.bearerUnder - underSlope(bracket.thickness, post.slope);
  const { depth, leg: legged } = bracketSize(post.reach, { ...build, bearerUnder: inches(top) });
  const { reach } = post;
  const where = { ...ofStretch(frame), bay: post.bay };
  const corners = [{ x: 0, y: 0 }, { x: reach, y: depth - bracket.tip }, { x: reach, y: depth }, { x: 0, y: depth }];
  const across = scale(sub(post.tip, post.back), 1 / reach);
  const half = scale({ x: -across.y, y: across.x }, bracket.thickness / 2);
  const x = frame.xAt(post.u);
  make.plate(where, 'bracket', 'bracket', bracket.plate, {
    long: reach, high: depth, area: (reach * (depth + bracket.tip)) / 2, flat: { outer: straightPath(corners), holes: [] },
  }, {
    plan: [sub(post.back, half), sub(post.tip, half), add(post.tip, half), add(post.back, half)].map((p) => planPoint(p.x, p.y)),
    low: inches(top - depth), high: inches(top), roll: rectangleOf(x - bracket.thickness / 2, x + bracket.thickness / 2, 0, reach),
  });
  if (!legged) return;
  const inset = gateSection(leg.section).across / 2;
  legUnder(where, sub(post.tip, scale(across, inset)), { x, y: reach - inset }, top - bracket.tip, make);
}

/** A leg on a foot plate, under what lies at `under`. */
function legUnder(where: Where, at: Vec, flat: Vec, under: number, make: Maker): void {
  const { section, foot } = leg;
  const r = gateSection(section).across / 2;
  const box = (half: number): { readonly plan: readonly PlanPoint[]; readonly roll: readonly Vec[] } => ({
    plan: rectangleOf(at.x - half, at.x + half, at.y - half, at.y + half).map(({ x, y }) => planPoint(x, y)),
    roll: rectangleOf(flat.x - half, flat.x + half, flat.y - half, flat.y + half),
  });
  make.bar(where, 'bracket', 'leg', section, { long: legLength(under) }, [SQUARE, SQUARE], { ...box(r), low: inches(foot.thickness), high: inches(under) });
  make.plate(where, 'bracket', 'foot', foot.plate, { long: foot.side, high: foot.side, area: flatArea(FOOT), flat: FOOT }, { ...box(foot.side / 2), low: inches(0), high: inches(foot.thickness) });
}
