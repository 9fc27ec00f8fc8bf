/** What each figure of a project may be, both ends allowed. The one table behind the check at the door and the words of its faults. */

export type RangeUnit = 'in' | 'deg' | 'lb' | 'none';
export interface Range {
  readonly least: number;
  readonly greatest: number;
  readonly unit: RangeUnit;
}

const lengths = (least: number, greatest: number): Range => ({ least, greatest, unit: 'in' });
const angles = (least: number, greatest: number): Range => ({ least, greatest, unit: 'deg' });
const weights = (least: number, greatest: number): Range => ({ least, greatest, unit: 'lb' });
const plain = (least: number, greatest: number): Range => ({ least, greatest, unit: 'none' });

/** Agreed with the people who write project files: a change here changes the format. */
const AGREED = {
  radius: lengths(72, 240),
  sweep: angles(90, 240),
  gateClearance: lengths(0.25, 6),
  funnelAngle: angles(10, 90),
  chuteWidth: lengths(14, 40),
  straightLength: lengths(12, 2400),
  insideRadius: lengths(60, 1200),
  arcAngle: angles(5, 270),
  runs: plain(1, 40),
  height: lengths(36, 96),
  solidTo: lengths(0, 96),
  solidFrom: lengths(0, 24),
  rails: plain(2, 12),
  bottomRail: lengths(4, 36),
  postSpacing: lengths(24, 144),
  footingDiameter: lengths(4, 48),
  footingDepth: lengths(12, 120),
  openingWidth: lengths(10, 240),
  catwalkWidth: lengths(12, 60),
  deckHeight: lengths(0, 72),
  dockHeight: lengths(6, 72),
  rampWidth: lengths(18, 240),
  rampSlope: angles(2, 35),
  tread: lengths(10, 24),
  springback: plain(0, 0.3),
  kerf: lengths(0, 1),
  weldGap: lengths(0, 1),
  grip: lengths(0, 48),
  latitude: angles(-66, 66),
  longitude: angles(-180, 180),
  bearing: angles(0, 360),
  cattleWeight: weights(150, 3000),
  bodyLength: lengths(36, 130),
  eyeHeight: lengths(20, 72),
  headPerDay: plain(1, 20000),
  gaugeChord: lengths(6, 96),
  stockLength: lengths(60, 960),
  sheetSide: lengths(12, 240),
  dockLength: lengths(0, 480),
  cleat: lengths(1, 6),
  padSize: lengths(48, 1200),
  fall: plain(0, 0.1),
  daylight: plain(0, 1),
  floorThickness: lengths(3, 12),
  bays: plain(1, 2000),
  subjects: plain(0, 100),
  title: plain(1, 60),
  client: plain(0, 60),
  note: plain(0, 200),
} as const satisfies Record<string, Range>;

/** Bounds that only keep slips of the pen out; wider than anything that is built. */
const OWN = {
  pivotLength: lengths(36, 240),
  footingLoad: weights(1, 100_000),
  loadHeight: lengths(1, 96),
  head: plain(1, 20000),
  holdingPen: lengths(24, 24_000),
  station: lengths(0, 240_000),
  plan: lengths(-240_000, 240_000),
  heading: angles(-360, 360),
  soil: plain(1, 5000),
  month: plain(1, 12),
  months: plain(1, 12),
  stockLengths: plain(1, 20),
  sheetSizes: plain(0, 40),
  pair: plain(2, 2),
  open: plain(0, 4),
  rollRadius: lengths(0, 1200),
  rollLength: lengths(0, 960),
  revisions: plain(0, 100),
  fillet: lengths(0.0625, 0.5),
  skinLength: lengths(0.5, 12),
  skinPitch: lengths(1, 48),
  efficiency: plain(0.3, 1),
  truckLength: lengths(60, 720),
  truckWidth: lengths(36, 144),
  truckLoad: weights(200, 100_000),
  handLift: weights(10, 200),
  price: plain(0, 1_000_000),
  rackLength: lengths(6, 960),
  rackCount: plain(1, 10_000),
  rackEntries: plain(1, 50),
  trim: lengths(0, 12),
  keepDrop: lengths(0, 960),
  outside: lengths(0.5, 16),
  wall: lengths(0.02, 4),
  pattern: plain(0, 200),
} as const satisfies Record<string, Range>;

export const RANGES = { ...AGREED, ...OWN } as const;
