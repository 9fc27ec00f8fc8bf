/** A browser whose file dialogs choose among files that the page's own storage holds, and one that has no such dialogs. */
import { type BrowserContext, type Page } from '@playwright/test';

/** Takes the browser's file dialogs away: what is left is a file field and a download. */
export const withoutDialogs = (context: BrowserContext): Promise<unknown> =>
  context.addInitScript(() => {
    Reflect.deleteProperty(window, 'showOpenFilePicker');
    Reflect.deleteProperty(window, 'showSaveFilePicker');
  });

/** Dialogs that choose the file named in `window.chosen`, or nothing where there is none. The holds that they give are the browser's own. */
export const withOwnFiles = (context: BrowserContext): Promise<unknown> =>
  context.addInitScript(() => {
    const choose = async (): Promise<FileSystemFileHandle> => {
      const name = sessionStorage.getItem('chosen');
      if (name === null) {
        document.documentElement.dataset['dialogShut'] = '';
        throw new DOMException('shut', 'AbortError');
      }
      const root = await navigator.storage.getDirectory();
      return root.getFileHandle(name, { create: true });
    };
    Object.assign(window, { showOpenFilePicker: async () => [await choose()], showSaveFilePicker: choose });
  });

/** What the next dialog chooses; null: it is shut. */
export const choose = (page: Page, name: string | null): Promise<void> =>
  page.evaluate((chosen) => { if (chosen === null) sessionStorage.removeItem('chosen'); else sessionStorage.setItem('chosen', chosen); }, name);

/** Writes a file as somebody else would. */
export const writeFile = (page: Page, name: string, text: string): Promise<void> =>
  page.evaluate(async ([file, content]) => {
    const root = await navigator.storage.getDirectory();
    const stream = await (await root.getFileHandle(file, { create: true })).createWritable();
    await stream.write(content);
    await stream.close();
  }, [name, text] as const);

export const readFile = (page: Page, name: string): Promise<string> =>
  page.evaluate(async (file) => {
    const root = await navigator.storage.getDirectory();
    return (await (await root.getFileHandle(file)).getFile()).text();
  }, name);
