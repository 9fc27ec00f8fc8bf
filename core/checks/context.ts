import { type Brief } from '../brief/types.ts';
import { type Layout, type Run } from '../layout/index.ts';
import { type Parts } from '../parts/index.ts';

/** All that a rule may ask about. */
export interface Context {
  readonly brief: Brief;
  readonly layout: Layout;
  readonly parts: Parts;
  readonly pen: Run;
  readonly chute: readonly Run[];
}

/** Gathers what the rules ask about. Throws where the layout has no crowd pen: a programmer's mistake. */
export function contextOf(brief: Brief, layout: Layout, parts: Parts): Context {
  const pen = layout.runs.find((run) => run.name === 'crowd-pen');
  if (pen === undefined) throw new Error(`a layout without a crowd pen: ${layout.runs.map((run) => run.name).join(' ')}`);
  return { brief, layout, parts, pen, chute: layout.runs.filter((run) => run.from !== null) };
}
