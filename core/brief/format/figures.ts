import { DEFAULTS, openingDefaults } from '../defaults.ts';
import { type Json } from '../json/types.ts';

type Figures = Readonly<Record<string, Json>>;

const { cattle, crowdPen, fence, floors, footings, shop, catwalk, ramp, pad, roof } = DEFAULTS;

const under = (group: string, figures: Figures): Figures =>
  Object.fromEntries(Object.entries(figures).map(([name, value]) => [`${group}.${name}`, value]));

/** The default of each field that has one figure or word as such whatever else the project says, as the file would write it. */
export const DEFAULT_FIGURES: Figures = {
  client: '',
  units: DEFAULTS.units,
  paper: DEFAULTS.paper,
  'revision.letter': DEFAULTS.revisionLetter,
  'revision.date': '',
  'revision.note': '',
  'revisions[].date': '',
  'revisions[].note': '',
  'control.note': '',
  'footings.load': null,
  ...under('cattle', cattle),
  ...under('crowdPen', crowdPen),
  ...under('fences.crowdPen', fence),
  ...under('floors', floors),
  ...under('footings', footings),
  ...under('shop', { kerf: shop.kerf, trim: shop.trim, keepDrop: shop.keepDrop, weldGap: shop.weldGap, grip: shop.grip, springback: shop.springback, gaugeChord: shop.gaugeChord, plateKerf: shop.plateKerf, coating: shop.coating }),
  ...under('shop.welds', shop.welds),
  ...under('shop.truck', shop.truck),
  'shop.handLift': shop.handLift,
  ...under('catwalks[]', catwalk),
  ...under('squeezePad', pad),
  ...under('squeezePad.roof', roof),
  'sortPens[].gate': DEFAULTS.sortGate,
  'returnAlley.width': DEFAULTS.returnWidth,
  'holdingPens[].gate': DEFAULTS.holdingGate,
  'holdingPens[].swings': DEFAULTS.opening.swings['pen-gate'],
  'holdingPens[].hangs': DEFAULTS.opening.hangs,
};

const KINDS = ['man-gate', 'pen-gate', 'alley-gate', 'backstop'] as const;

/** Defaults of an entry that follow from what kind it is. */
export function figuresByKind(list: string, entry: Figures): Figures {
  if (list === 'openings') {
    const kind = KINDS.find((one) => one === entry['kind']);
    return kind === undefined ? {} : openingDefaults(kind);
  }
  const own = entry['kind'] === 'load' ? ramp.load : ramp.unload;
  const surface = entry['surface'] ?? own.surface;
  const walk = surface === 'stepped' ? { tread: ramp.load.tread } : { slope: ramp.unload.slope, cleat: ramp.unload.cleat };
  return { dockHeight: own.dockHeight, width: own.width, surface: own.surface, dockLength: own.dockLength, ...walk };
}
