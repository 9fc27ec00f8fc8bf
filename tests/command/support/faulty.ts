import { type Project, put } from './run.ts';

type Path = readonly (string | number)[];

/** A kind of faulty project: what is put where, the path that the fault must name, and a part of what is allowed. */
export interface Kind {
  readonly name: string;
  readonly spoil: (project: Project) => void;
  /** Each of them is named at the start of a line. */
  readonly paths: readonly string[];
  /** What is allowed, in the words or figures of the first of the lines. */
  readonly allowed: RegExp;
}

const at = (name: string, path: Path, value: unknown, told: string, allowed: RegExp): Kind =>
  ({ name, spoil: (project) => { put(project, path, value); }, paths: [told], allowed });

/** The fields and ranges of the project format, each spoiled in one way. */
export const FAULTY: readonly Kind[] = [
  at('another format', ['format'], 'other', 'format', /penwright-project/),
  at('a newer version', ['version'], 2, 'version', /1 to 1/),
  at('a version that is a text', ['version'], '1', 'version', /1 to 1/),
  at('no title', ['title'], undefined, 'title', /1 to 60/),
  at('an empty title', ['title'], '', 'title', /1 to 60/),
  at('a title of 61 characters', ['title'], 'x'.repeat(61), 'title', /60/),
  at('a title with a control character', ['title'], 'a\u0007b', 'title', /plain text/),
  at('a client of 61 characters', ['client'], 'x'.repeat(61), 'client', /60/),
  at('units that are none', ['units'], 'ft', 'units', /"?in"?.*"?mm"?/),
  at('a paper that is none', ['paper'], 'letter', 'paper', /ANSI/),
  at('a date that is not in the calendar', ['revision', 'date'], '2026-02-30', 'revision.date', /YYYY-MM-DD/),
  at('a note of 201 characters', ['revision', 'note'], 'x'.repeat(201), 'revision.note', /200/),
  at('a latitude at the pole', ['site', 'latitude'], 90, 'site.latitude', /-66/),
  at('a longitude too far', ['site', 'longitude'], 180.5, 'site.longitude', /180/),
  at('a bearing below nought', ['site', 'bearing'], -1, 'site.bearing', /0/),
  at('a soil that is none', ['site', 'soil'], 'mud', 'site.soil', /clay/),
  at('cattle too light', ['cattle', 'weight'], 100, 'cattle.weight', /150/),
  at('cattle of no kind', ['cattle', 'kind'], 'bull', 'cattle.kind', /mature/),
  at('a flag that is a text', ['cattle', 'flighty'], 'no', 'cattle.flighty', /true or false/),
  at('no crowd pen radius', ['crowdPen', 'radius'], undefined, 'crowdPen.radius', /72/),
  at('a crowd pen too small', ['crowdPen', 'radius'], '5 ft', 'crowdPen.radius', /72/),
  at('a radius that is no length', ['crowdPen', 'radius'], 'twelve feet', 'crowdPen.radius', /12 ft/),
  at('a radius without a figure', ['crowdPen', 'radius'], null, 'crowdPen.radius', /length/),
  at('a sweep too wide', ['crowdPen', 'sweep'], 241, 'crowdPen.sweep', /240/),
  at('a hand that is none', ['crowdPen', 'hand'], 'both', 'crowdPen.hand', /left/),
  at('a flat funnel and more', ['crowdPen', 'funnelAngle'], 91, 'crowdPen.funnelAngle', /90/),
  at('a gate that scrapes', ['crowdPen', 'gateClearance'], 0.1, 'crowdPen.gateClearance', /0\.25/),
  at('a pivot post of no section', ['crowdPen', 'pivotPost'], 'pipe 7 sch 40', 'crowdPen.pivotPost', /pipe 2 sch 40/),
  at('no chute width', ['chute', 'width'], undefined, 'chute.width', /14/),
  at('a chute too narrow', ['chute', 'width'], 13.9, 'chute.width', /14/),
  at('no runs in the chute', ['chute', 'runs'], [], 'chute.runs', /1 to 40/),
  at('41 runs in the chute', ['chute', 'runs'], Array.from({ length: 41 }, () => ({ kind: 'straight', length: 24 })), 'chute.runs', /1 to 40/),
  at('a run of no kind', ['chute', 'runs', 1, 'kind'], 'spiral', 'chute.runs[1].kind', /straight/),
  at('an arc without its angle', ['chute', 'runs', 1, 'angle'], undefined, 'chute.runs[1].angle', /5/),
  at('an arc of a full turn', ['chute', 'runs', 1, 'angle'], 360, 'chute.runs[1].angle', /270/),
  at('an arc of a tight radius', ['chute', 'runs', 1, 'insideRadius'], 59, 'chute.runs[1].insideRadius', /60/),
  at('a straight with an arc\'s field', ['chute', 'runs', 0, 'angle'], 10, 'chute.runs[0].angle', /length/),
  at('a run too short', ['alley', 'runs', 0, 'length'], '11 in', 'alley.runs[0].length', /12/),
  { name: 'no fence for the crowd pen', spoil: (project) => { put(project, ['fences', 'crowdPen'], undefined); }, paths: ['fences.crowdPen.rail', 'fences.crowdPen.post'], allowed: /a section such as/ },
  at('a fence too high', ['fences', 'crowdPen', 'height'], 97, 'fences.crowdPen.height', /96/),
  at('a sheet above its fence', ['fences', 'chute', 'right', 'solidTo'], 61, 'fences.chute.right.solidTo', /60|height/),
  at('one rail', ['fences', 'crowdPen', 'rails'], 1, 'fences.crowdPen.rails', /2/),
  at('two rails and a half', ['fences', 'crowdPen', 'rails'], 2.5, 'fences.crowdPen.rails', /whole/),
  at('a rail of no section', ['fences', 'crowdPen', 'rail'], 'pipe 2', 'fences.crowdPen.rail', /sch 40/),
  at('posts too far apart', ['fences', 'crowdPen', 'postSpacing'], 145, 'fences.crowdPen.postSpacing', /144/),
  at('a sheet of no gauge', ['fences', 'crowdPen', 'sheet'], '99 ga', 'fences.crowdPen.sheet', /12 ga/),
  at('a construction that is none', ['fences', 'crowdPen', 'construction'], 'bolted', 'fences.crowdPen.construction', /lapped/),
  at('a footing too shallow', ['footings', 'depth'], 11, 'footings.depth', /12/),
  at('an opening too narrow', ['openings', 0, 'width'], 9, 'openings[0].width', /10/),
  at('a catwalk too wide', ['catwalks', 0, 'width'], 61, 'catwalks[0].width', /60/),
  at('a ramp too steep', ['ramps', 1, 'slope'], 36, 'ramps[1].slope', /35/),
  at('a springback over three tenths', ['shop', 'springback'], 0.31, 'shop.springback', /0\.3/),
  at('a kerf below nought', ['shop', 'kerf'], -0.01, 'shop.kerf', /0/),
  at('a stock length too long', ['shop', 'stock', 'pipe 2 sch 40'], ['81 ft'], 'shop.stock["pipe 2 sch 40"][0]', /960/),
  at('a control point on the pivot', ['control', 'b'], [0, 0], 'control.b', /own/),
  at('a control point of one figure', ['control', 'b'], [240], 'control.b', /2/),
  at('a mark that can\'t be painted', ['marks'], { x: 'lower case' }, 'marks.x', /capital/),
  at('an unknown field', ['colour'], 'red', 'colour', /title/),
  at('an unknown field deep down', ['fences', 'crowdPen', 'colour'], 'red', 'fences.crowdPen.colour', /height/),
  {
    name: 'one mark for two pieces',
    spoil: (project) => { put(project, ['marks'], { 'one signature': 'R1', another: 'R1' }); },
    paths: ['marks.another'],
    allowed: /each/,
  },
  {
    name: 'rails closer than they are thick',
    spoil: (project) => {
      put(project, ['fences', 'crowdPen', 'rails'], 12);
      put(project, ['fences', 'crowdPen', 'bottomRail'], 36);
    },
    paths: ['fences.crowdPen'],
    allowed: /no closer/,
  },
  {
    name: 'a coped rail as thick as its post',
    spoil: (project) => {
      put(project, ['fences', 'crowdPen', 'construction'], 'coped');
      put(project, ['fences', 'crowdPen', 'post'], 'pipe 2 sch 40');
    },
    paths: ['fences.crowdPen'],
    allowed: /thinner/,
  },
  {
    name: 'a funnel that leaves no wedge at the pivot post',
    spoil: (project) => {
      put(project, ['crowdPen', 'sweep'], 240);
      put(project, ['crowdPen', 'funnelAngle'], 30);
    },
    paths: ['crowdPen'],
    allowed: /over 0/,
  },
  {
    name: 'more bays than a facility may have',
    spoil: (project) => {
      put(project, ['fences', 'crowdPen', 'postSpacing'], 24);
      put(project, ['alley', 'runs'], Array.from({ length: 12 }, () => ({ kind: 'straight', length: 2400 })));
    },
    paths: ['fences'],
    allowed: /2000/,
  },
  {
    name: 'several faults at once',
    spoil: (project) => {
      put(project, ['crowdPen', 'radius'], 10);
      put(project, ['chute', 'width'], 'wide');
      put(project, ['shop', 'grip'], 49);
    },
    paths: ['crowdPen.radius', 'chute.width', 'shop.grip'],
    allowed: /72/,
  },
];

/** Texts that are no project at all, with what is said of them. */
export const UNREADABLE: readonly (readonly [string, string | Uint8Array, RegExp])[] = [
  ['an empty file', '', /^project file: not JSON/],
  ['a text', 'hello there', /^project file: /],
  ['half a file', '{ "format": "penwright-project", "version": 1, "title": "x', /^(project file|title): .*ends too soon/],
  ['a list', '[]', /^project file: .*group of fields/],
  ['a field written twice', '{ "format": "penwright-project", "version": 1, "title": "a", "title": "b" }', /^title: written twice/],
  ['brackets without end', '['.repeat(100_000), /too many groups/],
  ['UTF-16', new Uint8Array([0xff, 0xfe, 0x7b, 0x00, 0x7d, 0x00]), /^yard\.penwright\.json: is written in UTF-16/],
  ['bytes that are no UTF-8', new Uint8Array([0x7b, 0x0a, 0x22, 0xe9, 0x22, 0x0a, 0x7d]), /^yard\.penwright\.json: is not UTF-8 from line 2 on/],
  ['a picture', new Uint8Array([0x89, 0x50, 0x4e, 0x47, 0x0d, 0x0a, 0x1a, 0x0a]), /^yard\.penwright\.json: is not UTF-8 from line 1 on/],
];
