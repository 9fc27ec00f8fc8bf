import { describe, expect, test } from 'vitest';
import { printFault, readBrief, type Fault } from '../../core/brief/index.ts';
import { changed, frozenText, sampleProject, type Change } from '../support/change-project.ts';

const faultsOf = (text: string): readonly Fault[] => {
  const result = readBrief(text);
  return result.ok ? [] : result.faults;
};
const short = (faults: readonly Fault[]): readonly string[] => faults.map(({ path, code }) => `${path} ${code}`);

/** One thing wrong with the contract's example: what is changed, and every fault that it must give: path and code. */
type Case = readonly [what: string, change: Change, path: string, code: string];
const CASES: readonly Case[] = [
  ['another format', ['format', 'house-project'], 'format', 'fault.format'],
  ['no format', ['format', undefined], 'format', 'fault.missing'],
  ['no version', ['version', undefined], 'version', 'fault.missing'],
  ['a version that is no number', ['version', '1'], 'version', 'fault.version'],
  ['version 0', ['version', 0], 'version', 'fault.version'],
  ['half a version', ['version', 1.5], 'version', 'fault.version'],
  ['a newer version', ['version', 2], 'version', 'fault.version-newer'],
  ['an unknown field', ['colour', 'red'], 'colour', 'fault.unknown'],
  ['an unknown field further in', ['crowdPen.radios', 144], 'crowdPen.radios', 'fault.unknown'],
  ['a length on an arc', ['chute.runs[1].length', 100], 'chute.runs[1].length', 'fault.unknown'],
  ['no title', ['title', undefined], 'title', 'fault.missing'],
  ['an empty title', ['title', ''], 'title', 'fault.characters'],
  ['a title of spaces', ['title', '   '], 'title', 'fault.characters'],
  ['a title of 61 characters', ['title', 'x'.repeat(61)], 'title', 'fault.characters'],
  ['a title that is a number', ['title', 7], 'title', 'fault.type'],
  ['a control character', ['title', 'Juniper\u0007Flat'], 'title', 'fault.control'],
  ['a tab', ['client', 'a\tb'], 'client', 'fault.control'],
  ['a C1 control character', ['client', 'a\u0085b'], 'client', 'fault.control'],
  ['half a character', ['revision.note', 'a\ud800b'], 'revision.note', 'fault.control'],
  ['a client of 61 characters', ['client', 'x'.repeat(61)], 'client', 'fault.characters'],
  ['a note of 201 characters', ['control.note', 'x'.repeat(201)], 'control.note', 'fault.characters'],
  ['meters as units', ['units', 'm'], 'units', 'fault.choice'],
  ['a paper that is not sold', ['paper', 'ANSI F'], 'paper', 'fault.choice'],
  ['a date that is not in the calendar', ['revision.date', '2026-02-29'], 'revision.date', 'fault.pattern'],
  ['a date the other way round', ['revision.date', '02/03/2026'], 'revision.date', 'fault.pattern'],
  ['a revision letter in small', ['revision.letter', 'a'], 'revision.letter', 'fault.pattern'],
  ['a latitude beyond the circle', ['site.latitude', 67], 'site.latitude', 'fault.range'],
  ['a time zone that there is not', ['site.timeZone', 'America/Denvr'], 'site.timeZone', 'fault.pattern'],
  ['a time zone in words', ['site.timeZone', 'Mountain time'], 'site.timeZone', 'fault.pattern'],
  ['a soil that is none', ['site.soil', 'peat'], 'site.soil', 'fault.choice'],
  ['a soil of 0 psf', ['site.soil', 0], 'site.soil', 'fault.range'],
  ['a time of 24:00', ['site.work.to', '24:00'], 'site.work.to', 'fault.pattern'],
  ['work that ends before it begins', ['site.work.to', '06:00'], 'site.work.to', 'fault.order'],
  ['month 13', ['site.work.months', [10, 13]], 'site.work.months[1]', 'fault.range'],
  ['a month and a half', ['site.work.months', [1.5]], 'site.work.months[0]', 'fault.whole'],
  ['a month twice', ['site.work.months', [10, 10]], 'site.work.months[1]', 'fault.repeated'],
  ['no months', ['site.work.months', undefined], 'site.work.months', 'fault.missing'],
  ['a weight in stone', ['cattle.weight', '90 stone'], 'cattle.weight', 'fault.type'],
  ['cattle too heavy', ['cattle.weight', '1400 kg'], 'cattle.weight', 'fault.range'],
  ['flighty in words', ['cattle.flighty', 'no'], 'cattle.flighty', 'fault.type'],
  ['half a head a day', ['cattle.headPerDay', 2.5], 'cattle.headPerDay', 'fault.whole'],
  ['no alley runs', ['alley.runs', []], 'alley.runs', 'fault.count'],
  ['41 alley runs', ['alley.runs', Array.from({ length: 41 }, () => ({ kind: 'straight', length: 20 }))], 'alley.runs', 'fault.count'],
  ['no radius', ['crowdPen.radius', undefined], 'crowdPen.radius', 'fault.missing'],
  ['no crowd pen', ['crowdPen', undefined], 'crowdPen.radius', 'fault.missing'],
  ['a radius in a list', ['crowdPen.radius', [144]], 'crowdPen.radius', 'fault.type'],
  ['a radius in yards', ['crowdPen.radius', '4 yd'], 'crowdPen.radius', 'fault.type'],
  ['a radius that is null', ['crowdPen.radius', null], 'crowdPen.radius', 'fault.type'],
  ['a crowd pen that is a list', ['crowdPen', []], 'crowdPen', 'fault.object'],
  ['an angle in words', ['crowdPen.sweep', '180'], 'crowdPen.sweep', 'fault.type'],
  ['a hand in between', ['crowdPen.hand', 'middle'], 'crowdPen.hand', 'fault.choice'],
  ['a pivot post of wood', ['crowdPen.pivotPost', 'railroad tie'], 'crowdPen.pivotPost', 'fault.section'],
  ['no chute width', ['chute.width', undefined], 'chute.width', 'fault.missing'],
  ['no chute runs', ['chute.runs', undefined], 'chute.runs', 'fault.missing'],
  ['runs that are no list', ['chute.runs', { kind: 'straight' }], 'chute.runs', 'fault.list'],
  ['a run of no kind', ['chute.runs[0].kind', undefined], 'chute.runs[0].kind', 'fault.missing'],
  ['a run of another kind', ['chute.runs[0].kind', 'spiral'], 'chute.runs[0].kind', 'fault.choice'],
  ['a run that is a number', ['chute.runs[2]', 5], 'chute.runs[2]', 'fault.object'],
  ['an arc without a hand', ['chute.runs[1].hand', undefined], 'chute.runs[1].hand', 'fault.missing'],
  ['an angle of 271', ['chute.runs[1].angle', 271], 'chute.runs[1].angle', 'fault.range'],
  ['fences without a rail', ['fences.crowdPen.rail', undefined], 'fences.crowdPen.rail', 'fault.missing'],
  ['fences without a post', ['fences.crowdPen.post', undefined], 'fences.crowdPen.post', 'fault.missing'],
  ['a rail that is not made', ['fences.crowdPen.rail', 'pipe 7 sch 40'], 'fences.crowdPen.rail', 'fault.section'],
  ['a sheet that is not made', ['fences.crowdPen.sheet', '99 ga'], 'fences.crowdPen.sheet', 'fault.sheet'],
  ['a sheet as a number', ['fences.crowdPen.sheet', 12], 'fences.crowdPen.sheet', 'fault.type'],
  ['half a rail', ['fences.crowdPen.rails', 4.5], 'fences.crowdPen.rails', 'fault.whole'],
  ['welded construction', ['fences.crowdPen.construction', 'welded'], 'fences.crowdPen.construction', 'fault.choice'],
  ['solid over the fence', ['fences.chute.left.solidTo', 72], 'fences.chute.left.solidTo', 'fault.solid-over-height'],
  ['a chute fence lower than the solid it takes over', ['fences.chute.height', 48], 'fences.chute.left.solidTo', 'fault.solid-over-height'],
  ['solid to no more than solid from', ['fences.chute.right.solidTo', 2], 'fences.chute.right.solidTo', 'fault.solid-empty'],
  ['a lowest rail over the top one', ['fences.alley', { height: 36, solidTo: 0, bottomRail: 36 }], 'fences.alley.bottomRail', 'fault.rail-order'],
  ['rails closer than their diameter', ['fences.alley', { height: 36, solidTo: 0, rails: 12, bottomRail: 30 }], 'fences.alley.rails', 'fault.rails-close'],
  ['a rail moved into the top one', ['fences.junction', { solidTo: 59 }], 'fences.junction.rails', 'fault.rails-close'],
  ['a rail moved into the ground', ['fences.junction', { solidFrom: 0, solidTo: 0.5 }], 'fences.junction.bottomRail', 'fault.rail-ground'],
  ['a coped tube with corners', ['fences.chute', { construction: 'coped', rail: 'tube 2 x 2 x 3/16' }], 'fences.chute.rail', 'fault.cope-round'],
  ['a coped rail on a tube with corners', ['fences.chute', { construction: 'coped', post: 'tube 3 x 3 x 3/16' }], 'fences.chute.post', 'fault.cope-round'],
  ['a coped rail as thick as its post', ['fences.chute', { construction: 'coped', rail: 'pipe 2 1/2 sch 40' }], 'fences.chute.rail', 'fault.rail-thick'],
  ['a fault in a fence that is not built yet', ['fences.ramp', { height: 30 }], 'fences.ramp.height', 'fault.range'],
  ['a load below zero', ['footings.load', -5], 'footings.load', 'fault.range'],
  ['an opening on no run', ['openings[0].run', 'chute-9'], 'openings[0].run', 'fault.run-name'],
  ['an opening of another kind', ['openings[0].kind', 'trapdoor'], 'openings[0].kind', 'fault.choice'],
  ['a man gate on no side', ['openings[0].side', undefined], 'openings[0].side', 'fault.missing'],
  ['an opening nowhere', ['openings[1].at', undefined], 'openings[1].at', 'fault.missing'],
  ['a man gate too wide', ['openings[0].width', 241], 'openings[0].width', 'fault.range'],
  ['a catwalk that ends where it begins', ['catwalks[0].to', 0], 'catwalks[0].to', 'fault.order'],
  ['a ramp at a point of one figure', ['ramps[0].at', [5]], 'ramps[0].at', 'fault.count'],
  ['a ramp too steep', ['ramps[1].slope', 36], 'ramps[1].slope', 'fault.range'],
  ['a roof open to the sky', ['squeezePad.roof.open', ['up']], 'squeezePad.roof.open[0]', 'fault.choice'],
  ['a holding pen for nobody', ['holdingPens[0].head', 0], 'holdingPens[0].head', 'fault.range'],
  ['stock of a section that is none', ['shop.stock', { broom: ['21 ft'] }], 'shop.stock.broom', 'fault.section'],
  ['stock of one section under two names', ['shop.stock', { 'tubing 2 3/8 x 0.190': [252], 'tubing 2.375 x .19': [252] }], 'shop.stock["tubing 2.375 x .19"]', 'fault.section-twice'],
  ['stock of no length', ['shop.stock', { 'pipe 2 sch 40': [] }], 'shop.stock["pipe 2 sch 40"]', 'fault.count'],
  ['a stock length in a text of another kind', ['shop.stock', { 'pipe 2 sch 40': ['long'] }], 'shop.stock["pipe 2 sch 40"][0]', 'fault.type'],
  ['a stock sheet of three sides', ['shop.sheets', [[48, 96, 120]]], 'shop.sheets[0]', 'fault.count'],
  ['no stock sheet', ['shop.sheets', []], 'shop.sheets', 'fault.sheets-none'],
  ['a roll limit without a length', ['shop.roll', { 'pipe 2 sch 40': { radius: 60 } }], 'shop.roll["pipe 2 sch 40"].length', 'fault.missing'],
  ['a section of the shop that is a standard one', ['shop.sections', { 'Pipe 2 SCH 40': { outside: 2.3, wall: 0.15 } }], 'shop.sections["Pipe 2 SCH 40"]', 'fault.section-known'],
  ['a section of the shop that is solid', ['shop.sections', { shaft: { outside: 2, wall: 1 } }], 'shop.sections.shaft', 'fault.section-size'],
  ['a section of the shop without a wall', ['shop.sections', { thin: { outside: 2 } }], 'shop.sections.thin', 'fault.pattern'],
  ['stitches that lie over one another', ['shop.welds', { skinLength: 6, skinPitch: 4 }], 'shop.welds.skinPitch', 'fault.stitches'],
  ['a coating of chrome', ['shop.coating', 'chrome'], 'shop.coating', 'fault.choice'],
  ['B on the pivot post', ['control.b', [0, 0]], 'control.b', 'fault.control-same'],
  ['C on B', ['control.c', ['20 ft', '0 mm']], 'control.c', 'fault.control-same'],
  ['a mark in small', ['marks', { piece: 'r1' }], 'marks.piece', 'fault.pattern'],
  ['a mark of 13 characters', ['marks', { piece: 'R123456789012' }], 'marks.piece', 'fault.pattern'],
  ['one mark for two pieces', ['marks', { one: 'R1', two: 'R1' }], 'marks.two', 'fault.mark-twice'],
  ['a price below zero', ['shop.prices', { 'pipe 2 sch 40': -1 }], 'shop.prices["pipe 2 sch 40"]', 'fault.range'],
];

describe('a project with one thing wrong', () => {
  test('the example itself has nothing wrong', () => {
    expect(faultsOf(frozenText())).toEqual([]);
  });

  test.each(CASES)('%s', (_, change, path, code) => {
    expect(short(faultsOf(changed(sampleProject(), change)))).toContain(`${path} ${code}`);
  });

  test.each(CASES)('%s: nothing is told that does not follow from it', (_, change, path) => {
    const others = short(faultsOf(changed(sampleProject(), change))).filter((fault) => !fault.startsWith(path));
    // A lowered fence is faulty on each side that takes the solid over; a coped one on each side too.
    const follows = others.filter((fault) => !/^fences\.chute\.(left|right)\.(solidTo|rail|post|rails) /.test(fault));
    expect(follows).toEqual([]);
  });

  test.each(CASES)('%s: the words name the place, what is wrong and what is allowed', (_, change) => {
    for (const fault of faultsOf(changed(sampleProject(), change))) {
      const words = printFault(fault);
      expect(words.startsWith(`${fault.path}: `)).toBe(true);
      expect(words).toMatch(/; allowed/);
      expect(words).not.toMatch(/undefined|NaN|\{\w+\}|zod|[\u0000-\u001f\u007f-\u009f]/);
    }
  });
});

test('everything wrong is told at once', () => {
  const apart = CASES.filter(([, [place]]) => !/^(format|version|fences|crowdPen$|chute\.runs$|shop\.sections|openings|catwalks|ramps|control\.c)/.test(place));
  const places = new Set<string>();
  const chosen = apart.filter(([, [place]]) => {
    const taken = [...places].some((other) => place.startsWith(other) || other.startsWith(place));
    places.add(place);
    return !taken;
  });
  expect(chosen.length).toBeGreaterThan(30);
  const told = short(faultsOf(changed(sampleProject(), ...chosen.map(([, change]) => change))));
  for (const [, , path, code] of chosen) expect(told).toContain(`${path} ${code}`);
});

test('faults across fields are told beside faults of single ones', () => {
  const told = short(faultsOf(changed(sampleProject(),
    ['title', ''], ['fences.chute.left.solidTo', 72], ['marks', { one: 'R1', two: 'R1' }], ['crowdPen.pivotPost', 'oak'], ['catwalks[0].to', 0])));
  expect([...told].sort()).toEqual([
    'catwalks[0].to fault.order', 'crowdPen.pivotPost fault.section', 'fences.chute.left.solidTo fault.solid-over-height', 'marks.two fault.mark-twice', 'title fault.characters',
  ]);
});

test('what depends on a faulty value is not called wrong', () => {
  expect(short(faultsOf(changed(sampleProject(), ['fences.crowdPen.height', 'tall'], ['fences.chute.left.solidTo', 90])))).toEqual(['fences.crowdPen.height fault.type']);
  expect(short(faultsOf(changed(sampleProject(), ['chute.runs', 'long'], ['openings[1].run', 'chute-7'])))).toEqual(['chute.runs fault.list']);
});

test('null is allowed where the format has it, and nowhere else', () => {
  expect(faultsOf(changed(sampleProject(), ['footings.load', null], ['fences.crowdPen.sheet', null]))).toEqual([]);
  for (const place of ['client', 'units', 'site', 'site.latitude', 'alley', 'crowdPen.hand', 'squeezePad', 'openings', 'fences.chute', 'fences.crowdPen.solidTo', 'shop', 'shop.stock', 'control.b', 'marks']) {
    expect(short(faultsOf(changed(sampleProject(), [place, null]))).map((fault) => fault.split(' ')[0]), place).toContain(place);
  }
});
