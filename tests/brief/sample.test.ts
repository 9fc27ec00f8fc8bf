import { describe, expect, test } from 'vitest';
import { readBrief, type Brief, type DefaultUsed } from '../../core/brief/index.ts';
import { frozenText, leastProject } from '../support/change-project.ts';

function read(text: string): { brief: Brief; defaults: readonly DefaultUsed[] } {
  const result = readBrief(text);
  if (!result.ok) throw new Error(JSON.stringify(result.faults));
  return result;
}

describe('the example of the project contract', () => {
  const { brief, defaults } = read(frozenText());

  test('says what it says, in inches, radians and pounds', () => {
    expect(brief.title).toBe('Juniper Flat');
    expect([brief.units, brief.paper]).toEqual(['in', 'ANSI B']);
    expect(brief.revision).toEqual({ letter: 'A', date: '2026-03-02', note: 'first issue' });
    expect(brief.site).toEqual({
      latitude: 46.2, longitude: -110.4, timeZone: 'America/Denver', bearing: (15 * Math.PI) / 180, soil: 'sand', volume: 'ranch', jurisdiction: 'us',
      tenure: 'owned', work: { from: 420, to: 1020, months: [10, 11] },
    });
    expect(brief.cattle).toEqual({ weight: 1250, kind: 'mature', flighty: false, horned: false, bodyLength: 96, eyeHeight: 50, headPerDay: 300 });
    expect(brief.alley.runs).toEqual([{ kind: 'straight', length: 240 }]);
    expect(brief.crowdPen).toMatchObject({ radius: 144, sweep: Math.PI, hand: 'left', gateClearance: 1, pivotLength: null });
    expect(brief.crowdPen.funnelAngle).toBeCloseTo(Math.PI / 6, 15);
    expect(brief.crowdPen.pivotPost.across).toBe(4.5);
    expect(brief.chute).toEqual({
      width: 28, runs: [{ kind: 'straight', length: 120 }, { kind: 'arc', insideRadius: 192, angle: Math.PI / 2, hand: 'right' }, { kind: 'straight', length: 72 }],
    });
    expect(brief.footings).toEqual({ diameter: 12, depth: 36 });
    expect(brief.postLoad).toBeNull();
    expect(brief.floors).toEqual({ fall: 0.02, thickness: 6, pattern: 'stamped 8 in diamond' });
    expect(brief.squeezePad).toEqual({ length: 144, width: 120, roof: { length: 288, width: 240, open: ['in', 'out'], daylight: 0.2 } });
    expect(brief.sortPens).toEqual([{ name: 'sort-1', side: 'left', gate: 120, path: 'sortPens[0]' }]);
    expect(brief.shop).toEqual({
      stock: { 'pipe 2 sch 40': [252], 'pipe 2 1/2 sch 40': [252, 288] }, rack: {}, sheets: [[48, 120], [60, 120]], kerf: 0.125, trim: 0, keepDrop: 24,
      weldGap: 0.125, grip: 8, springback: 0, gaugeChord: 36, plateKerf: 0.06, coating: 'paint', roll: {}, prices: {},
      welds: { fillet: 0.125, skinLength: 2, skinPitch: 12, efficiency: 0.65 }, truck: { length: 240, width: 96, load: 10_000 }, handLift: 51,
    });
    expect(brief.control).toMatchObject({ b: { x: 240, y: 0 }, c: null });
    expect(brief.marks).toEqual({});
  });

  test('has a fence on every side, each with what the ones around it say', () => {
    const { crowdPen, alley, junction, chute } = brief.fences;
    expect(crowdPen).toMatchObject({ height: 60, solidFrom: 2, solidTo: 60, construction: 'lapped', rails: 5, bottomRail: 12, postSpacing: 96, path: 'fences.crowdPen' });
    expect([crowdPen.rail.across, crowdPen.post.across, crowdPen.sheet?.thickness]).toEqual([2.375, 2.875, 0.1046]);
    for (const same of [alley.left, alley.right, junction.left, junction.right]) expect(same).toEqual(crowdPen);
    expect(chute.left).toEqual({ ...crowdPen, path: 'fences.chute.left' });
    expect(chute.right).toEqual({ ...crowdPen, solidTo: 40, path: 'fences.chute.right' });
  });

  test('leaves to defaults the stock of the pivot post and of what gates are built of, and what has come to the format since', () => {
    const pipes = [...['4', '1 1/2', '1', '3/4', '1 1/4', '1/2', '5'].map((size) => `pipe ${size} sch 40`), 'tube 2 x 2 x 3/16', 'tube 2 x 6 x 3/16'];
    expect(defaults).toEqual([
      { path: 'catwalks[0].deckHeight', value: '3\'-6" below the fence\'s top' },
      { path: 'holdingPens[0].swings', value: 'in' }, { path: 'holdingPens[0].hangs', value: 'first' },
      ...['length', 'width'].map((field) => ({ path: `holdingPens[0].${field}`, value: 'by its head, at the area that each needs' })),
      { path: 'holdingPens[0].hingePost', value: 'by the gate\'s width, or the fence\'s own where that is thicker' },
      { path: 'returnAlley', value: 'none' },
      { path: 'revisions', value: 'none' },
      { path: 'footings.heldAtSurface', value: 'no' },
      { path: 'shop.rack', value: 'none' },
      ...pipes.map((pipe) => ({ path: `shop.stock["${pipe}"]`, value: `21'-0"` })),
      { path: 'shop.trim', value: '0"' }, { path: 'shop.keepDrop', value: `2'-0"` },
      { path: 'shop.welds.fillet', value: '1/8"' }, { path: 'shop.welds.skinLength', value: '2"' }, { path: 'shop.welds.skinPitch', value: `1'-0"` },
      { path: 'shop.welds.efficiency', value: '0.65' }, { path: 'shop.truck.length', value: `20'-0"` }, { path: 'shop.truck.width', value: `8'-0"` },
      { path: 'shop.truck.load', value: '10000 lb' }, { path: 'shop.handLift', value: '51.0 lb' },
    ]);
  });
});

describe('a project that says the least', () => {
  const { brief, defaults } = read(JSON.stringify(leastProject()));

  test('has the figures of the contract\'s example for the rest', () => {
    expect(brief).toMatchObject({
      client: '', units: 'in', paper: 'ANSI B', revision: { letter: 'A', date: '', note: '' }, alley: { runs: [{ kind: 'straight', length: 240 }] },
      cattle: { weight: 1250, kind: 'mature', flighty: false, horned: false, bodyLength: 96, eyeHeight: 50, headPerDay: 300 },
      crowdPen: { sweep: Math.PI, hand: 'left', gateClearance: 1, pivotPost: { name: 'pipe 4 sch 40' } },
      footings: { diameter: 12, depth: 36 }, postLoad: null, floors: { fall: 0.02, thickness: 6, pattern: 'stamped 8 in diamond' }, squeezePad: null, sortPens: [], control: { b: { x: 240, y: 0 }, c: null, note: '' }, marks: {},
      shop: { stock: {}, rack: {}, sheets: [[48, 120], [60, 120]], kerf: 0.125, trim: 0, keepDrop: 24, weldGap: 0.125, grip: 8, springback: 0, gaugeChord: 36, plateKerf: 0.06, coating: 'paint', roll: {}, prices: {} },
      holdingPens: [],
    });
    expect(brief.fences.chute.left).toMatchObject({ height: 60, solidFrom: 0, solidTo: 60, construction: 'lapped', rails: 5, bottomRail: 12, postSpacing: 96, sheet: { name: '12 ga' } });
  });

  test('leaves the site unset', () => {
    expect(new Set(Object.values(brief.site))).toEqual(new Set([null]));
  });

  test('lists every default with its figure, each once', () => {
    const listed = new Map(defaults.map(({ path, value }) => [path, value]));
    expect(listed.size).toBe(defaults.length);
    expect(Object.fromEntries(listed)).toEqual({
      client: 'empty', units: 'in', paper: 'ANSI B', 'revision.letter': 'A', 'revision.date': 'empty', 'revision.note': 'empty', revisions: 'none',
      'site.latitude': 'unset', 'site.longitude': 'unset', 'site.timeZone': 'unset', 'site.bearing': 'unset', 'site.soil': 'unset', 'site.volume': 'unset',
      'site.jurisdiction': 'unset', 'site.tenure': 'unset', 'site.work': 'unset',
      'cattle.weight': '1250 lb', 'cattle.kind': 'mature', 'cattle.flighty': 'no', 'cattle.horned': 'no', 'cattle.bodyLength': `8'-0"`, 'cattle.eyeHeight': `4'-2"`, 'cattle.headPerDay': '300',
      'alley.runs': `20'-0" straight`, 'crowdPen.sweep': '180°', 'crowdPen.hand': 'left', 'crowdPen.funnelAngle': '30°', 'crowdPen.gateClearance': '1"', 'crowdPen.pivotPost': 'pipe 4 sch 40',
      'fences.crowdPen.height': `5'-0"`, 'fences.crowdPen.solidFrom': '0"', 'fences.crowdPen.solidTo': `its height, 5'-0"`, 'fences.crowdPen.construction': 'lapped',
      'fences.crowdPen.rails': '5', 'fences.crowdPen.bottomRail': `1'-0"`, 'fences.crowdPen.postSpacing': `8'-0"`, 'fences.crowdPen.sheet': '12 ga',
      openings: 'none', catwalks: 'none', ramps: 'none', squeezePad: 'none', sortPens: 'none', holdingPens: 'none', returnAlley: 'none',
      'floors.fall': '0.02', 'floors.thickness': '6"', 'floors.pattern': 'stamped 8 in diamond',
      'footings.diameter': `1'-0"`, 'footings.depth': `3'-0"`, 'footings.load': 'none', 'footings.loadHeight': `3'-0"`, 'footings.heldAtSurface': 'no',
      'shop.stock["pipe 1 1/2 sch 40"]': `21'-0"`, 'shop.stock["pipe 2 sch 40"]': `21'-0"`, 'shop.stock["pipe 2 1/2 sch 40"]': `21'-0"`, 'shop.stock["pipe 4 sch 40"]': `21'-0"`,
      'shop.sheets': '48" x 120", 60" x 120"', 'shop.kerf': '1/8"', 'shop.trim': '0"', 'shop.keepDrop': `2'-0"`, 'shop.rack': 'none', 'shop.weldGap': '1/8"', 'shop.grip': '8"', 'shop.springback': '0', 'shop.gaugeChord': `3'-0"`,
      'shop.plateKerf': '0.06"', 'shop.coating': 'paint', 'shop.roll': 'none', 'shop.welds.fillet': '1/8"', 'shop.welds.skinLength': '2"', 'shop.welds.skinPitch': `1'-0"`, 'shop.welds.efficiency': '0.65',
      'shop.truck.length': `20'-0"`, 'shop.truck.width': `8'-0"`, 'shop.truck.load': '10000 lb', 'shop.handLift': '51.0 lb',
      'shop.prices': 'none', 'control.b': `20'-0", 0"`, 'control.note': 'empty', marks: 'none',
    });
  });
});
