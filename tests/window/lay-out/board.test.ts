// @vitest-environment jsdom
import { afterEach, beforeEach, describe, expect, it } from 'vitest';
import { type JsonObject } from '../../../core/brief/json/types.ts';
import { createDeskWindow, type DeskWindow } from '../../../renderer/app/desk-window.ts';
import { browserDesk } from '../../../renderer/desk/browser-desk.ts';
import { boardState, type BoardState } from '../../../renderer/places/lay-out/board/board-state.ts';
import { makeBoard } from '../../../renderer/places/lay-out/board/make-board.ts';
import { toScreen } from '../../../renderer/places/lay-out/board/view.ts';
import { canRedo, canUndo, present } from '../../../renderer/project/history.ts';
import { valueAt, withValue } from '../../../renderer/project/json-path.ts';
import { EXAMPLES } from './examples.ts';
import { pageWork } from './page-work.ts';

const SIZE = { width: 920, height: 500 };
/** What a page has and jsdom has not. */
class NoResize {
  observe(): void { /* The sheet keeps its size here. */ }
  disconnect(): void { /* Nothing was observed. */ }
}

let desk: DeskWindow;
let state: BoardState;
let svg: SVGSVGElement;
let tag: HTMLElement;
let end: () => void;

/** The answer about the project comes in later turns. */
const settle = async (): Promise<void> => { for (let turn = 0; turn < 20; turn += 1) await Promise.resolve(); };

async function open(json: JsonObject): Promise<void> {
  desk = createDeskWindow(browserDesk(), pageWork());
  desk.session.open(json, null, 'Test', null);
  state = boardState(desk);
  end = makeBoard(svg, tag, desk, state);
  await settle();
  // The scale that the plan is fitted in is asked for after a pause.
  await new Promise((done) => setTimeout(done, 130));
  await settle();
}

beforeEach(() => {
  globalThis.matchMedia = () => ({ matches: false, addEventListener: () => undefined }) as unknown as MediaQueryList;
  globalThis.ResizeObserver = NoResize as unknown as typeof ResizeObserver;
  Object.assign(SVGElement.prototype, { setPointerCapture: () => undefined, releasePointerCapture: () => undefined, hasPointerCapture: () => true });
  svg = document.createElementNS('http://www.w3.org/2000/svg', 'svg');
  Object.defineProperties(svg, { clientWidth: { value: SIZE.width }, clientHeight: { value: SIZE.height } });
  tag = document.createElement('div');
  document.body.append(svg, tag);
});
afterEach(() => {
  end();
  document.body.replaceChildren();
});

const example = (name: string): JsonObject => {
  const found = EXAMPLES.find((one) => one.name.startsWith(name));
  if (found === undefined) throw new Error(`no example ${name}`);
  return found.json;
};
const history = () => {
  const now = desk.session.get();
  if (now === null) throw new Error('nothing is open');
  return now.history;
};
const value = (path: string): unknown => valueAt(present(history()), path);
const handle = (id: string): SVGElement => {
  const found = svg.querySelector<SVGElement>(`[data-handle='${id}']`);
  if (found === null) throw new Error(`no handle ${id}`);
  return found;
};
const press = async (target: Element, key: string, more: KeyboardEventInit = {}): Promise<void> => {
  target.dispatchEvent(new KeyboardEvent('keydown', { key, bubbles: true, ...more }));
  await settle();
  target.dispatchEvent(new KeyboardEvent('keyup', { key, bubbles: true, ...more }));
  await settle();
};
const at = (id: string): { readonly x: number; readonly y: number } => {
  const found = desk.worked.get().laid?.handles.find((one) => one.id === id);
  const view = state.view.get();
  if (found === undefined || view === null) throw new Error(`no handle ${id}`);
  return toScreen(view, SIZE, found.at);
};
const pointer = async (target: Element, kind: string, x: number, y: number, more: PointerEventInit = {}): Promise<void> => {
  target.dispatchEvent(new PointerEvent(kind, { bubbles: true, pointerId: 1, button: 0, clientX: x, clientY: y, ...more }));
  await settle();
};
/** Pixels of an inch of the plan. */
const inch = (): number => (state.view.get()?.scale ?? NaN) * 96;

describe('the board', () => {
  it('draws the plan by few paths, and texts with their measured length', async () => {
    await open(example('juniper'));
    const paths = [...svg.querySelectorAll('.board-plan path')].filter((path) => (path.getAttribute('d') ?? '') !== '');
    expect(paths.length).toBeGreaterThan(2);
    expect(paths.length).toBeLessThan(12);
    const texts = [...svg.querySelectorAll('.board-plan text')];
    expect(texts.filter((text) => /^(alley|chute)-\d$/.test(text.textContent)).length).toBeGreaterThan(2);
    expect(texts.every((text) => Number(text.getAttribute('textLength')) > 0)).toBe(true);
  });

  it('has the whole plan on the sheet', async () => {
    await open(example('kalgara'));
    for (const run of desk.worked.get().laid?.stations.runs ?? []) {
      for (const [x, y] of [run.start, run.end]) {
        const seen = toScreen(state.view.get() ?? { scale: NaN, middle: { x: 0, y: 0 } as never }, SIZE, { x, y });
        expect(seen.x).toBeGreaterThan(0);
        expect(seen.x).toBeLessThan(SIZE.width);
        expect(seen.y).toBeGreaterThan(0);
        expect(seen.y).toBeLessThan(SIZE.height);
      }
    }
  });

  it('tells of each handle what it is, what it may be and what it is now', async () => {
    await open(example('juniper'));
    const radius = handle('crowdPen.radius');
    const told = ['role', 'tabindex', 'aria-label', 'aria-valuemin', 'aria-valuemax', 'aria-valuenow', 'aria-valuetext'].map((name) => radius.getAttribute(name));
    expect(told).toEqual(['slider', '0', 'Drag radius of the crowd pen', '72', '240', '144', '12\'-0"']);
  });

  it('keeps the last plan that could be drawn', async () => {
    await open(example('juniper'));
    const drawn = svg.querySelector('.board-plan path')?.getAttribute('d');
    desk.session.setField('crowdPen.radius', 5, { label: 'a slip' });
    await settle();
    expect(desk.worked.get().answer?.faults.length).toBe(1);
    expect(svg.querySelector('.board-plan path')?.getAttribute('d')).toBe(drawn);
    expect(handle('crowdPen.radius').getAttribute('aria-valuetext')).toBe('12\'-0"');
  });
});

describe('a handle', () => {
  it('follows arrow keys by a step, with Shift by ten, each press a step of undo', async () => {
    await open(example('juniper'));
    const radius = handle('crowdPen.radius');
    await press(radius, 'ArrowUp');
    await press(radius, 'ArrowLeft');
    await press(radius, 'ArrowUp', { shiftKey: true });
    expect(value('crowdPen.radius')).toBe(154);
    expect(radius.getAttribute('aria-valuetext')).toBe('12\'-10"');
    desk.session.undo();
    expect(value('crowdPen.radius')).toBe(144);
    await settle();
    const sweep = handle('crowdPen.sweep');
    await press(sweep, 'ArrowDown');
    expect(value('crowdPen.sweep')).toBe(179);
  });

  it('in a metric project goes by 10 mm and is written in millimeters', async () => {
    await open(example('kalgara'));
    await press(handle('crowdPen.radius'), 'ArrowUp');
    expect(value('crowdPen.radius')).toBe('3510 mm');
  });

  it('is dragged to whole inches, its figure beside the hand, all of it one step', async () => {
    await open(example('juniper'));
    const radius = handle('crowdPen.radius');
    const { x, y } = at('crowdPen.radius');
    await pointer(radius, 'pointerdown', x + 4, y - 3);
    for (const far of [3, 6.2, 9.4, 12.4]) await pointer(radius, 'pointermove', x + 4, y - 3 + far * inch());
    expect(value('crowdPen.radius')).toBe(156);
    expect(tag.textContent).toBe('13\'-0"');
    expect(desk.board.get()?.dragged).toBe('crowdPen.radius');
    await pointer(radius, 'pointerup', x + 4, y - 3 + 12.4 * inch());
    expect(tag.hidden).toBe(true);
    expect(desk.board.get()?.dragged).toBeNull();
    desk.session.undo();
    expect(value('crowdPen.radius')).toBe('12 ft');
  });

  it('goes freely, to the sixteenth, while Shift is held', async () => {
    await open(example('juniper'));
    const radius = handle('crowdPen.radius');
    const { x, y } = at('crowdPen.radius');
    await pointer(radius, 'pointerdown', x, y);
    await pointer(radius, 'pointermove', x, y + 25.44 * inch(), { shiftKey: true });
    await pointer(radius, 'pointerup', x, y + 25.44 * inch(), { shiftKey: true });
    expect(value('crowdPen.radius')).toBe(169.4375);
  });

  it('is given up by Escape as if it had not been touched', async () => {
    await open(example('juniper'));
    const radius = handle('crowdPen.radius');
    const { x, y } = at('crowdPen.radius');
    await pointer(radius, 'pointerdown', x, y);
    await pointer(radius, 'pointermove', x, y + 20 * inch());
    expect(value('crowdPen.radius')).toBe(164);
    await press(document.body, 'Escape');
    expect(value('crowdPen.radius')).toBe('12 ft');
    expect([canUndo(history()), canRedo(history())]).toEqual([false, false]);
    await pointer(radius, 'pointermove', x, y + 30 * inch());
    expect(value('crowdPen.radius')).toBe('12 ft');
  });

  it('never goes beyond what its field may be', async () => {
    await open(example('juniper'));
    const radius = handle('crowdPen.radius');
    const { x, y } = at('crowdPen.radius');
    await pointer(radius, 'pointerdown', x, y);
    await pointer(radius, 'pointermove', x, y + 900 * inch());
    expect(value('crowdPen.radius')).toBe(240);
  });

  it('of an alley that was left to its default says it in the file', async () => {
    await open(withValue(example('juniper'), 'alley', undefined));
    await press(handle('alley.runs[0].length'), 'ArrowUp');
    expect(value('alley.runs')).toEqual([{ kind: 'straight', length: 241 }]);
  });
});

describe('findings on the board', () => {
  it('have a number that chooses them, and a ring round the chosen one\'s place', async () => {
    await open(example('tight'));
    const dots = [...svg.querySelectorAll('[role=button]')];
    expect(dots.length).toBeGreaterThan(3);
    expect(dots[0]?.getAttribute('aria-label')).toMatch(/^Fix 1: /);
    expect(svg.querySelector('.finding-ring')?.classList.contains('finding-ring-away')).toBe(true);
    dots[0]?.dispatchEvent(new MouseEvent('click', { bubbles: true }));
    const { finding } = desk.selection.get();
    expect(desk.worked.get().laid?.findings[finding ?? -1]?.result).toBe('fix');
    expect(svg.querySelector('.finding-ring')?.classList.contains('finding-ring-away')).toBe(false);
  });

  it('bring the sheet to their place when they are chosen elsewhere', async () => {
    await open(example('tight'));
    const view = state.view.get();
    if (view === null) throw new Error('not fitted');
    state.view.set({ ...view, scale: 0.08, middle: { x: 5000, y: 5000 } as never });
    const index = desk.worked.get().laid?.findings.findIndex((finding) => finding.at !== null && finding.result !== 'ok') ?? -1;
    desk.select({ finding: index });
    expect(state.view.get()?.middle).toEqual(desk.worked.get().laid?.findings[index]?.at);
  });
});

describe('steel on the board', () => {
  it('is chosen by pressing on it, and its pieces stand out', async () => {
    await open(example('juniper'));
    const { x, y } = at('crowdPen.radius');
    // Beside the ring, on the crowd pen's fence.
    const angle = 0.3;
    const radius = 144 * inch();
    const place = { x: x + radius * Math.sin(angle), y: y - radius * (1 - Math.cos(angle)) };
    await pointer(svg, 'pointerdown', place.x, place.y);
    await pointer(svg, 'pointerup', place.x, place.y);
    const { mark, run } = desk.selection.get();
    expect([mark?.[0], run]).toEqual([expect.stringMatching(/[RSP]/), 'crowd-pen']);
    expect([...svg.querySelectorAll('.ink-chosen')].some((path) => (path.getAttribute('d') ?? '') !== '')).toBe(true);
    await press(svg, 'Escape');
    expect(desk.selection.get().mark).toBeNull();
  });

  it('is measured between two places by the pointer, and by keys', async () => {
    await open(example('juniper'));
    await press(svg, 'm');
    const view = state.view.get();
    if (view === null) throw new Error('not fitted');
    const pivot = toScreen(view, SIZE, { x: 0, y: 0 });
    const mouth = toScreen(view, SIZE, { x: 130, y: 200.9179 });
    for (const place of [pivot, mouth]) {
      await pointer(svg, 'pointerdown', place.x + 0.4, place.y - 0.2);
      await pointer(svg, 'pointerup', place.x + 0.4, place.y - 0.2);
    }
    // The mouth's middle lies at R - w/2 = 130 and (R - w)/tan f = 200.9179.
    expect(svg.querySelector('.measure-text')?.textContent).toBe('19\'-11 5/16"');
    expect(state.measuring.get()?.from?.name).toBe('pivot post');
    expect(state.measuring.get()?.to?.name).toBe('mouth');
    await press(svg, 'ArrowRight');
    await press(svg, 'Enter');
    expect(state.measuring.get()?.to).toBeNull();
    await press(svg, 'Escape');
    expect(state.measuring.get()).toBeNull();
  });
});

describe('the sheet', () => {
  it('is brought closer, moved and fitted by keys', async () => {
    await open(example('juniper'));
    const first = state.view.get();
    await press(svg, '+');
    expect(state.view.get()?.scale).toBeCloseTo((first?.scale ?? NaN) * 1.25, 12);
    await press(svg, 'ArrowRight');
    expect((state.view.get()?.middle.x ?? NaN) - (first?.middle.x ?? NaN)).toBeCloseTo(60 / inch(), 6);
    await press(svg, '-');
    await press(svg, '0');
    expect(state.view.get()?.scale).toBeCloseTo(first?.scale ?? NaN, 3);
  });

  it('is moved by dragging it, which chooses nothing', async () => {
    await open(example('juniper'));
    const first = state.view.get();
    await pointer(svg, 'pointerdown', 700, 400);
    for (const x of [710, 730, 760]) await pointer(svg, 'pointermove', x, 400);
    await pointer(svg, 'pointerup', 760, 400);
    expect((state.view.get()?.middle.x ?? NaN) - (first?.middle.x ?? NaN)).toBeCloseTo(-60 / inch(), 6);
    expect(desk.selection.get().mark).toBeNull();
  });
});
