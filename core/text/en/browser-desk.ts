/** Words of the window in a browser. */
export const browserDesk = {
  'browser-desk.kind': 'Penwright project',
  'browser-desk.not-utf8': 'is not UTF-8; allowed is UTF-8 (save it again with that encoding)',
  'browser-desk.gone': '{name}: is no longer there; allowed is to save it under another name',
  'browser-desk.not-allowed': '{name}: the browser was not allowed to use it; allowed is to choose it again',
  'browser-desk.failed': '{name}: the browser could not do it ({reason}); allowed is to try another place',
  'browser-desk.no-storage': 'The browser keeps nothing for this page ({reason}), so unsaved work is not kept: save often.',
  'browser-desk.draft-gone': 'The draft is no longer there: another window has taken it up or thrown it away.',
  'browser-desk.recent-gone': 'The browser no longer knows that file; allowed is to open it anew.',
  'browser-desk.print-shut': '{name}: the browser opens no further page here; allowed is to let this page open one',
} as const;
