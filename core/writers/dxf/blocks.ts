/** BLOCKS section: the two spaces, whose entities stand elsewhere, and the picture of each dimension. */
import { type Drawing } from './drawing.ts';
import { strokeEntity } from './stroke.ts';

/** Group 70 of a block without a name of its own. */
const NAMELESS = 1;

export function blocksSection(drawing: Drawing): void {
  const { tags, fixed, units, handles } = drawing;
  tags.put(0, 'SECTION');
  tags.put(2, 'BLOCKS');
  block(drawing, '*Model_Space', fixed.modelRecord, 0, false);
  block(drawing, '*Paper_Space', fixed.paperRecord, 0, true);
  for (const { block: name, record, dimension } of drawing.pictures) {
    block(drawing, name, record, NAMELESS, false, () => {
      for (const stroke of dimension.strokes) strokeEntity({ tags, units, handles, owner: record }, stroke);
    });
  }
  tags.put(0, 'ENDSEC');
}

function block({ tags, handles }: Drawing, name: string, record: string, flags: number, paper: boolean, content?: () => void): void {
  const edge = (type: string, subclass: string): void => {
    tags.put(0, type);
    tags.put(5, handles.next());
    tags.put(330, record);
    tags.put(100, 'AcDbEntity');
    if (paper) tags.put(67, 1);
    tags.put(8, '0');
    tags.put(100, subclass);
  };
  edge('BLOCK', 'AcDbBlockBegin');
  tags.put(2, name);
  tags.put(70, flags);
  tags.point(10, { x: 0, y: 0 });
  tags.put(3, name);
  tags.put(1, '');
  content?.();
  edge('ENDBLK', 'AcDbBlockEnd');
}
