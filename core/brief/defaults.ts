/** What stands in for a field that the file leaves out (project contract: the figures of its example). Lengths in inches, angles in degrees. */
export const DEFAULTS = {
  units: 'in',
  paper: 'ANSI B',
  revisionLetter: 'A',
  cattle: { weight: 1250, kind: 'mature', flighty: false, horned: false, bodyLength: 96, eyeHeight: 50, headPerDay: 300 },
  alleyLength: 240,
  crowdPen: { sweep: 180, hand: 'left', funnelAngle: 30, gateClearance: 1, pivotPost: 'pipe 4 sch 40' },
  fence: { height: 60, solidFrom: 0, construction: 'lapped', rails: 5, bottomRail: 12, postSpacing: 96, sheet: '12 ga' },
  footings: { diameter: 12, depth: 36, loadHeight: 36, heldAtSurface: false },
  floors: { fall: 0.02, thickness: 6, pattern: 'stamped 8 in diamond' },
  shop: {
    sheets: [[48, 120], [60, 120]], kerf: 0.125, trim: 0, keepDrop: 24, weldGap: 0.125, grip: 8, springback: 0, gaugeChord: 36, plateKerf: 0.06, coating: 'paint',
    /** Common practice of fence shops, no source: the least fillet laid, stitches of a skin, weld metal left of the filler that is bought (from memory, covered electrodes). */
    welds: { fillet: 0.125, skinLength: 2, skinPitch: 12, efficiency: 0.65 },
    /** A 20 ft by 8 ft flatbed: common practice, no source. */
    truck: { length: 240, width: 96, load: 10_000 },
    /** The load constant of the lifting equation in NIOSH 94-110 (from memory). */
    handLift: 51,
  },
  stockLength: 252,
  control: { b: [240, 0] },
  opening: { width: 14, held: 'rope', gate: 144, swings: { 'pen-gate': 'in', 'alley-gate': 'forward' }, hangs: 'first' },
  catwalk: { from: 0, width: 20 },
  /** Of a fence over a deck whose height is left open. */
  railHeight: 42,
  ramp: {
    load: { dockHeight: 48, width: 30, surface: 'stepped', tread: 14, dockLength: 60 },
    unload: { dockHeight: 48, width: 120, surface: 'cleated', slope: 20, cleat: 2, dockLength: 120 },
  },
  pad: { length: 144, width: 120 },
  roof: { length: 288, width: 240, open: 'in, out', daylight: 0.2 },
  sortGate: 120,
  holdingGate: 144,
  returnWidth: 36,
} as const;

/** The defaults of an opening by its kind. */
export function openingDefaults(kind: 'man-gate' | 'pen-gate' | 'alley-gate' | 'backstop'): Readonly<Record<string, string | number>> {
  const { width, held, gate, swings, hangs } = DEFAULTS.opening;
  switch (kind) {
    case 'man-gate':
      return { width };
    case 'backstop':
      return { held };
    case 'pen-gate':
      return { width: gate, swings: swings[kind], hangs };
    case 'alley-gate':
      return { swings: swings[kind] };
  }
}
