import { describe, expect, it } from 'vitest';
import { textBox } from '../../../core/drafting/boxes.ts';
import { textWidth } from '../../../core/drafting/font.ts';
import { type Stroke } from '../../../core/drafting/primitives.ts';
import { type StakeRow, stakeoutRows } from '../../../core/schedules/index.ts';
import { markSpots, type Spot, strokesOfMark } from '../../../renderer/parts/spots.ts';
import { ringOf, stakeSpots } from '../../../renderer/places/stake-out/stake-spots.ts';
import { drawingFont, drawSound, EXAMPLES, exampleText } from '../../support/drawn.ts';

/** A corner of a spot on the paper, y up, after its turn. */
function corners(spot: Spot, height: number): { x: number; y: number }[] {
  const { x, y, width, height: tall } = spot.box;
  const turn = (spot.turn.degrees * Math.PI) / 180;
  return [[x, y], [x + width, y], [x + width, y + tall], [x, y + tall]].map(([px, py]) => {
    const dx = px! - spot.turn.x;
    const dy = py! - spot.turn.y;
    return { x: spot.turn.x + dx * Math.cos(turn) - dy * Math.sin(turn), y: height - (spot.turn.y + dx * Math.sin(turn) + dy * Math.cos(turn)) };
  });
}

const font = {
  unitsPerEm: drawingFont.unitsPerEm, capHeight: drawingFont.capHeight,
  advances: Array.from({ length: 95 }, (_, index) => drawingFont.advance(32 + index)),
};

const sets = EXAMPLES.map((name) => ({ name, set: drawSound(exampleText(name)) }));

describe.each(sets)('piece marks to be chosen: $name', ({ set }) => {
  const marks = Object.fromEntries(set.parts.pieces.map((piece) => [piece.key, piece.mark]));

  it('are all those on leaders, each over its own text', () => {
    let count = 0;
    for (const sheet of set.sheets) {
      const spots = markSpots({ sheet, marks, font });
      for (const [index, item] of sheet.primitives.entries()) {
        if (item.kind !== 'callout' || item.pieces.length === 0) continue;
        const mark = marks[item.pieces[0]!]!;
        const spot = spots.find((one) => one.key === `${String(index)} 0 ${mark}`);
        if (spot === undefined) throw new Error(`${sheet.number}: ${mark} can't be chosen`);
        const text = item.strokes.find((stroke): stroke is Extract<Stroke, { kind: 'text' }> => stroke.kind === 'text')!;
        // The letters' box by the font's own metrics, without the clear round it: its middle lies in the spot.
        const box = textBox(drawingFont, text, 0);
        const at = corners(spot, sheet.paper.height);
        const xs = at.map((corner) => corner.x);
        const ys = at.map((corner) => corner.y);
        expect(box.cx).toBeGreaterThan(Math.min(...xs));
        expect(box.cx).toBeLessThan(Math.max(...xs));
        expect(box.cy).toBeGreaterThan(Math.min(...ys));
        expect(box.cy).toBeLessThan(Math.max(...ys));
        count += 1;
      }
    }
    expect(count).toBeGreaterThan(30);
  });

  it('and every mark of the project can be chosen somewhere and has steel that is told', () => {
    for (const mark of new Set(Object.values(marks))) {
      const on = set.sheets.filter((sheet) => markSpots({ sheet, marks, font }).some((spot) => spot.id === mark));
      expect(on.length, mark).toBeGreaterThan(0);
      expect(set.sheets.some((sheet) => strokesOfMark({ sheet, marks }, mark).length > 0), mark).toBe(true);
    }
  });

  it('stand in a list of marks each over its own letters', () => {
    // The drawing of the runs lists the marks of each: the letters before and in a mark are measured by the font itself.
    let count = 0;
    for (const sheet of set.sheets) {
      const spots = markSpots({ sheet, marks, font });
      for (const [index, item] of sheet.primitives.entries()) {
        if (item.kind !== 'text' || item.anchor !== 'start' || !/^(left|right): /.test(item.text)) continue;
        const listed = [...item.text.matchAll(/[A-Z]\d+/g)];
        const own = spots.filter((spot) => spot.key.startsWith(`${String(index)} `));
        expect(own.map((spot) => spot.id), item.text).toEqual(listed.map((word) => word[0]));
        for (const [at, spot] of own.entries()) {
          expect(spot.turn.x).toBeCloseTo(item.at.x + textWidth(drawingFont, item.text.slice(0, listed[at]!.index), item.height), 9);
          expect(spot.box.width).toBeCloseTo(textWidth(drawingFont, spot.id, item.height) + 0.08, 9);
          count += 1;
        }
      }
    }
    expect(count).toBeGreaterThan(3);
  });

  it('are every piece of the cut list, on the bar that it is cut from', () => {
    const sheets = set.sheets.filter(({ number }) => /^14\d\d$/.test(number));
    const cut = new Set(set.cuts.flatMap(({ bars }) => bars.flatMap(({ cuts }) => cuts.map(({ mark }) => mark))));
    expect(cut.size).toBeGreaterThan(3);
    expect(new Set(sheets.flatMap((sheet) => markSpots({ sheet, marks, font }).map(({ id }) => id)))).toEqual(cut);
  });

  it('are none in words that only look like one: a revision\'s letter, a title', () => {
    const odd = Object.fromEntries(Object.entries(marks).map(([key, mark], at) => [key, at === 0 ? 'A' : mark]));
    for (const sheet of set.sheets) expect(markSpots({ sheet, marks: odd, font }).filter((spot) => spot.id === 'A' && sheet.primitives[Number(spot.key.split(' ')[0])]!.kind === 'text'), sheet.number).toEqual([]);
  });

  it('have keys of their own', () => {
    for (const sheet of set.sheets) {
      const keys = markSpots({ sheet, marks, font }).map((spot) => spot.key);
      expect(new Set(keys).size).toBe(keys.length);
    }
  });
});

describe.each(sets)('points to be chosen: $name', ({ set }) => {
  const rows: readonly StakeRow[] = stakeoutRows(set.brief, set.layout);
  const drawings = set.sheets.filter((sheet) => sheet.number.startsWith('2'));

  it('are all on the first drawing, and each by its name on one', () => {
    const [whole, ...parts] = drawings;
    expect(new Set(stakeSpots(whole!, rows).map((spot) => spot.id))).toEqual(new Set(rows.map((row) => row.point)));
    const named = [whole!, ...parts].flatMap((sheet) => stakeSpots(sheet, rows).filter((spot) => spot.key.startsWith('name ')).map((spot) => spot.id));
    expect([...new Set(named)].sort()).toEqual(rows.map((row) => row.point).sort());
  });

  it('have their ring round the very point that the leader ends on', () => {
    let count = 0;
    for (const sheet of drawings) {
      for (const item of sheet.primitives) {
        if (item.kind !== 'callout' || !rows.some((row) => row.point === item.text)) continue;
        const [ring] = ringOf(sheet, rows, item.text);
        if (ring?.kind !== 'circle') throw new Error(`${sheet.number}: no ring round ${item.text}`);
        expect(Math.hypot(ring.center.x - item.targets[0]!.x, ring.center.y - item.targets[0]!.y)).toBeLessThan(1e-9);
        count += 1;
      }
    }
    expect(count).toBe(rows.length);
  });

  it('are none where no point is looked at', () => {
    expect(drawings.flatMap((sheet) => ringOf(sheet, rows, null))).toEqual([]);
  });
});
