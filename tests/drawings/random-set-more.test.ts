/** The second half of the 300 random sets. */
import { holdRandomSets } from './random-sets.ts';

holdRandomSets([104, 105, 106]);
