/** Lets the window close where nothing is lost, and asks the page where there is unsaved work. */
export interface CloseGuard {
  /** The window is about to close. Returns whether it may, and otherwise sees to it that somebody is asked. */
  mayClose(): boolean;
  tellUnsaved(unsaved: boolean): void;
  /** The page's answer. */
  letClose(close: boolean): void;
  /** The page is gone: nobody is left to ask. */
  pageGone(): void;
}

export interface CloseNeed {
  readonly askPage: () => void;
  /** Asks a person, past a page that does not answer, whether to close all the same. */
  readonly askPerson: () => Promise<boolean>;
  readonly close: () => void;
}

export function createCloseGuard({ askPage, askPerson, close }: CloseNeed): CloseGuard {
  let unsaved = false;
  let free = false;
  let asking: 'nobody' | 'page' | 'person' = 'nobody';
  const end = (): void => {
    free = true;
    close();
  };
  return {
    mayClose: () => {
      if (free || !unsaved) return true;
      if (asking === 'nobody') {
        asking = 'page';
        askPage();
      } else if (asking === 'page') {
        // Asked to close once more while the page has the question: it may be hung.
        asking = 'person';
        void askPerson().then((yes) => {
          asking = asking === 'person' ? 'page' : asking;
          if (yes) end();
        });
      }
      return false;
    },
    tellUnsaved: (now) => { unsaved = now; },
    letClose: (yes) => {
      // An answer that nobody asked for is none.
      if (asking === 'nobody') return;
      asking = 'nobody';
      if (yes) end();
    },
    pageGone: () => {
      unsaved = false;
      asking = 'nobody';
    },
  };
}
