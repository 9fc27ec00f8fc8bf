/** The latch of a pen gate or alley gate: a slide bolt in two sleeves on the leaf, its handle, and its keeper. */
import { straightPath } from '../../base/flat-shape.ts';
import { inches, pounds } from '../../base/quantity.ts';
import { GATE_PRACTICE } from '../../brief/gate-practice.ts';
import { gateSection, gateSheet } from '../../brief/gate-steel.ts';
import { plateMember, squareBar, type Member } from './member.ts';

const { bolt, keeper, strikeGap, hinge } = GATE_PRACTICE.latchedGate;

/** Height of the bolt: at a hand's height, or so far under the top of a lower leaf. */
export const boltHeight = (top: number): number => Math.min(bolt.height, top - bolt.underTop);

/** What slides and turns with the leaf whose free end stands `reach` from the pin. On a narrow leaf all stands closer together. */
export function boltMembers(reach: number, top: number): readonly Member[] {
  const y = boltHeight(top);
  const room = reach - hinge.barrel / 2 - 2;
  const long = Math.min(bolt.sleeveLength, room / 6);
  const apart = Math.min(bolt.apart, room / 3);
  const outer = reach - Math.min(bolt.sleeveLength, room / 6);
  const inner = outer - long - apart;
  const sleeve = gateSection(bolt.sleeve);
  const level = (part: Member['part'], section: string, from: number, to: number): Member => squareBar(part, gateSection(section), { x: from, y }, { x: to, y });
  const handle = outer - long - apart / 2;
  return [
    level('sleeve', sleeve.name, inner - long, inner),
    level('sleeve', sleeve.name, outer - long, outer),
    level('bolt', bolt.section, inner - long - 1, reach + strikeGap),
    squareBar('handle', gateSection(bolt.handle), { x: handle, y }, { x: handle, y: y + bolt.handleLength }),
  ];
}

/** On a jamb post: a plate with a hole, edge on from the front, between the leaf's end and the jamb's plane. */
export function keeperPlate(jamb: number, top: number): Member {
  const y = boltHeight(top);
  const sheet = gateSheet(keeper.plate);
  const { high, deep, hole } = keeper;
  const seen = plateMember('keeper', sheet, jamb - keeper.thickness, jamb, y - high / 2, y + high / 2);
  return {
    ...seen,
    length: inches(high),
    flatHeight: inches(deep),
    weight: pounds(sheet.weightPerArea * (high * deep - (Math.PI * hole ** 2) / 4)),
    flat: {
      outer: straightPath([{ x: 0, y: 0 }, { x: high, y: 0 }, { x: high, y: deep }, { x: 0, y: deep }]),
      holes: [{ kind: 'circle', center: { x: high / 2, y: deep / 2 }, radius: hole / 2 }],
    },
  };
}

/** On the face of the fence across a run: a sleeve beside the leaf's end. */
export function keeperSleeve(face: number, top: number): Member {
  const y = boltHeight(top);
  return squareBar('keeper', gateSection(bolt.sleeve), { x: face - Math.min(bolt.sleeveLength, face / 6), y }, { x: face, y });
}
