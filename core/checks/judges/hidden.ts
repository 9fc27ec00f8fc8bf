/** Who is seen by the cattle. */
import { curvePoint } from '../../base/curve.ts';
import { say } from '../../text/index.ts';
import { type Context } from '../context.ts';
import { judged, none, type Judge, type Outcome } from '../outcome.ts';
import { type HighPoint } from '../sight/line-of-sight.ts';
import { chuteEyes, deckPeople, padCrew, personSeen, type Person } from '../sight/people.ts';
import { solidWalls, type SolidWall } from '../sight/solid-walls.ts';
import { printedPoint } from '../words/print.ts';

/** Eyes that are asked, at the most: a drag waits for them. */
const MOST_EYES = 12;

const padOf = ({ layout }: Context): Context['chute'][number] | undefined => layout.runs.find((run) => run.name === 'squeeze-pad');

/** Measured: how many of the places where the crew stand at the squeeze pad are seen by an animal at the mouth; fences hide as far as they are closed. */
export const squeezeHidden: Judge = (context) => {
  const { brief, layout, chute } = context;
  const [first] = chute;
  const pad = padOf(context);
  if (pad === undefined || first === undefined) return none();
  const eye: HighPoint = { at: curvePoint(first.path, 0), height: brief.cattle.eyeHeight };
  return [seenOutcome(context, pad.name, padCrew(pad, brief.chute.width), [eye], solidWalls(layout))];
};

/** Each place where people stand, from eyes all along the chute. Measured: how many of the standing places there are seen. */
export const crewHidden: Judge = (context) => {
  const { brief, layout, chute } = context;
  const pad = padOf(context);
  const places: readonly (readonly [string, readonly Person[]])[] = [
    ...(pad === undefined ? [] : [[pad.name, padCrew(pad, brief.chute.width)] as const]),
    ...layout.catwalks.map((catwalk) => [catwalk.path, deckPeople(catwalk)] as const),
  ];
  if (places.length === 0) return none();
  const eyes = chuteEyes(chute, brief.cattle.bodyLength, brief.cattle.eyeHeight, MOST_EYES);
  const walls = solidWalls(layout);
  return places.map(([name, people]) => seenOutcome(context, name, people, eyes, walls));
};

function seenOutcome({ brief }: Context, place: string, people: readonly Person[], eyes: readonly HighPoint[], walls: readonly SolidWall[]): Outcome {
  const seen = people.filter((person) => personSeen(person, eyes, walls));
  const [first] = seen;
  if (first === undefined) return judged(true, 0, say('where.nobodySeen', { place, all: people.length }), people[0]?.at ?? null);
  return judged(false, seen.length, say('where.peopleSeen', { place, count: seen.length, all: people.length, ...printedPoint(brief, first.at) }), first.at);
}
