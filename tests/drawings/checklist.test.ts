import { describe, expect, it } from 'vitest';
import { degrees, inches } from '../../core/base/quantity.ts';
import { type Brief } from '../../core/brief/types.ts';
import { checkStations, EVERYWHERE } from '../../core/drawings/checklist/items.ts';
import { checklistDrawings } from '../../core/drawings/checklist/checklist.ts';
import { makeBrief, straight } from '../support/brief-builder.ts';
import { drawingFont, drawSound, exampleText, EXAMPLES } from '../support/drawn.ts';
import { say } from '../../core/text/index.ts';
import { laidOut, partsOf } from '../support/laid-out.ts';

const looks = (brief: Brief, run: string): readonly string[] => 
  checkStations({ brief, layout: laidOut(brief) }).filter((station) => station.run === run).flatMap((station) => station.looks);

describe('the station checklist', () => {
  it('goes in walking order and asks everywhere what hangs, shines, moves, casts a shadow and stands in sight', () => {
    const brief = makeBrief();
    expect(checkStations({ brief, layout: laidOut(brief) }).map(({ run }) => run)).toEqual(['alley-1', 'crowd-pen', 'junction', 'chute-1', 'chute-2', 'chute-3']);
    expect(EVERYWHERE.map((key) => say(key).split(' (')[0])).toEqual(['hangs or moves', 'shines', 'casts a shadow', 'stands in sight']);
    const [page] = checklistDrawings({ brief, layout: laidOut(brief), parts: partsOf(brief), font: drawingFont });
    const rows = page!.tables.flatMap((table) => table.rows);
    for (const run of ['alley-1', 'crowd-pen', 'junction', 'chute-1', 'chute-2', 'chute-3']) {
      expect(rows.find((row) => row[0] === run)!.slice(1, 5), run).toEqual(['', '', '', '']);
    }
    for (const key of EVERYWHERE) expect(page!.notes[0]!.lines.join(' ')).toContain(say(key));
  });

  it('asks for what this plan has, where it has it', () => {
    const brief = makeBrief();
    const site = { ...brief.site, latitude: 0, longitude: 0, timeZone: 'UTC', bearing: degrees(90), work: { from: 360, to: 540, months: [3] } };
    const opening = { kind: 'backstop', run: 'chute', at: inches(96), held: 'rope', path: 'openings[0]' } as const;
    const whole: Brief = { ...brief, site, chute: { width: inches(28), runs: [straight(240)] }, openings: [opening], squeezePad: { length: inches(144), width: inches(120), roof: null } };
    // The hours of a March morning on the equator, by hand in tests/checks/sun/glare.test.ts.
    expect(looks(whole, 'chute-1')).toContain('Sun ahead Mar 06:10 to 08:10: look into it then');
    expect(looks(whole, 'chute-1')).toContain('BS1: held up by its rope, dead still; the rope does not swing');
    expect(looks(whole, 'squeeze-pad')).toContain('Crew in their places: none seen before the squeeze');
    expect(looks(whole, 'alley-1').join(' ')).not.toMatch(/Sun ahead|BS1/);
    expect(looks(brief, 'chute-1').join(' ')).not.toMatch(/Sun ahead|BS1/);
  });

  it.each(EXAMPLES)('is one page with a box to tick and room to write for each look: %s', (name) => {
    const set = drawSound(exampleText(name));
    const input = { brief: set.brief, layout: set.layout, parts: set.parts, font: drawingFont };
    const [page, ...more] = checklistDrawings(input);
    expect(more).toEqual([]);
    expect(page!.number).toBe('1601');
    expect(['ANSI A', 'ANSI B', 'ISO A4', 'ISO A3']).toContain(page!.paper.name);
    for (const table of page!.tables) expect(table.widths[7]).toBeGreaterThan(1.3);
    const rows = page!.tables.flatMap((table) => table.rows);
    expect(rows.map((row) => row[0]).filter((run) => run !== '')).toEqual(checkStations(input).map(({ run }) => run));
    const words = rows.map((row) => row[5]).join(' ');
    const looked = checkStations(input).flatMap((station) => station.looks);
    for (const look of looked) expect(words).toContain(look);
    // A box to tick for each, and one in each of the four columns for each station.
    expect(rows.filter((row) => row[6] === '')).toHaveLength(looked.length);
    expect(rows.filter((row) => row[1] === '')).toHaveLength(checkStations(input).length);
  });

  it('says how high the eyes are', () => {
    const brief = makeBrief();
    const [page] = checklistDrawings({ brief, layout: laidOut(brief), parts: partsOf(brief), font: drawingFont });
    expect(page!.notes[0]!.lines[0]).toContain('4\'-2"');
  });
});
