/** The view of the model that a reader opens with: the whole paper. */
import { type Vec, scale } from '../../base/points.ts';
import { type Drawing } from './drawing.ts';
import { openRecord } from './record.ts';

const ORIGIN: Vec = { x: 0, y: 0 };

export function viewportRecord(drawing: Drawing): void {
  const { tags, units, sheet } = drawing;
  const size = units.point({ x: sheet.paper.width, y: sheet.paper.height });
  openRecord(drawing, 'VPORT', 'AcDbViewportTableRecord', '*ACTIVE');
  tags.put(70, 0);
  tags.point2(10, ORIGIN); // the whole screen
  tags.point2(11, { x: 1, y: 1 });
  tags.point2(12, scale(size, 0.5)); // middle of the view
  tags.point2(13, ORIGIN); // snap
  tags.point2(14, { x: 1, y: 1 });
  tags.point2(15, { x: 1, y: 1 }); // grid
  direction(16, 1); // seen from above
  direction(17, 0); // target
  tags.real(40, size.y);
  tags.fine(41, size.x / size.y);
  tags.real(42, 50); // lens
  for (const code of [43, 44, 50, 51]) tags.real(code, 0);
  for (const [code, value] of [[71, 0], [72, 1000], [73, 1], [74, 3], [75, 0], [76, 0], [77, 0], [78, 0], [281, 0], [65, 1]] as const) {
    tags.put(code, value);
  }
  tags.point(110, ORIGIN);
  tags.point(111, { x: 1, y: 0 });
  tags.point(112, { x: 0, y: 1 });
  tags.put(79, 0);
  tags.real(146, 0);

  function direction(code: number, z: number): void {
    tags.point2(code, ORIGIN);
    tags.real(code + 20, z);
  }
}
