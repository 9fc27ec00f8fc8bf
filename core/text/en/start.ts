/** Words of the command that opens the window. */
export const start = {
  'start.option-unknown': 'is not an option of this command; allowed is --browser, --no-open and the path of one project file',
  'start.one-file': 'is one file too many; allowed is the path of one project file',
  'start.building': 'Building the window …',
  'start.fetching': 'Fetching the desktop runtime, which is done once …',
  'start.no-runtime': 'The desktop runtime cannot be had here ({reason}), so the same window opens in the browser.',
  'start.no-window': 'The desktop window cannot be opened here ({reason}), so the same window opens in the browser.',
  'start.address': 'The window is at {address} until you stop this command with Ctrl-C.',
  'start.file-by-hand': 'Open {file} in the window: a browser does not let it be handed over from here.',
} as const;
