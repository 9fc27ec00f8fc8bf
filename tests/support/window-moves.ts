/** What a person does in the window, by the names that a person reads. */
import { AxeBuilder } from '@axe-core/playwright';
import { type Locator, type Page } from '@playwright/test';

export type PlaceName = 'Brief' | 'Lay out' | 'Check' | 'Make' | 'Stake out' | 'Hand over';
export const PLACE_NAMES: readonly PlaceName[] = ['Brief', 'Lay out', 'Check', 'Make', 'Stake out', 'Hand over'];

export const walk = (page: Page): Locator => page.getByRole('navigation', { name: 'The walk, from alley to truck' });

/** A run in the strip of stations, once the design is worked out. */
export const stretch = (page: Page, run: string): Locator => walk(page).getByRole('button', { name: new RegExp(`^${run}`) });

export async function openExample(page: Page, title: string): Promise<void> {
  await page.getByRole('button', { name: new RegExp(title) }).first().click();
  await stretch(page, 'crowd-pen').waitFor();
}

export async function goTo(page: Page, place: PlaceName): Promise<void> {
  const button = page.getByRole('navigation', { name: /^Places/ }).getByRole('button', { name: new RegExp(`^${place}`) });
  await button.click();
  await button.and(page.locator('[aria-current="page"]')).waitFor();
}

/** Drags from the middle of something, in several steps as a hand does, once it lies still. */
export async function dragBy(page: Page, handle: Locator, dx: number, dy: number): Promise<void> {
  let box = await handle.boundingBox();
  for (let before = null as typeof box; box === null || box.x !== before?.x || box.y !== before.y; box = await handle.boundingBox()) {
    before = box;
    await page.waitForTimeout(400);
  }
  const [x, y] = [box.x + box.width / 2, box.y + box.height / 2];
  await page.mouse.move(x, y);
  await page.mouse.down();
  for (let step = 1; step <= 8; step += 1) await page.mouse.move(x + (dx * step) / 8, y + (dy * step) / 8);
  await page.mouse.up();
}

/** What is wrong with the page for people who do not see or point (WCAG 2.2 A and AA), a line each. */
export async function barriers(page: Page): Promise<string[]> {
  const { violations } = await new AxeBuilder({ page }).withTags(['wcag2a', 'wcag2aa', 'wcag21a', 'wcag21aa', 'wcag22aa', 'best-practice']).analyze();
  return violations.flatMap((violation) => violation.nodes.map((node) => `${violation.id}: ${violation.help}: ${node.target.join(' ')}`));
}
