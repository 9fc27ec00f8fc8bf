import { CURRENT_VERSION } from '../../core/brief/index.ts';
import { FORMAT } from '../../core/brief/versions/read-envelope.ts';

/** A project that says nothing yet: what is asked for is missing, and everything else is left to its default. */
export const EMPTY_BRIEF = `${JSON.stringify({ format: FORMAT, version: CURRENT_VERSION }, null, 2)}\n`;
