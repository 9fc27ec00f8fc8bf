/** A sheet drawn on a page of a PDF. */
import { type Vec } from '../../base/points.ts';
import { MM_PER_INCH } from '../../base/quantity.ts';
import { type Font, emSize } from '../../drafting/font.ts';
import { type Pen, type Sheet, type Stroke, DASHES, LINE_WEIGHT_MM, strokesOf } from '../../drafting/primitives.ts';
import { baseline } from '../baseline.ts';
import { cleanText } from '../clean-text.ts';
import { bezierArc } from './bezier-arc.ts';
import { type PdfPage } from './page.ts';
import { POINTS } from './points.ts';

/** Draws every stroke of a sheet. Consecutive lines of one pen share its settings. */
export function drawSheet(page: PdfPage, sheet: Sheet, font: Font): void {
  let held: Pen | null = null;
  for (const stroke of strokesOf(sheet.primitives)) {
    if ('pen' in stroke && (held === null || held.weight !== stroke.pen.weight || held.dash !== stroke.pen.dash)) {
      held = stroke.pen;
      page.pen((LINE_WEIGHT_MM[held.weight] / MM_PER_INCH) * POINTS, DASHES[held.dash].map((dash) => dash * POINTS));
    }
    drawStroke(page, stroke, font);
  }
}

function drawStroke(page: PdfPage, stroke: Stroke, font: Font): void {
  switch (stroke.kind) {
    case 'line': {
      path(page, [stroke.a, stroke.b]);
      page.stroke();
      return;
    }
    case 'arc': {
      curve(page, stroke.center, stroke.radius, stroke.start, stroke.sweep);
      page.stroke();
      return;
    }
    case 'circle': {
      curve(page, stroke.center, stroke.radius, 0, 2 * Math.PI);
      page.stroke();
      return;
    }
    case 'fill': {
      path(page, stroke.points);
      page.fill();
      return;
    }
    case 'dot': {
      curve(page, stroke.center, stroke.radius, 0, 2 * Math.PI);
      page.fill();
      return;
    }
    case 'text': {
      const { from } = baseline(stroke);
      const text = cleanText(stroke.text);
      page.text({
        text,
        x: from.x * POINTS,
        y: from.y * POINTS,
        size: emSize(font, stroke.height) * POINTS,
        rotation: stroke.rotation,
        width: stroke.width * POINTS,
        lacking: [...text].some((char) => !font.has(char.codePointAt(0) ?? 0)),
      });
      return;
    }
  }
}

function path(page: PdfPage, points: readonly Vec[]): void {
  points.forEach(({ x, y }, k) => {
    if (k === 0) page.moveTo(x * POINTS, y * POINTS);
    else page.lineTo(x * POINTS, y * POINTS);
  });
}

function curve(page: PdfPage, center: Vec, radius: number, start: number, sweep: number): void {
  page.moveTo((center.x + radius * Math.cos(start)) * POINTS, (center.y + radius * Math.sin(start)) * POINTS);
  for (const [one, two, end] of bezierArc(center, radius, start, sweep)) {
    page.curveTo(one.x * POINTS, one.y * POINTS, two.x * POINTS, two.y * POINTS, end.x * POINTS, end.y * POINTS);
  }
}
