/** How deep a post has to stand against a push on it: IBC 1807.3.2.1 and 1807.3.2.2. The formulas take any units that agree. */

/** A push on a post. */
export interface PostPush {
  /** Applied load P. */
  readonly load: number;
  /** h: the load above the ground. */
  readonly height: number;
  /** b: the diameter of a round post or of its concrete. */
  readonly width: number;
}

/** IBC 1807.3.2.1, nothing holding the post at the surface: d = 0.5·A·(1 + sqrt(1 + 4.36·h/A)), A = 2.34·P/(S1·b); `pressure` is S1. */
export function depthFree({ load, height, width }: PostPush, pressure: number): number {
  const a = (2.34 * load) / (pressure * width);
  return 0.5 * a * (1 + Math.sqrt(1 + (4.36 * height) / a));
}

/** IBC 1807.3.2.2, the post held at the surface by a slab or pavement: d² = 4.25·P·h/(S3·b); `pressure` is S3. */
export const depthHeld = ({ load, height, width }: PostPush, pressure: number): number => Math.sqrt((4.25 * load * height) / (pressure * width));

/** The ground's resistance grows with depth down to 12 ft and no further (IBC 1807.3.2.1, the note on d; from memory), feet. */
const DEEPEST_COUNTED = 12;

/**
 * The depth in feet at which the formula asks for no more than there is: S1 is taken at a third of the depth, S3 at the depth, and the
 * depth follows from them, so that the two are brought together. `push` in pounds and feet, `soil` the lateral bearing, psf a foot.
 * What is asked for falls as the depth grows, so there is one answer, and halving finds it.
 */
export function depthNeeded(push: PostPush, soil: number, held: boolean): number {
  const asked = (depth: number): number => {
    const counted = Math.min(depth, DEEPEST_COUNTED);
    return held ? depthHeld(push, soil * counted) : depthFree(push, (soil * counted) / 3);
  };
  let [low, high] = [0, 1];
  while (asked(high) > high) high *= 2;
  for (let i = 0; i < 60; i++) {
    const middle = (low + high) / 2;
    if (asked(middle) > middle) low = middle;
    else high = middle;
  }
  return high;
}
