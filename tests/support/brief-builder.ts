/** Complete briefs made by hand, for tests of what stands behind the door: the project contract's defaults, any part replaced. */
import { degrees, inches, pounds } from '../../core/base/quantity.ts';
import { planPoint } from '../../core/base/points.ts';
import { type Brief, type FenceBrief, type RunBrief, type Side } from '../../core/brief/types.ts';
import { parseSection, parseSheet, type Section, type Sheet } from '../../core/steel/index.ts';

/** A section by name; throws where the test names none that exists. */
export function section(name: string): Section {
  const found = parseSection(name, new Map());
  if (found === null) throw new Error(`no section: ${name}`);
  return found;
}

/** A sheet by name; throws where the test names none that exists. */
export function sheet(name: string): Sheet {
  const found = parseSheet(name);
  if (found === null) throw new Error(`no sheet: ${name}`);
  return found;
}

export const straight = (length: number): RunBrief => ({ kind: 'straight', length: inches(length) });
export const arc = (insideRadius: number, angle: number, hand: Side): RunBrief =>
  ({ kind: 'arc', insideRadius: inches(insideRadius), angle: degrees(angle), hand });

/** The crowd pen's fence of the project contract's example, any part replaced. */
export function fence(path: string, parts: Partial<FenceBrief> = {}): FenceBrief {
  return {
    height: inches(60),
    solidFrom: inches(2),
    solidTo: inches(60),
    construction: 'lapped',
    rails: 5,
    bottomRail: inches(12),
    rail: section('pipe 2 sch 40'),
    post: section('pipe 2 1/2 sch 40'),
    postSpacing: inches(96),
    postSpacingPath: `${path}.postSpacing`,
    sheet: sheet('12 ga'),
    path,
    ...parts,
  };
}

/** The same fence everywhere, any part replaced; the sides that differ are set by the test. */
export function fences(parts: Partial<FenceBrief> = {}): Brief['fences'] {
  const pair = (place: string): Record<Side, FenceBrief> => ({ left: fence(place, parts), right: fence(place, parts) });
  return {
    crowdPen: fence('fences.crowdPen', parts), alley: pair('fences.crowdPen'), junction: pair('fences.crowdPen'), chute: pair('fences.crowdPen'), ramp: pair('fences.crowdPen'),
    pad: pair('fences.crowdPen'), pens: pair('fences.crowdPen'),
  };
}

const SHOP: Brief['shop'] = {
  stock: {},
  rack: {},
  sheets: [[inches(48), inches(120)], [inches(60), inches(120)]],
  kerf: inches(0.125),
  trim: inches(0),
  keepDrop: inches(24),
  weldGap: inches(0.125),
  grip: inches(8),
  springback: 0,
  gaugeChord: inches(36),
  plateKerf: inches(0.06),
  coating: 'paint',
  roll: {},
  prices: {},
  welds: { fillet: inches(0.125), skinLength: inches(2), skinPitch: inches(12), efficiency: 0.65 },
  truck: { length: inches(240), width: inches(96), load: pounds(10_000) },
  handLift: pounds(51),
};

const CATTLE: Brief['cattle'] = {
  weight: pounds(1250),
  kind: 'mature',
  flighty: false,
  horned: false,
  bodyLength: inches(96),
  eyeHeight: inches(50),
  headPerDay: 300,
};

const SITE: Brief['site'] = {
  latitude: null, longitude: null, timeZone: null, bearing: null, soil: null, volume: null, jurisdiction: null, tenure: null, work: null,
};

const CROWD_PEN: Brief['crowdPen'] = {
  radius: inches(144),
  sweep: degrees(180),
  hand: 'left',
  funnelAngle: degrees(30),
  gateClearance: inches(1),
  pivotPost: section('pipe 4 sch 40'),
  pivotLength: null,
};

/** What a test may replace of a brief; the shop and the crowd pen by their parts. */
export interface BriefParts extends Partial<Omit<Brief, 'shop' | 'crowdPen'>> {
  readonly shop?: Partial<Brief['shop']>;
  readonly crowdPen?: Partial<Brief['crowdPen']>;
}

/**
 * The project contract's example (crowd pen of 12 ft, chute of 28 in: 10 ft straight, 90° right at 16 ft inside, 6 ft straight),
 * without the parts of a facility that are not fences, any part replaced.
 */
export function makeBrief(parts: BriefParts = {}): Brief {
  const { shop, crowdPen, ...rest } = parts;
  return {
    title: 'Juniper Flat',
    client: '',
    units: 'in',
    paper: 'ANSI B',
    revisions: [],
    revision: { letter: 'A', date: '2026-03-02', note: '' },
    site: SITE,
    cattle: CATTLE,
    alley: { runs: [straight(240)] },
    crowdPen: { ...CROWD_PEN, ...crowdPen },
    chute: { width: inches(28), runs: [straight(120), arc(192, 90, 'right'), straight(72)] },
    fences: fences(),
    ramps: [],
    footings: { diameter: inches(12), depth: inches(36) },
    postLoad: null,
    floors: { fall: 0.02, thickness: inches(6), pattern: 'stamped 8 in diamond' },
    squeezePad: null,
    sortPens: [],
    shop: { ...SHOP, ...shop },
    control: { b: planPoint(240, 0), c: null, note: '' },
    marks: {},
    openings: [],
    catwalks: [],
    holdingPens: [],
    returnAlley: null,
    ...rest,
  };
}
