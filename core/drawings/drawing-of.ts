import { fitTitle } from '../drafting/frame.ts';
import { type Drawing } from '../drafting/model.ts';
import { say } from '../text/index.ts';
import { type Filled } from './flow.ts';
import { type Page } from './input.ts';

/** A drawing of a series: number, file name, scale of its first view. */
export function drawingOf(page: Page, filled: Omit<Filled, 'labels'>, series: string, index: number, title: string, file: string): Drawing {
  const number = `${series}${String(index + 1).padStart(2, '0')}`;
  const first = filled.views[0];
  const scales = new Set(filled.views.map((view) => view.scaleText));
  return {
    number,
    title: fitTitle(page.kit, page.paper, title),
    file: `${number} ${file}`,
    paper: page.paper,
    scale: first?.scale ?? 1,
    scaleText: first === undefined ? say('drawings.scale.none') : scales.size > 1 ? say('drawings.scale.asShown') : first.scaleText,
    views: filled.views,
    tables: filled.tables,
    notes: filled.notes,
  };
}
