/** The first half of the 300 random sets: two files, so that they run side by side. */
import { holdRandomSets } from './random-sets.ts';

holdRandomSets([101, 102, 103]);
