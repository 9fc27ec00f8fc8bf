import { type Brief } from '../../brief/types.ts';

/** Lateral bearing of each kind of soil, psf a foot of depth: IBC Table 1806.2 (clay and silt; sand; sandy gravel), read in a reprint. */
const BEARING = { clay: 100, sand: 150, gravel: 200 } as const;

/** What the brief's soil bears sideways, psf a foot of depth. Not doubled for a post that may move 1/2 in (1806.3.4). */
export const soilBearing = (soil: NonNullable<Brief['site']['soil']>): number => (typeof soil === 'number' ? soil : BEARING[soil]);
