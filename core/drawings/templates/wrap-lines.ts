/** The lines round a template that tell how it lies on the pipe. */
import { type Cope, type Wrap } from '../../shop/templates/index.ts';
import { say, type StringKey } from '../../text/index.ts';

export interface WrapLine {
  /** From the seam. */
  readonly x: number;
  readonly words: string;
}

/** Seam, quarter lines and seam again, in their order round the pipe. */
export function wrapLines(cope: Cope, { around }: Pick<Wrap, 'around'>): readonly WrapLine[] {
  const [seam, first, middle, last] = keysOf(cope);
  return [seam, first, middle, last, 'template.line.seam' as const].map((key, i) => ({ x: (around * i) / 4, words: say(key) }));
}

function keysOf(cope: Cope): readonly [StringKey, StringKey, StringKey, StringKey] {
  if (cope.kind === 'saddle') {
    if (cope.bend !== null) return ['template.line.seam', 'template.line.inside', 'template.line.top-or-seam', 'template.line.outside'];
    return cope.slope === 0
      ? ['template.line.seam-under', 'template.line.side', 'template.line.top', 'template.line.side']
      : ['template.line.seam-upper', 'template.line.side', 'template.line.top-lower', 'template.line.side'];
  }
  switch (cope.lies) {
    case 'slope':
      return ['template.line.seam-under', 'template.line.side', 'template.line.top-long', 'template.line.side'];
    case 'frame':
      return ['template.line.seam-face', 'template.line.long-outer', 'template.line.face', 'template.line.short-inner'];
    case 'level':
      if (cope.bend === null) return ['template.line.seam', 'template.line.long', 'template.line.top-or-seam', 'template.line.short'];
      return cope.long === 'inside'
        ? ['template.line.seam', 'template.line.inside-long', 'template.line.top-or-seam', 'template.line.outside']
        : ['template.line.seam', 'template.line.inside', 'template.line.top-or-seam', 'template.line.outside-long'];
  }
}
