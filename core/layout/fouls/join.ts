import { type Fence } from '../types.ts';

/** Two fences that share a post. */
export interface Join {
  readonly upstream: Fence;
  readonly downstream: Fence;
}
