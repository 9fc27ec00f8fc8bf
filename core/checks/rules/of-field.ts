import { topicOf } from '../../brief/format/index.ts';
import { type RuleId } from './table.ts';

/** Where what is said of a field comes from, where no rule says it. */
export type FieldSource = 'file' | 'practice' | 'memory' | 'shop' | 'geometry' | 'person';

export interface FieldOrigin {
  /** Rules that the field is judged by. */
  readonly rules: readonly RuleId[];
  /** null: the rules say it all. */
  readonly source: FieldSource | null;
}

const by = (...rules: readonly RuleId[]): FieldOrigin => ({ rules, source: null });
const also = (source: FieldSource, ...rules: readonly RuleId[]): FieldOrigin => ({ rules, source });
const from = (source: FieldSource): FieldOrigin => ({ rules: [], source });

const WIDTHS = ['chute-width-600', 'chute-width-yearling', 'chute-width-mature', 'chute-width-large'] as const;

/** By topic; one that is not here is as the nearest group or list around it. */
const ORIGINS: Readonly<Record<string, FieldOrigin>> = {
  format: from('file'),
  version: from('file'),
  title: from('file'),
  client: from('file'),
  units: from('file'),
  paper: from('file'),
  revision: from('file'),
  revisions: from('file'),
  site: from('person'),
  'site.latitude': by('sun-glare'),
  'site.longitude': by('sun-glare'),
  'site.timeZone': by('sun-glare'),
  'site.bearing': by('sun-glare'),
  'site.soil': by('footing-load'),
  'site.volume': by('unload-dock'),
  'site.jurisdiction': by('rail-height', 'rail-other-jurisdiction'),
  'site.tenure': by('tenure'),
  'site.work': by('sun-glare'),
  cattle: from('memory'),
  'cattle.weight': also('memory', ...WIDTHS),
  'cattle.kind': also('memory', 'crowd-area', 'holding-area', 'chute-width-600', 'chute-width-yearling', 'chute-width-mature'),
  'cattle.flighty': also('memory', 'fence-height'),
  'cattle.horned': from('practice'),
  'cattle.bodyLength': also('memory', 'see-ahead'),
  'cattle.eyeHeight': also('memory', 'squeeze-hidden', 'crew-hidden'),
  'cattle.headPerDay': from('person'),
  alley: also('practice', 'return-way', 'foul-path'),
  chute: also('practice', 'chute-length', 'foul-path'),
  'chute.width': by(...WIDTHS),
  'chute.runs': by('lead-length', 'see-ahead', 'chute-length', 'single-turn', 'squeeze-hidden'),
  'runs[]': from('geometry'),
  'runs[].kind': by('lead-length', 'see-ahead'),
  'runs[].length': by('lead-length', 'chute-length'),
  'runs[].insideRadius': by('chute-inside-radius', 'roll-limit'),
  'runs[].angle': by('see-ahead', 'squeeze-hidden'),
  'runs[].hand': by('single-turn'),
  crowdPen: also('practice', 'crowd-area', 'junction-tangent'),
  'crowdPen.radius': by('crowd-radius', 'crowd-area', 'roll-limit'),
  'crowdPen.sweep': by('crowd-sweep'),
  'crowdPen.hand': also('person', 'single-turn'),
  'crowdPen.funnelAngle': by('funnel-angle'),
  'crowdPen.gateClearance': also('memory', 'crowd-gate-rest'),
  'crowdPen.pivotPost': by('hinge-load'),
  'crowdPen.pivotLength': from('geometry'),
  squeezePad: also('memory', 'crew-hidden'),
  'squeezePad.roof': by('roof-see-through', 'roof-daylight', 'night-light'),
  'squeezePad.roof.open': by('roof-see-through'),
  'squeezePad.roof.daylight': by('roof-daylight'),
  sortPens: also('memory', 'sort-gate', 'return-way'),
  returnAlley: also('practice', 'return-way', 'foul-path'),
  holdingPens: also('memory', 'holding-area'),
  'holdingPens[].gate': by('swing-foul', 'hinge-load'),
  'holdingPens[].hingePost': by('hinge-load'),
  'openings[].hingePost': by('hinge-load'),
  'openings[].swings': by('swing-foul'),
  floors: from('practice'),
  'floors.fall': by('ground-fall'),
  fences: also('practice', 'post-line-offset', 'foul-fence', 'foul-post'),
  'fences.crowdPen': by('solid-crowd', 'fence-height'),
  'fences.chute': by('solid-outer', 'fence-height'),
  'fences.ramp': by('solid-ramp'),
  'fence.left': from('geometry'),
  'fence.right': from('geometry'),
  'fence.height': by('fence-height', 'rail-height'),
  'fence.solidFrom': by('solid-crowd', 'rail-gap'),
  'fence.solidTo': by('solid-crowd', 'solid-outer', 'solid-ramp', 'catwalk-skin'),
  'fence.construction': also('practice', 'post-line-offset'),
  'fence.rails': by('rail-gap'),
  'fence.bottomRail': by('rail-gap'),
  'fence.rail': also('memory', 'rail-load', 'roll-limit'),
  'fence.post': also('memory', 'foul-post', 'post-line-offset'),
  'fence.postSpacing': from('memory'),
  'fence.sheet': from('memory'),
  footings: by('post-depth', 'footing-load'),
  'footings.load': by('footing-load'),
  'footings.loadHeight': by('footing-load'),
  'footings.heldAtSurface': by('footing-load'),
  openings: by('man-gate', 'lone-animal', 'quiet', 'swing-foul', 'foul-opening'),
  'openings[].at': by('first-backstop', 'backstop-count', 'foul-opening'),
  'openings[].width': by('man-pass'),
  'openings[].held': by('first-backstop-held', 'quiet'),
  catwalks: by('crowd-catwalk', 'catwalk-guard', 'midrail', 'toe-board', 'rail-load', 'stair-rise', 'swing-foul', 'foul-fence'),
  'catwalks[].width': by('catwalk-width'),
  'catwalks[].deckHeight': by('rail-height', 'rail-other-jurisdiction', 'catwalk-guard', 'catwalk-skin'),
  ramps: by('load-ramp-slope', 'ramp-cleat-needed', 'solid-ramp'),
  'ramps[].dockHeight': by('dock-height'),
  'ramps[].width': by('load-ramp-width', 'unload-width'),
  'ramps[].surface': by('ramp-cleat-needed'),
  'ramps[].tread': by('ramp-step'),
  'ramps[].slope': by('load-ramp-slope', 'ramp-cleat-needed'),
  'ramps[].cleat': by('ramp-cleat'),
  'ramps[].dockLength': by('unload-dock'),
  shop: from('shop'),
  'shop.springback': also('shop', 'roll-limit'),
  'shop.roll': by('roll-limit'),
  'shop.keepDrop': from('practice'),
  'shop.coating': from('practice'),
  'shop.welds': from('practice'),
  'shop.truck': from('practice'),
  'shop.handLift': from('memory'),
  control: by('tie-angle', 'control-clear'),
  marks: from('file'),
};

/** The topics around a topic, itself first: `ramps[].at[]`, `ramps[].at`, `ramps[]`, `ramps`. */
function around(topic: string): readonly string[] {
  const outer = topic.replace(/(\[\*?\]|\.?\w+)$/, '');
  return outer === topic || outer === '' ? [topic] : [topic, ...around(outer)];
}

/** By which rules a field of the project (its pattern) is judged, and how far what is said of it is to be trusted. Null: nothing says. */
export function originOf(pattern: string): FieldOrigin | null {
  const found = around(topicOf(pattern)).find((topic) => Object.hasOwn(ORIGINS, topic));
  return found === undefined ? null : (ORIGINS[found] ?? null);
}
