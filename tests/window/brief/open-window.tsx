import { act, type ReactElement } from 'react';
import { createRoot } from 'react-dom/client';
import { isJsonObject } from '../../../core/brief/json/types.ts';
import { parseJson } from '../../../core/brief/json/parse-json.ts';
import { readBrief, printFault } from '../../../core/brief/index.ts';
import { createDeskWindow, DeskWindowProvider, type DeskWindow } from '../../../renderer/app/desk-window.ts';
import { browserDesk } from '../../../renderer/desk/browser-desk.ts';
import { present } from '../../../renderer/project/history.ts';
import { valueAt } from '../../../renderer/project/json-path.ts';
import { type WorkClient } from '../../../renderer/worker/client.ts';

declare global {
  // Told to React, that changes are awaited here.
  var IS_REACT_ACT_ENVIRONMENT: boolean;
}

/** A window in which the door alone is asked what is wrong: nothing is laid out. */
const doorAlone: WorkClient = {
  ask: ((_: string, { text }: { text: string }) => {
    const read = readBrief(text);
    const faults = read.ok ? [] : read.faults.map((fault) => ({ path: fault.path, words: printFault(fault).slice(fault.path.length + 2) }));
    return Promise.resolve({ faults, defaults: read.ok ? read.defaults : [], laid: null });
  }) as WorkClient['ask'],
  end: () => undefined,
};

export interface OpenWindow {
  readonly desk: DeskWindow;
  readonly page: HTMLElement;
  /** What the project has at a path now. */
  value(path: string): unknown;
  steps(): number;
  /** Types a text as a person does: the field is entered, its text changed. */
  type(control: Element, text: string): Promise<void>;
  leave(control: Element): Promise<void>;
  press(control: Element): Promise<void>;
  undo(): Promise<void>;
  /** Another place leads here. */
  select(part: Parameters<DeskWindow['select']>[0]): Promise<void>;
  /** The control whose label has these words. */
  control(label: string, within?: Element): HTMLInputElement;
  button(name: string, within?: Element): HTMLButtonElement;
  close(): Promise<void>;
}

/** Opens a project and draws a part of the window about it. */
export async function openWindow(project: object, part: ReactElement): Promise<OpenWindow> {
  globalThis.IS_REACT_ACT_ENVIRONMENT = true;
  // What a page is asked of its machine, and jsdom has not: whether it is dark.
  globalThis.matchMedia = () => ({ matches: false, addEventListener: () => undefined }) as unknown as MediaQueryList;
  const desk = createDeskWindow(browserDesk(), doorAlone);
  const read = parseJson(JSON.stringify(project)).value;
  if (!isJsonObject(read)) throw new Error('no project');
  const page = document.createElement('div');
  document.body.append(page);
  const root = createRoot(page);
  const settle = (what: () => void): Promise<void> => act(async () => {
    what();
    // The answer about the project comes in later turns.
    for (let turn = 0; turn < 6; turn += 1) await Promise.resolve();
  });
  await settle(() => {
    desk.session.open(read, null, 'Test', null);
    root.render(<DeskWindowProvider value={desk}>{part}</DeskWindowProvider>);
  });
  const history = () => {
    const open = desk.session.get();
    if (open === null) throw new Error('nothing is open');
    return open.history;
  };
  const found = <T extends Element>(name: string, among: readonly T[]): T => {
    if (among.length !== 1 || among[0] === undefined) throw new Error(`${String(among.length)} of ${name}`);
    return among[0];
  };
  return {
    desk, page,
    value: (path) => valueAt(present(history()), path),
    steps: () => history().steps.length,
    type: (control, text) => settle(() => {
      (control as HTMLElement).focus();
      const setter = Object.getOwnPropertyDescriptor(Object.getPrototypeOf(control), 'value')?.set;
      setter?.call(control, text);
      control.dispatchEvent(new Event(control.tagName === 'SELECT' ? 'change' : 'input', { bubbles: true }));
    }),
    leave: (control) => settle(() => { (control as HTMLElement).blur(); }),
    press: (control) => settle(() => { (control as HTMLElement).click(); }),
    undo: () => settle(() => { desk.session.undo(); }),
    select: (part) => settle(() => { desk.select(part); }),
    control: (label, within = page) => {
      const labels = [...within.querySelectorAll('label[for]')].filter((element) => element.firstChild?.textContent === label);
      const id = found(label, labels).getAttribute('for') ?? '';
      return document.getElementById(id) as HTMLInputElement;
    },
    button: (name, within = page) =>
      found(name, [...within.querySelectorAll('button')].filter((button) => (button.getAttribute('aria-label') ?? button.textContent) === name)),
    close: () => settle(() => {
      root.unmount();
      page.remove();
    }),
  };
}
