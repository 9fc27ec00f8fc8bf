/** Everything beside and past the chute: added in the form, typed, dragged on the live plan and taken back, led to by a finding, removed. */
import '../support/page.ts';
import { afterEach, beforeEach, expect, it } from 'vitest';
import { isJsonObject, type JsonObject } from '../../../core/brief/json/types.ts';
import { parseLength } from '../../../core/units/index.ts';
import { fieldOfFinding } from '../../../renderer/parts/field-of-finding.ts';
import { FormPart } from '../../../renderer/parts/form/FormPart.tsx';
import { boardState } from '../../../renderer/places/lay-out/board/board-state.ts';
import { makeBoard } from '../../../renderer/places/lay-out/board/make-board.ts';
import { toScreen } from '../../../renderer/places/lay-out/board/view.ts';
import { present } from '../../../renderer/project/history.ts';
import { valueAt } from '../../../renderer/project/json-path.ts';
import { changed, leastProject } from '../../support/change-project.ts';
import { showPlace, type ShownPlace } from '../support/shown.tsx';

interface Subject {
  readonly name: string;
  /** Where the form lists it. */
  readonly part: string;
  readonly add: string;
  /** What it is by then in the file. */
  readonly path: string;
  /** Its figure that is typed and dragged. */
  readonly field: string;
  readonly typed: string;
  readonly remove: string;
  /** What has to stand before. */
  readonly base?: readonly [string, unknown];
}

const opening = (name: string, add: string, field: string, typed: string): Subject =>
  ({ name, part: 'openings', add: `Add: ${add}`, path: 'openings[0]', field: `openings[0].${field}`, typed, remove: 'Remove: Opening 1' });

const SUBJECTS: readonly Subject[] = [
  opening('man gate', 'man gate', 'at', '6 ft'),
  opening('pen gate', 'pen gate: in a fence, for cattle', 'width', '4 ft 6 in'),
  opening('alley gate', 'alley gate: across a run', 'at', '3 ft'),
  opening('backstop', 'backstop', 'at', '7 ft'),
  { name: 'catwalk', part: 'catwalks', add: 'Add: Catwalk', path: 'catwalks[0]', field: 'catwalks[0].to', typed: '8 ft', remove: 'Remove: Catwalk 1' },
  { name: 'squeeze pad', part: 'squeezePad', add: 'Add: Squeeze pad', path: 'squeezePad', field: 'squeezePad.length', typed: '13 ft', remove: 'Take out: Squeeze pad' },
  { name: 'roof', part: 'squeezePad', add: 'Add: Roof', path: 'squeezePad.roof', field: 'squeezePad.roof.length', typed: '22 ft', remove: 'Take out: Roof', base: ['squeezePad', {}] },
  { name: 'sort pen', part: 'sortPens', add: 'Add: Sort pen', path: 'sortPens[0]', field: 'sortPens[0].gate', typed: '11 ft', remove: 'Remove: sort-1' },
  { name: 'holding pen', part: 'holdingPens', add: 'Add: Holding pen', path: 'holdingPens[0]', field: 'holdingPens[0].gate', typed: '11 ft', remove: 'Remove: hold-1' },
  { name: 'return alley', part: 'returnAlley', add: 'Add: Return alley', path: 'returnAlley', field: 'returnAlley.width', typed: '40', remove: 'Take out: Return alley', base: ['squeezePad', {}] },
  { name: 'loading ramp', part: 'ramps', add: 'Add: loading, up', path: 'ramps[0]', field: 'ramps[0].dockLength', typed: '7 ft', remove: 'Remove: load-1' },
  { name: 'unloading ramp', part: 'ramps', add: 'Add: unloading, down', path: 'ramps[0]', field: 'ramps[0].dockLength', typed: '12 ft', remove: 'Remove: unload-1' },
];

const SIZE = { width: 920, height: 500 };
let page: ShownPlace;
let end: (() => void) | null = null;
beforeEach(() => {
  globalThis.ResizeObserver = class { observe(): void { /* The sheet keeps its size. */ } disconnect(): void { /* Nothing was observed. */ } } as unknown as typeof ResizeObserver;
  Object.assign(SVGElement.prototype, { setPointerCapture: () => undefined, releasePointerCapture: () => undefined, hasPointerCapture: () => true });
});
afterEach(() => {
  end?.();
  end = null;
  page.end();
});

const project = (): JsonObject => {
  const open = page.deskWindow.session.get();
  if (open === null) throw new Error('nothing is open');
  return present(open.history);
};
const laid = () => {
  const { laid: now } = page.deskWindow.worked.get();
  if (now === null) throw new Error('nothing is laid out');
  return now;
};
const figure = (path: string): number => {
  const value = valueAt(project(), path);
  const length = typeof value === 'number' || typeof value === 'string' ? parseLength(value) : null;
  if (length === null) throw new Error(`no figure at ${path}: ${JSON.stringify(value)}`);
  return length;
};
const worked = (what: string): Promise<void> => page.until(what, () => page.deskWindow.worked.get().laidProject === project());
const button = (name: string): HTMLElement => {
  const found = page.all('button').filter((one) => (one.getAttribute('aria-label') ?? one.textContent) === name);
  if (found.length !== 1 || found[0] === undefined) throw new Error(`${String(found.length)} of ${name}`);
  return found[0];
};

/** Drags the handle of a field by so many inches the way of its arrow, and lets go. */
async function drag(field: string, far: number): Promise<void> {
  const svg = document.createElementNS('http://www.w3.org/2000/svg', 'svg');
  Object.defineProperties(svg, { clientWidth: { value: SIZE.width }, clientHeight: { value: SIZE.height } });
  const tag = document.createElement('div');
  page.host.append(svg, tag);
  const state = boardState(page.deskWindow);
  page.change(() => { end = makeBoard(svg, tag, page.deskWindow, state); });
  await page.until('the plan at its scale', () => state.view.get() !== null && state.fitting === null && laid().picture?.scale === state.view.get()?.scale);
  const handle = laid().handles.find(({ path }) => path === field);
  const view = state.view.get();
  if (handle === undefined || view === null) throw new Error(`no handle for ${field}`);
  // Where several stand close together, the run that is looked at has all of its own.
  page.change(() => { page.deskWindow.select({ run: handle.run }); });
  const node = svg.querySelector<SVGElement>(`[data-handle='${handle.id}']`);
  if (node === null) throw new Error(`the handle of ${field} is not on the board`);
  const at = toScreen(view, SIZE, handle.at);
  const inch = view.scale * 96;
  const pointer = (kind: string, share: number): void => {
    page.change(() => {
      node.dispatchEvent(new PointerEvent(kind, {
        bubbles: true, pointerId: 1, button: 0, clientX: at.x + share * far * inch * Math.cos(handle.grows), clientY: at.y - share * far * inch * Math.sin(handle.grows),
      }));
    });
  };
  pointer('pointerdown', 0);
  for (const share of [0.5, 1]) pointer('pointermove', share);
  pointer('pointerup', 1);
  await worked('the dragged plan');
}

it.each(SUBJECTS)('a $name is added, typed, dragged, taken back, led to and removed', async ({ part, add, path, field, typed, remove, base }) => {
  page = await showPlace(() => <FormPart path={part} />, JSON.parse(base === undefined ? JSON.stringify(leastProject()) : changed(leastProject(), base)) as JsonObject);
  expect(valueAt(project(), path)).toBeUndefined();
  page.press(button(add));
  await worked('the plan with it');
  expect(isJsonObject(valueAt(project(), path))).toBe(true);

  const input = page.all('[data-field] input').find((one) => one.closest<HTMLElement>('[data-field]')?.dataset['field'] === field);
  page.type(input as HTMLInputElement, typed);
  await worked('what was typed');
  expect(valueAt(project(), field)).toBe(/^\d+$/.test(typed) ? Number(typed) : typed);
  const before = figure(field);
  expect(laid().handles.find((handle) => handle.path === field)?.value).toBeCloseTo(before, 6);

  await drag(field, 12);
  // In whole inches; a gate whose jambs both move, or a roof whose edges do, grows by twice as much.
  expect([before + 12, before + 24]).toContain(figure(field));
  page.change(() => { page.deskWindow.session.undo(); });
  expect(figure(field)).toBe(before);
  await worked('the plan as it was');

  const runs = laid().stations.runs.map(({ run }) => run);
  const leading = laid().findings.filter((finding) => fieldOfFinding(finding, project(), runs)?.startsWith(path) === true);
  expect(leading.length).toBeGreaterThan(0);

  page.press(button(remove));
  await worked('the plan without it');
  expect(valueAt(project(), path)).toBeUndefined();
  expect(laid().handles.some((handle) => handle.path === field)).toBe(false);
});
