/** What the set of drawings is made from. */
import { type Brief } from '../brief/types.ts';
import { type Font } from '../drafting/font.ts';
import { type Kit, makeKit } from '../drafting/kit.ts';
import { type Rect } from '../drafting/boxes.ts';
import { roomInside } from '../drafting/frame.ts';
import { type TitleBlock } from '../drafting/model.ts';
import { paperNamed } from '../drafting/paper.ts';
import { type Paper } from '../drafting/primitives.ts';
import { type Layout } from '../layout/index.ts';
import { type Parts } from '../parts/index.ts';
import { type CutList } from '../shop/cut-list/index.ts';

export interface DrawInput {
  readonly brief: Brief;
  readonly layout: Layout;
  readonly parts: Parts;
  readonly font: Font;
  /** The cut list where it is planned; without it the set has no drawings of it. */
  readonly cuts?: CutList | null;
  /** An earlier issue: what changed since stands in clouds. */
  readonly since?: Pick<DrawInput, 'brief' | 'layout' | 'parts' | 'cuts'> | null;
}

/** A paper with the kit, the title block and the room inside it. */
export interface Page {
  readonly paper: Paper;
  readonly kit: Kit;
  readonly block: TitleBlock;
  readonly room: Rect;
}

export function titleBlockOf(brief: Brief): TitleBlock {
  return {
    project: brief.title,
    client: brief.client,
    revision: brief.revision.letter,
    date: brief.revision.date,
    units: brief.units,
  };
}

/** The page that a project's drawings stand on; `paper` where one needs a larger one than the brief's. */
export function pageOf(input: DrawInput, paper: Paper = paperNamed(input.brief.paper)): Page {
  const kit = makeKit(input.font, input.brief.units, paper);
  const block = titleBlockOf(input.brief);
  return { paper, kit, block, room: roomInside(kit, paper, block) };
}
