/** Whether two tapes can put every hole where it belongs, and whether the points they are held at outlast the digging. */
import { distance } from '../../base/points.ts';
import { toDegrees } from '../../base/quantity.ts';
import { say } from '../../text/index.ts';
import { judged, none, type Judge } from '../outcome.ts';
import { meets } from '../rules/limit.ts';
import { rules } from '../rules/table.ts';
import { bestTie, type BestTie } from '../stakes/best-tie.ts';
import { controlPoints } from '../stakes/control-points.ts';
import { stakePoints, type StakePoint } from '../stakes/stake-points.ts';
import { printed } from '../words/print.ts';

/** So many points are named; the stakeout table has them all. */
const NAMED = 12;

/** Measured: the least of the angles at which a point's two best tapes cross. */
export const tieAngle: Judge = ({ brief, layout }) => {
  const controls = controlPoints(brief, layout);
  const tied = stakePoints(layout).flatMap((stake) => {
    const tie = bestTie(stake.post.at, controls);
    return tie === null ? [] : [{ stake, tie }];
  });
  const [first] = tied;
  if (first === undefined) return none();
  const worst = tied.reduce((least, next) => (next.tie.angle < least.tie.angle ? next : least), first);
  const under = tied.filter(({ tie }) => !meets(rules['tie-angle'].limit, toDegrees(tie.angle)));
  const met = under.length === 0;
  const named = namesOf(worst);
  const where = met ? say('where.ties', named) : say('where.tiesUnder', { ...named, count: under.length, all: tied.length, points: listOf(under) });
  return [judged(met, toDegrees(worst.tie.angle), where, worst.stake.post.at)];
};

interface Tied {
  readonly stake: StakePoint;
  readonly tie: BestTie;
}

const namesOf = ({ stake, tie }: Tied): { point: string; run: string; side: string; from: string; to: string } =>
  ({ point: stake.name, run: stake.post.run, side: stake.post.side, from: tie.from.name, to: tie.to.name });

function listOf(tied: readonly Tied[]): string {
  const list = tied.slice(0, NAMED).map(({ stake }) => stake.name).join(', ');
  return tied.length <= NAMED ? list : say('where.listEnd', { list, count: tied.length - NAMED });
}

/** From each control point to the rim of the nearest hole; A is a post's own center and stands in its hole. */
export const controlClear: Judge = ({ brief, layout }) => {
  const stakes = stakePoints(layout);
  return controlPoints(brief, layout).filter((control) => control.name !== 'A').map((control) => {
    const clearOf = ({ post }: StakePoint): number => distance(post.at, control.at) - post.hole.diameter / 2;
    const nearest = stakes.reduce((best, stake) => (clearOf(stake) < clearOf(best) ? stake : best));
    const clear = clearOf(nearest);
    const where = say('where.control', {
      control: control.name, point: nearest.name, run: nearest.post.run, side: nearest.post.side, clear: printed(brief, clear),
    });
    return judged(meets(rules['control-clear'].limit, clear), clear, where, control.at);
  });
};
