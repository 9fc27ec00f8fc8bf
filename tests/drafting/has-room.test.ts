/** The quick question and the whole drafting step give one answer, crowded or not, with room for numbered bubbles or without. */
import { expect, test } from 'vitest';
import { viewPoint } from '../../core/base/points.ts';
import { inches } from '../../core/base/quantity.ts';
import { draft, hasRoom } from '../../core/drafting/draft.ts';
import { type CalloutSpec, type Drawing } from '../../core/drafting/model.ts';
import { seeded } from '../support/random.ts';
import { block, box, font, ring, sampleDrawing, steelRoom } from './sample.ts';

const fillet = { arrow: { kind: 'fillet', size: inches(0.1875), length: null, pitch: null }, other: null, allRound: true, field: false, tail: null } as const;
const base = { paper: 'ANSI B', units: 'in', scale: 1 / 24 } as const;

function crowd(seed: number): Drawing {
  const random = seeded(seed);
  const { x: width, y: height } = steelRoom(base);
  const spread = random.pick([0.05, 0.3, 1]);
  const callouts = Array.from({ length: random.whole(1, 70) }, (_, i): CalloutSpec => ({
    text: random.pick(['P1', 'R12', 'grind flush, cattle side']), target: viewPoint(width * spread * random.between(0, 1), height * spread * random.between(0, 0.9)),
    piece: `post/${String(i)}`, toward: { x: 1, y: random.between(-1, 1) }, layer: 'MARKS', ...(random.chance(0.3) ? { optional: true } : {}),
  }));
  const ends = (): { from: ReturnType<typeof viewPoint>; to: ReturnType<typeof viewPoint> } => ({ from: viewPoint(width * random.between(0, 0.4), height / 2), to: viewPoint(width * random.between(0.5, 1), height / 2) });
  const drawing = sampleDrawing({
    ...base,
    view: {
      shapes: [...box(0, 0, width, height, 'rail/1'), ...callouts.map((spec) => ring(spec.target.x, spec.target.y, 1.2, spec.piece!))],
      dimensions: Array.from({ length: random.whole(0, 4) }, () => ({ measure: 'linear', along: 'x', required: random.chance(0.6), ...ends(), offsets: [0.4] })),
      callouts,
      welds: Array.from({ length: random.whole(0, 3) }, () => ({ ...fillet, target: viewPoint(width * random.between(0.1, 0.9), height / 3), toward: { x: 1, y: 1 }, optional: random.chance(0.3) })),
    },
  });
  const { overflow, ...without } = drawing;
  if (overflow === undefined || random.chance(0.3)) return without;
  return { ...without, overflow: { ...overflow, height: random.between(0.5, overflow.height) } };
}

test('a drawing has room exactly where the drafting step leaves nothing unplaced', () => {
  const answers = Array.from({ length: 50 }, (_, seed) => {
    const drawing = crowd(seed);
    const clear = draft(font, block(), drawing).unplaced.length === 0;
    expect(hasRoom(font, block(), drawing), `seed ${String(seed)}`).toBe(clear);
    return clear;
  });
  expect(answers.filter((clear) => clear).length).toBeGreaterThan(10);
  expect(answers.filter((clear) => !clear).length).toBeGreaterThan(10);
});
