/** What a leaf's own weight does to the post that it hangs on. */
import { STIFFNESS, YIELD } from './section-strength.ts';

export interface Hung {
  /** lb, and where its center lies from the post's axis, inches. */
  readonly weight: number;
  readonly center: number;
  /** Free end of the leaf from the post's axis, inches. */
  readonly reach: number;
  /** Heights of the lower and the upper hinge over the ground, where the post is taken as held fast. */
  readonly hinges: readonly [number, number];
  /** Of the post, in⁴ and in³. */
  readonly inertia: number;
  readonly modulus: number;
}

export interface HingeLoad {
  /** How far the free end drops because the post bends, inches. */
  readonly sag: number;
  /** Bending stress in the post over its yield. */
  readonly stress: number;
  /** Pull on the upper hinge, lb. */
  readonly pull: number;
}

/**
 * A post held fast at the ground and free above it, pulled at the upper hinge and pushed at the lower one by the couple of the leaf's
 * weight (cantilever: P·z²·(3a - z) / 6EI). The leaf itself is taken as stiff, and the fence's rails as no help to the post.
 */
export function hingeLoad({ weight, center, reach, hinges: [low, high], inertia, modulus }: Hung): HingeLoad {
  const moment = weight * center;
  const pull = moment / (high - low);
  const bend = (at: number, load: number, height: number): number => {
    const [z, a] = at <= height ? [at, height] : [height, at];
    return (load * z * z * (3 * a - z)) / (6 * STIFFNESS * inertia);
  };
  const lean = (z: number): number => bend(z, pull, high) + bend(z, -pull, low);
  return { sag: ((lean(high) - lean(low)) / (high - low)) * reach, stress: moment / modulus / YIELD, pull };
}
