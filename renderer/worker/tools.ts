import { sha256 } from '@noble/hashes/sha2.js';
import { bytesToHex } from '@noble/hashes/utils.js';
import fontUrl from '../../shared/fonts/drawing.ttf?url';
import { readFont } from '../../core/drafting/font.ts';
import { type PackageTools } from '../../core/package/index.ts';
import { type LinearSolver } from '../../core/shop/linear-solver.ts';
import { makePdf } from '../../electron/pdf/index.ts';

/** What the core is handed in a browser: the font from beside the page, the PDF library, the digest, and the solver, which only a worker that may compile it can load. */
export async function browserTools(): Promise<PackageTools> {
  const reply = await fetch(new URL(fontUrl, import.meta.url));
  if (!reply.ok) throw new Error(`the drawing font: ${String(reply.status)}`);
  const solver = async (): Promise<LinearSolver> => (await import('../../electron/solver/highs.ts')).createSolver();
  return { font: readFont(new Uint8Array(await reply.arrayBuffer())), makePdf, sha256: (bytes) => bytesToHex(sha256(bytes)), solver };
}
