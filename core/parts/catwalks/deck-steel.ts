/** What a deck is: its plates, the bearers under their edges, brackets at the posts, legs where there is no post. */
import { straightPath } from '../../base/flat-shape.ts';
import { add, planPoint, scale, sub, type PlanPoint, type Vec } from '../../base/points.ts';
import { SAME_ANGLE } from '../../base/tolerance.ts';
import { CATWALK_PRACTICE } from '../../brief/catwalk-practice.ts';
import { gateSection } from '../../brief/gate-steel.ts';
import { type Catwalk, type DeckPost } from '../../layout/index.ts';
import { inches } from '../../base/quantity.ts';
import { type EndCut } from '../types.ts';
import { bracketSize, deckBuild, legLength, type DeckBuild } from './build.ts';
import { type PartFrame, type StretchFrame } from './frame.ts';
import { rectangleOf, SQUARE, type Maker, type Where } from './own.ts';

const { deck, bearer, bracket, leg } = CATWALK_PRACTICE;

export function deckSteel(catwalk: Catwalk, frame: StretchFrame, make: Maker): void {
  const build = deckBuild(catwalk.deckHeight);
  for (const one of frame.parts) deckPart(catwalk, frame, one, build, make);
  if (build.bearers) crossBearers(catwalk, frame, build, make);
  if (!build.brackets) return;
  for (const post of frame.stretch.posts) bracketAt(frame, post, build, make);
  for (const joint of frame.stretch.joints) {
    if (joint.kind === 'between') continue;
    const where = { ...ofStretch(frame), bay: joint.bay };
    const inward = scale(sub(joint.far, joint.near), bearer.size / 2 / Math.hypot(joint.far.x - joint.near.x, joint.far.y - joint.near.y));
    const x = frame.xAt(joint.u);
    legUnder(where, add(joint.near, inward), { x, y: bearer.size / 2 }, build.bearerUnder, make);
    legUnder(where, sub(joint.far, inward), { x, y: catwalk.brief.width - bearer.size / 2 }, build.bearerUnder, make);
  }
}

const ofStretch = ({ stretch: { run, side } }: StretchFrame): Pick<Where, 'run' | 'side'> => ({ run, side });

/** The plate, and a bearer along each of its long edges. */
function deckPart({ brief: { width } }: Catwalk, frame: StretchFrame, one: PartFrame, build: DeckBuild, make: Maker): void {
  const { part } = one;
  const where = { ...ofStretch(frame), bay: part.bay };
  const [long, short] = [Math.max(part.near, part.far), Math.min(part.near, part.far)];
  const skew = part.angle > SAME_ANGLE;
  const corners = [{ x: 0, y: 0 }, { x: long, y: 0 }, { x: (long + short) / 2, y: width }, { x: (long - short) / 2, y: width }];
  make.plate(where, 'deck', 'deck', deck.plate, {
    long, high: width, area: ((long + short) / 2) * width, ...(skew ? { flat: { outer: straightPath(corners), holes: [] } } : {}),
  }, { ...one.strip(0, width), low: build.plateUnder, high: build.top });
  if (!build.bearers) return;
  const cut: EndCut = skew ? { kind: 'mitre', angle: part.mitre } : SQUARE;
  for (const [a, b] of [[0, bearer.size], [width - bearer.size, width]] as const) {
    const sides = [one.chord(a), one.chord(b)];
    make.bar(where, 'bearer', 'bearer', bearer.section, { long: Math.max(...sides), short: Math.min(...sides) }, [cut, cut],
      { ...one.strip(a, b), low: build.bearerUnder, high: build.plateUnder });
  }
}

/** Between the two bearers, where parts meet off a post and where the deck ends off one. */
function crossBearers({ brief: { width } }: Catwalk, frame: StretchFrame, build: DeckBuild, make: Maker): void {
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
    make.bar({ ...ofStretch(frame), bay: joint.bay }, 'bearer', 'cross', section, { long }, [SQUARE, SQUARE], {
      plan: [place(size, -size / 2), place(size, size / 2), place(width - size, size / 2), place(width - size, -size / 2)],
      low: build.bearerUnder, high: build.plateUnder, roll: rectangleOf(x - size / 2, x + size / 2, size, width - size),
    });
  }
}

/** A plate on edge against the back of a post, deepest there; a leg under its tip where it is long or shallow. */
function bracketAt(frame: StretchFrame, post: DeckPost, build: DeckBuild, make: Maker): void {
  const { depth, leg: legged } = bracketSize(post.reach, build);
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
    low: inches(build.bearerUnder - depth), high: build.bearerUnder, roll: rectangleOf(x - bracket.thickness / 2, x + bracket.thickness / 2, 0, reach),
  });
  if (!legged) return;
  const inset = gateSection(leg.section).across / 2;
  legUnder(where, sub(post.tip, scale(across, inset)), { x, y: reach - inset }, build.bearerUnder - bracket.tip, make);
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
  make.plate(where, 'bracket', 'foot', foot.plate, { long: foot.side, high: foot.side }, { ...box(foot.side / 2), low: inches(0), high: inches(foot.thickness) });
}
