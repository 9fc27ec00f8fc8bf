import { readFileSync } from 'node:fs';
import { act, type ComponentType } from 'react';
import { createRoot } from 'react-dom/client';
import { type JsonObject } from '../../../core/brief/json/types.ts';
import { createDeskWindow, type DeskWindow, DeskWindowProvider } from '../../../renderer/app/desk-window.ts';
import { type WorkClient } from '../../../renderer/worker/client.ts';
import { type CutPlanner } from '../../../renderer/worker/cut-planner.ts';
import { fakeDesk } from './fake-desk.ts';
import { directWork } from './opened.ts';

export interface ShownPlace {
  readonly deskWindow: DeskWindow;
  readonly host: HTMLElement;
  /** Kinds of what the worker was asked, in order. */
  readonly asked: string[];
  /** Waits until something holds of the page. */
  until(what: string, holds: () => boolean): Promise<void>;
  /** The one element that a selector and its words find; throws where there is none. */
  find(selector: string, words?: string | RegExp): HTMLElement;
  all(selector: string): HTMLElement[];
  press(element: Element): void;
  key(element: Element, key: string): void;
  type(element: HTMLInputElement, words: string): void;
  /** Any change of the window's state, with what it draws again. */
  change(what: () => void): void;
  end(): void;
}

export const exampleProject = (name: string): JsonObject =>
  JSON.parse(readFileSync(new URL(`../../../shared/examples/${name}.penwright.json`, import.meta.url), 'utf8')) as JsonObject;

/** A place of the window on a page, about an example or a project, answered by the core itself. */
export async function showPlace(View: ComponentType, example: string | JsonObject = 'juniper-flat', newPlanner?: () => CutPlanner): Promise<ShownPlace> {
  const direct = directWork();
  const asked: string[] = [];
  const work: WorkClient = { ...direct, ask: (kind, ask) => { asked.push(kind); return direct.ask(kind, ask); } };
  const deskWindow = createDeskWindow(fakeDesk(), work, newPlanner);
  const host = document.createElement('div');
  document.body.append(host);
  const root = createRoot(host);
  const until: ShownPlace['until'] = async (what, holds) => {
    for (let turn = 0; turn < 400; turn += 1) {
      if (holds()) return;
      await act(() => new Promise((done) => setTimeout(done, 5)));
    }
    throw new Error(`never came: ${what}`);
  };
  const change: ShownPlace['change'] = (what) => { act(what); };
  change(() => {
    if (typeof example === 'string') deskWindow.session.open(exampleProject(example), null, `${example}.penwright.json`, null);
    else deskWindow.session.open(example, null, 'Test', null);
    root.render(<DeskWindowProvider value={deskWindow}><View /></DeskWindowProvider>);
  });
  await until('a design', () => deskWindow.worked.get().laid !== null);
  const all: ShownPlace['all'] = (selector) => [...host.querySelectorAll<HTMLElement>(selector)];
  return {
    deskWindow, host, asked, until, all, change,
    find: (selector, words = '') => {
      const found = all(selector).find((element) => {
        const text = element.getAttribute('aria-label') ?? element.textContent;
        return words instanceof RegExp ? words.test(text) : text.includes(words);
      });
      if (found === undefined) throw new Error(`no ${selector} with ${String(words)}`);
      return found;
    },
    press: (element) => { change(() => { element.dispatchEvent(new MouseEvent('click', { bubbles: true })); }); },
    key: (element, key) => { change(() => { element.dispatchEvent(new KeyboardEvent('keydown', { key, bubbles: true, cancelable: true })); }); },
    type: (element, words) => {
      change(() => {
        // As a browser does it: React looks at the field's own setter.
        Object.getOwnPropertyDescriptor(HTMLInputElement.prototype, 'value')?.set?.call(element, words);
        element.dispatchEvent(new Event('input', { bubbles: true }));
      });
    },
    end: () => { act(() => { root.unmount(); }); host.remove(); },
  };
}
