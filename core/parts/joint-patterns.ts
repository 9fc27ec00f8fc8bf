/** Where lapped rails are jointed along a span, so that neighboring rows do not part at one post. */

/** The stops at which a row of rails parts, its two ends included: numbers of stops, rising. */
export type Joints = readonly number[];

/** Joints of the even rows (from the lowest, 0) and of the odd ones. */
export interface JointPatterns {
  readonly even: Joints;
  readonly odd: Joints;
}

/** Whether one piece reaches from one stop to a later one. Every single bay must fit, and every part of what fits. */
export type Fits = (from: number, to: number) => boolean;

/**
 * The two patterns that rows take in turn. Each piece covers whole bays; neither pattern has a joint of the other between the two ends
 * wherever one extra piece in a row can avoid it; otherwise pieces are as few as can be. An extra piece falls to the odd rows, which
 * are never more than the even ones.
 */
export function jointPatterns(bays: number, fits: Fits): JointPatterns {
  const latest = latestJoints(bays, fits);
  const earliest = earliestJoints(bays, fits);
  // The i-th joint of any pattern of fewest pieces lies between the i-th of these two: where they differ everywhere, both are as few
  // as can be; where they agree, that joint is in every such pattern, and only an extra piece can avoid it.
  if (latest.every((joint, i) => i === 0 || i === latest.length - 1 || joint !== earliest[i])) return { even: latest, odd: earliest };
  const most = latest.length;
  for (const even of [latest, earliest]) {
    const odd = fewestAvoiding(bays, fits, even);
    if (odd !== null && odd.length - 1 <= most) return { even, odd };
  }
  return { even: latest, odd: latest };
}

/** Fewest pieces, each joint as far along as can be. */
function latestJoints(bays: number, fits: Fits): Joints {
  const joints = [0];
  let at = 0;
  while (at < bays) {
    let next = at + 1;
    while (next < bays && fits(at, next + 1)) next++;
    joints.push(next);
    at = next;
  }
  return joints;
}

/** Fewest pieces, each joint as near to the start as can be. */
function earliestJoints(bays: number, fits: Fits): Joints {
  const mirrored = latestJoints(bays, (from, to) => fits(bays - to, bays - from));
  return mirrored.map((joint) => bays - joint).reverse();
}

/** Fewest pieces of which none parts at a stop of `avoid` between the ends; null where there is no such row. */
function fewestAvoiding(bays: number, fits: Fits, avoid: Joints): Joints | null {
  const banned = new Set(avoid.slice(1, -1));
  const pieces = [0];
  const before = [0];
  for (let to = 1; to <= bays; to++) {
    pieces[to] = Infinity;
    before[to] = -1;
    if (banned.has(to)) continue;
    for (let from = to - 1; from >= 0 && fits(from, to); from--) {
      if (pieces[from]! + 1 < pieces[to]!) {
        pieces[to] = pieces[from]! + 1;
        before[to] = from;
      }
    }
  }
  if (pieces[bays] === Infinity) return null;
  const joints: number[] = [];
  for (let at = bays; at > 0; at = before[at]!) joints.unshift(at);
  return [0, ...joints];
}
