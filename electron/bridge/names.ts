/** The names under which the window and the machine know each other. Nothing here needs a browser, Node or Electron. */
import { type Desk } from './desk.ts';

/** Where the preload puts the desk in the page: `window.penwright`. In a browser it is not there. */
export const DESK_NAME = 'penwright';

/** What the page asks and waits for. */
export const REQUESTS = [
  'openProject', 'recentProjects', 'openRecent', 'saveProject', 'saveProjectAs',
  'keepDraft', 'dropDraft', 'drafts', 'takeDraft', 'throwDraft',
  'choosePackage', 'writePackage', 'showPackage', 'print',
] as const;
export type RequestName = (typeof REQUESTS)[number];

/** What the page tells, without an answer. */
export const NOTICES = ['tellUnsaved', 'letClose'] as const;
export type NoticeName = (typeof NOTICES)[number];

/** All that a desk can do is one of the two, but to say where it is and to listen. */
type Named = RequestName | NoticeName | 'where' | 'onAsked';
type Unnamed = Exclude<keyof Desk, Named> | Exclude<Named, keyof Desk>;
const complete: Unnamed extends never ? true : never = true;
void complete;

const PREFIX = 'penwright:';

/** The channel of a request or a notice. */
export const channelOf = (name: RequestName | NoticeName): string => `${PREFIX}${name}`;
/** The page has begun to listen: what was asked before is sent now. */
export const LISTENING_CHANNEL = `${PREFIX}listening`;
/** From the machine to the page: an `Asked`. */
export const ASKED_CHANNEL = `${PREFIX}asked`;

/** The window's own protocol and the one place in it: `penwright://window/index.html`. */
export const PAGE_SCHEME = 'penwright';
export const PAGE_HOST = 'window';
export const PAGE_ADDRESS = `${PAGE_SCHEME}://${PAGE_HOST}/index.html`;
