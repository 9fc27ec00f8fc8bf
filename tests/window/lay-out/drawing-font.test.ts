import { expect, it } from 'vitest';
import { emSize } from '../../../core/drafting/font.ts';
import { packageTools } from '../../../electron/command/tools.ts';
import { EM_OF_CAPITAL } from '../../../renderer/look/drawing-font.ts';

it('the board sets letters at the size that the drawing font\'s own tables say', () => {
  expect(EM_OF_CAPITAL).toBeCloseTo(emSize(packageTools().font, 1), 12);
});
