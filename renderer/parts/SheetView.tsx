import { type ReactElement, useRef } from 'react';
import { type Stroke } from '../../core/drafting/primitives.ts';
import { say } from '../../core/text/index.ts';
import { type DrawnSheet } from '../worker/protocol.ts';
import { fullSize, viewBoxOf, wholePaper, zoomed, ZOOM_STEP } from './sheet-gaze.ts';
import './sheet-view.css';
import { SheetStrokes, strokeElement } from './SheetStrokes.tsx';
import { type Spot } from './spots.ts';
import { SpotMarks } from './SpotMarks.tsx';
import { useGaze } from './use-gaze.ts';

export interface SheetViewProps {
  readonly drawn: DrawnSheet;
  /** What may be chosen on it, and what a person calls such things. */
  readonly spots: readonly Spot[];
  readonly spotsLabel: string;
  readonly chosen: string | null;
  /** Strokes that are told from the others: the steel of a chosen mark. */
  readonly told: readonly Stroke[];
  onChoose(id: string): void;
}

/** A drawing as it will print, on its white paper: larger, smaller, moved about by hand or by keys. */
export function SheetView({ drawn, spots, spotsLabel, chosen, told, onChoose }: SheetViewProps): ReactElement {
  const { sheet, font } = drawn;
  const { paper } = sheet;
  const pane = useRef<SVGSVGElement>(null);
  const { gaze, set, show, key, pointer } = useGaze(paper, pane);
  const tools = [
    { name: 'place-make.fit', press: () => { set((_, size) => wholePaper(size)); } },
    { name: 'place-make.larger', press: () => { set((now, size) => zoomed(now, ZOOM_STEP, size)); } },
    { name: 'place-make.smaller', press: () => { set((now, size) => zoomed(now, 1 / ZOOM_STEP, size)); } },
    { name: 'place-make.full-size', press: () => { set((now, size, box) => fullSize(now, size, box)); } },
  ] as const;
  return (
    <div className="sheet-view">
      <svg
        ref={pane}
        viewBox={viewBoxOf(gaze, paper)}
        role="group"
        aria-label={say('place-make.sheet', { number: sheet.number, title: sheet.title })}
        tabIndex={0}
        {...pointer}
        onKeyDown={(event) => {
          if (event.target === event.currentTarget && !event.ctrlKey && !event.metaKey && key(event.key)) event.preventDefault();
        }}
      >
        <rect className="sheet-paper" width={paper.width} height={paper.height} />
        <g className="sheet-told" aria-hidden="true">
          {told.map((stroke, index) => strokeElement(stroke, paper.height, font, String(index)))}
        </g>
        <SheetStrokes sheet={sheet} font={font} />
        <SpotMarks spots={spots} label={spotsLabel} chosen={chosen} onChoose={onChoose} onSeen={show} />
      </svg>
      <div className="sheet-tools" role="group" aria-label={say('place-make.look')}>
        {tools.map(({ name, press }) => <button key={name} type="button" onClick={press}>{say(name)}</button>)}
      </div>
    </div>
  );
}
