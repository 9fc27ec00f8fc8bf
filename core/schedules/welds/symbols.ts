/** The weld of each joint as a symbol, by the rule in `practice.ts` and the shop's own figures. Drawings and schedule ask here alone. */
import { inches, type Inches } from '../../base/quantity.ts';
import { type WeldKind, type WeldMark, type WeldSymbol } from '../../base/weld-symbol.ts';
import { GATE_PRACTICE } from '../../brief/gate-practice.ts';
import { type Brief } from '../../brief/types.ts';
import { type Fence } from '../../layout/index.ts';
import { type Section } from '../../steel/index.ts';
import { say } from '../../text/index.ts';
import { printLength } from '../../units/index.ts';
import { filletSize } from './fillet-size.ts';
import { type Weld, type WeldJoint } from './types.ts';

const NONE: WeldSymbol = { arrow: null, other: null, allRound: false, field: false, tail: null };

const mark = (kind: WeldKind, size: Inches | null): WeldMark => ({ kind, size, length: null, pitch: null });

/** The same weld in stitches; where stitches would touch it runs through. */
function stitched(brief: Brief, one: WeldMark): WeldMark {
  const { skinLength, skinPitch } = brief.shop.welds;
  return skinLength >= skinPitch ? one : { ...one, length: skinLength, pitch: skinPitch };
}

const thinnest = (...parts: readonly number[]): Inches => inches(Math.min(...parts));

/** A fillet by the thinner part. */
function fillet(brief: Brief, joint: WeldJoint, thinner: Inches, symbol: Partial<WeldSymbol>, both = false): Weld {
  const arrow = mark('fillet', filletSize(brief.shop.welds, thinner));
  return { joint, thinner, symbol: { ...NONE, arrow, other: both ? arrow : null, ...symbol } };
}

/** A butt joint of hollow ends, through the wall, all round. */
export function buttWeld(brief: Brief, joint: WeldJoint, wall: Inches, gap: number, field: boolean): Weld {
  const tail = gap > 0 ? say('weld.gap', { gap: printLength(inches(gap), brief.units, 'inches') }) : null;
  return { joint, thinner: wall, symbol: { ...NONE, arrow: mark('square', wall), allRound: true, field, tail } };
}

/** A lapped rail where it crosses its post. */
export function lappedWeld(brief: Brief, rail: Section, post: Section): Weld {
  const thinner = thinnest(rail.wall, post.wall);
  const size = filletSize(brief.shop.welds, thinner);
  const round = [rail, post].filter(({ shape }) => shape === 'round').length;
  const kind: WeldKind = round === 2 ? 'flare-vee' : round === 1 ? 'flare-bevel' : 'fillet';
  const one = mark(kind, size);
  // Round on flat touches in a line, with a groove on either side of it.
  return { joint: 'rail-lapped', thinner, symbol: { ...NONE, arrow: one, other: round === 1 ? one : null, allRound: round !== 1, field: true } };
}

/** A coped rail's end on its post. */
export const copedWeld = (brief: Brief, rail: Section, post: Section): Weld =>
  fillet(brief, 'rail-coped', thinnest(rail.wall, post.wall), { allRound: true, field: true });

/** A skin on a rail, from behind: on a coped fence to its packing bar. */
export function skinWeld(brief: Brief, { brief: { sheet, rail, construction } }: Fence): Weld {
  const thinner = thinnest(sheet?.thickness ?? Infinity, rail.wall);
  const kind: WeldKind = construction === 'lapped' && rail.shape === 'round' ? 'flare-bevel' : 'fillet';
  return { joint: 'skin-rail', thinner, symbol: { ...NONE, arrow: stitched(brief, mark(kind, filletSize(brief.shop.welds, thinner))), field: construction === 'lapped' } };
}

/** Two skins edge to edge on a post, ground flush where cattle rub. */
export const seamWeld = (brief: Brief, thickness: Inches): Weld =>
  ({ joint: 'skin-seam', thinner: thickness, symbol: { ...NONE, arrow: stitched(brief, mark('square', null)), field: true, tail: say('weld.flush') } });

/** A closing plate's edge to the pivot post, and its other edge to the rails' ends. */
export const plateWeld = (brief: Brief, joint: 'plate-post' | 'plate-rail', plate: Inches, other: Inches): Weld => {
  const weld = fillet(brief, joint, thinnest(plate, other), { field: true });
  return joint === 'plate-rail' ? weld : { ...weld, symbol: { ...weld.symbol, arrow: stitched(brief, weld.symbol.arrow!) } };
};

/** Parts of gates: fillets by the thinner part. */
export const barWeld = (brief: Brief, bar: Section, frame: Section): Weld => fillet(brief, 'bar-frame', thinnest(bar.wall, frame.wall), { allRound: true });
export function gateSkinWeld(brief: Brief, thickness: Inches, frame: Inches): Weld {
  const weld = fillet(brief, 'gate-skin', thinnest(thickness, frame), {});
  return { ...weld, symbol: { ...weld.symbol, arrow: stitched(brief, weld.symbol.arrow!) } };
}
export const hingeWeld = (brief: Brief, joint: 'hinge-leaf' | 'hinge-jamb' | 'ring-leaf', wall: Inches): Weld =>
  fillet(brief, joint, wall, { field: joint === 'hinge-jamb' }, true);
export function stopWeld(brief: Brief, stop: Inches, wall: Inches): Weld {
  const weld = fillet(brief, 'stop-jamb', thinnest(stop, wall), { field: true });
  return { ...weld, symbol: { ...weld.symbol, arrow: stitched(brief, weld.symbol.arrow!) } };
}
export const toothWeld = (brief: Brief, tooth: Inches, wall: Inches): Weld => fillet(brief, 'tooth-rail', thinnest(tooth, wall), { field: true }, true);
export const roundEndWeld = (brief: Brief, joint: 'beam-upright' | 'guide-end', a: Inches, b: Inches): Weld =>
  fillet(brief, joint, thinnest(a, b), { allRound: true, field: true });
/** A small plate or a part of a latch, on both sides: on the leaf in the shop, on the jamb in the field. */
export const latchWeld = (brief: Brief, joint: 'latch-leaf' | 'latch-jamb' | 'gusset-frame' | 'tab-post' | 'spring-eye', thinner: Inches): Weld =>
  fillet(brief, joint, thinner, { field: joint === 'latch-jamb' || joint === 'tab-post' }, true);
/** Wall of a weld-on hinge's barrel round its pin. */
export const barrelWall = (barrel: number): Inches => {
  const { hinge, latchedGate } = GATE_PRACTICE;
  const { pin } = barrel === latchedGate.hinge.barrel ? latchedGate.hinge : hinge;
  return inches((barrel - pin) / 2);
};
/** A cap's edge on its post's end, in the shop. */
export const capWeld = (brief: Brief, cap: Inches, wall: Inches): Weld => fillet(brief, 'cap-post', thinnest(cap, wall), { allRound: true });
/** A bracket of a deck on its post, on both sides; and a bearer on its brackets, on both sides. */
export const bracketWeld = (brief: Brief, joint: 'bracket-post' | 'bearer-bracket', thinner: Inches): Weld => fillet(brief, joint, thinner, { field: true }, true);
/** A seam along a part of a deck: its plate on the bearers and its toe board in stitches from one side, its foot cleats and treads along both edges. */
export function deckSeamWeld(brief: Brief, joint: 'deck-bearer' | 'toe-deck' | 'cleat-deck' | 'tread-stringer', thinner: Inches): Weld {
  const both = joint === 'cleat-deck' || joint === 'tread-stringer';
  const weld = fillet(brief, joint, thinner, { field: joint === 'deck-bearer' }, both);
  if (both) return weld;
  return { ...weld, symbol: { ...weld.symbol, arrow: stitched(brief, weld.symbol.arrow!) } };
}
/** The end of a catwalk's bar on what it meets, all round. */
export const deckEndWeld = (brief: Brief, joint: 'bearer-cross' | 'leg-end' | 'guard-post' | 'guard-rail' | 'stringer-deck' | 'step-rail', thinner: Inches): Weld =>
  fillet(brief, joint, thinner, { allRound: true, field: joint !== 'bearer-cross' });
