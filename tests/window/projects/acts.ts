import { type Locator, type Page } from '@playwright/test';
import { readFileSync } from 'node:fs';
import { examplePath } from '../support/command-package.ts';

export const JUNIPER = readFileSync(examplePath('juniper-flat'), 'utf8');
/** The example's own revision note. */
export const FIRST_NOTE = (JSON.parse(JUNIPER) as { revision: { note: string } }).revision.note;

export const goTo = (page: Page, place: string): Promise<void> =>
  page.getByRole('navigation', { name: /places/i }).getByRole('button', { name: new RegExp(`^${place}`) }).click();

export const noteField = (page: Page): Locator => page.getByRole('textbox', { name: 'Note' });

/** Changes the open project: its revision's note. */
export async function writeNote(page: Page, note: string): Promise<void> {
  await goTo(page, 'Hand over');
  await noteField(page).fill(note);
  await noteField(page).blur();
}

export const press = (page: Page, name: string | RegExp): Promise<void> => page.getByRole('button', { name, exact: true }).click();
export const unsavedSign = (page: Page): Locator => page.getByRole('contentinfo').getByText(/not saved/);
