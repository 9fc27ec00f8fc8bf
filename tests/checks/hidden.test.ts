import { describe, expect, it } from 'vitest';
import { inches } from '../../core/base/quantity.ts';
import { type Brief } from '../../core/brief/types.ts';
import { arc, fences, makeBrief, straight } from '../support/brief-builder.ts';
import { findingOf } from './support/checked.ts';

const pad = (length: number): NonNullable<Brief['squeezePad']> => ({ length: inches(length), width: inches(120), roof: null });
const CLOSED = fences({ solidFrom: inches(0) });
const short = (length: number): Brief => makeBrief({ chute: { width: inches(28), runs: [straight(60)] }, squeezePad: pad(length), fences: CLOSED });

describe('the crew at the squeeze pad (common practice, no source)', () => {
  it('is hidden at the end of a short straight chute just as long as nobody stands too far past it, by similar triangles', () => {
    // Crew stand 37 in off the centerline, the last of them at 0.9 of the pad; past a chute of 60 in a line from its mouth reaches 37 in
    // off at 60·37/14 - 60 = 98.57 in: a pad of 109.5 in.
    expect(findingOf(short(109), 'squeeze-hidden')).toMatchObject({ result: 'ok', measured: 0, where: 'squeeze-pad: none of 10 standing places in sight' });
    expect(findingOf(short(110), 'squeeze-hidden')).toMatchObject({ result: 'look', measured: 2 });
    expect(findingOf(short(110), 'squeeze-hidden').where).toMatch(/^squeeze-pad: 2 of 10 standing places in sight, one at .*; a screen hides them$/);
  });

  it('is seen over a fence that is closed too low, and behind a curve only over it', () => {
    const curved = (solidTo: number): Brief => makeBrief({
      chute: { width: inches(28), runs: [straight(120), arc(192, 90, 'right'), straight(72)] }, squeezePad: pad(144), fences: fences({ solidFrom: inches(0), solidTo: inches(solidTo) }),
    });
    expect([60, 36].map((solidTo) => findingOf(curved(solidTo), 'squeeze-hidden').result)).toEqual(['ok', 'look']);
    // An animal half way round sees past the inner wall: from 128.6 in before the curve's end the line to the crew 101 in along the pad and
    // 37 in out passes the inner wall's center at 192.0 in, just clear of its face, and the chute's end 6 in off its middle.
    expect(findingOf(curved(60), 'crew-hidden').result).toBe('look');
  });

  it('is looked for by every animal in the chute but the one in its last body length', () => {
    // 96 in before the end of 192 in: the mouth of the short chute again, at 96·37/14 - 96 = 157.7 in: a pad of 175.2 in.
    const long = (length: number): Brief => makeBrief({ chute: { width: inches(28), runs: [straight(192)] }, squeezePad: pad(length), fences: CLOSED });
    expect(findingOf(long(175), 'crew-hidden')).toMatchObject({ result: 'ok', measured: 0 });
    expect(findingOf(long(176), 'crew-hidden')).toMatchObject({ result: 'look', measured: 2 });
    expect(findingOf(long(176), 'squeeze-hidden').result).toBe('ok');
  });

  it('is looked for on the decks of catwalks too: whoever stands over the fence is seen from the chute, and not behind one that is closed as high', () => {
    const beside = (height: number, deckHeight: number): Brief => makeBrief({
      chute: { width: inches(28), runs: [straight(240)] }, fences: fences({ solidFrom: inches(0), height: inches(height), solidTo: inches(height) }),
      catwalks: [{ run: 'chute', side: 'left', from: inches(0), to: null, width: inches(20), deckHeight: inches(deckHeight), path: 'catwalks[0]' }],
    });
    expect(findingOf(beside(60, 18), 'crew-hidden')).toMatchObject({ result: 'look', measured: expect.any(Number), where: expect.stringMatching(/^catwalks\[0\]: .* in sight/) });
    // 66 in tall on the ground behind a fence closed to 66 in, from an eye at 50 in: no line clears the fence.
    expect(findingOf(beside(66, 0), 'crew-hidden')).toMatchObject({ result: 'ok', measured: 0 });
  });

  it('is nobody where there is no pad', () => {
    for (const id of ['squeeze-hidden', 'crew-hidden'] as const) expect(findingOf(makeBrief(), id)).toMatchObject({ result: 'ok', measured: null, where: 'none in this project' });
  });
});
