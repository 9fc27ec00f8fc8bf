import { readFileSync } from 'node:fs';
import { join } from 'node:path';
import { readFont } from '../../../core/drafting/font.ts';
import { createAnswers } from '../../../renderer/worker/answer.ts';
import { type WorkClient } from '../../../renderer/worker/client.ts';

/** The worker's answers in a page of jsdom, where the command's tools do not find their font: neither PDF nor digest is asked for here. */
export function pageWork(): WorkClient {
  const font = readFont(new Uint8Array(readFileSync(join(import.meta.dirname, '../../../shared/fonts/drawing.ttf'))));
  const unasked = (): never => { throw new Error('not asked for by the board'); };
  const answers = createAnswers({ font, makePdf: unasked, sha256: unasked, solver: unasked });
  // A question and its answer belong together by the type of the client.
  return { ask: (kind, ask) => Promise.resolve((answers[kind] as (ask: unknown) => never)(ask)), end: () => undefined };
}
