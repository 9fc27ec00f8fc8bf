import { readFileSync } from 'node:fs';
import { readFont } from '../../core/drafting/font.ts';
import { type PackageTools } from '../../core/package/index.ts';
import { sha256 } from '../disk/index.ts';
import { makePdf } from '../pdf/index.ts';
import { createSolver } from '../solver/highs.ts';

const FONT = new URL('../../shared/fonts/drawing.ttf', import.meta.url);

let solver: ReturnType<typeof createSolver> | null = null;
let tools: PackageTools | null = null;

/** The font that comes with the program, the PDF library, the solver and the digest, made ready once. */
export function packageTools(): PackageTools {
  tools ??= { font: readFont(readFileSync(FONT)), makePdf, sha256, solver: () => (solver ??= createSolver()) };
  return tools;
}
