/**
 * What the window asks of the machine that it runs on. The desktop answers through the preload; in a browser the page answers for
 * itself. A path is never named by the window: a file or folder is chosen in a dialog, and an id stands for it from then on.
 */

/** A file that a person chose, for as long as the window is open. */
export type FileId = string & { readonly __file: never };
/** A folder that a person chose for a package. */
export type FolderId = string & { readonly __folder: never };

/** What could not be done, in words for a person: `PATH: what is wrong, what is allowed`. */
export interface Refused {
  readonly ok: false;
  readonly message: string;
}

export type Reply<T> = { readonly ok: true; readonly value: T } | Refused;

export interface OpenedProject {
  readonly file: FileId;
  /** The file's name, without its folder. */
  readonly name: string;
  readonly text: string;
}

/** `changed`: somebody else has written the file since it was read or saved here; nothing was written. */
export type Saved = { readonly kind: 'saved' } | { readonly kind: 'changed'; readonly text: string };

export interface RecentProject {
  readonly id: string;
  readonly name: string;
  /** The folder as a person knows it, to tell two of one name apart; empty where there is none to tell. */
  readonly folder: string;
}

/** Work that was not saved when the window ended. */
export interface Draft {
  readonly id: string;
  /** The file that it was being written for; empty for a project that had none. */
  readonly name: string;
  readonly text: string;
  /** When it was kept, as a person reads it. */
  readonly kept: string;
}

export interface PackageTarget {
  readonly folder: FolderId;
  readonly name: string;
}

/** A file of a package, from its folder, with `/`. */
export interface HandedFile {
  readonly path: string;
  readonly bytes: Uint8Array;
}

/** What a menu or the machine asks of the window. */
export type Asked =
  | { readonly kind: 'new' }
  | { readonly kind: 'open' }
  | { readonly kind: 'save' }
  | { readonly kind: 'save-as' }
  | { readonly kind: 'undo' }
  | { readonly kind: 'redo' }
  /** A file that was opened from outside the window. */
  | { readonly kind: 'opened'; readonly project: OpenedProject }
  /** The window is about to close: the answer is `letClose`. */
  | { readonly kind: 'close' };

export interface Desk {
  readonly where: 'desktop' | 'browser';

  /** Lets a person choose a project; null where they chose none. */
  openProject(): Promise<Reply<OpenedProject | null>>;
  recentProjects(): Promise<readonly RecentProject[]>;
  openRecent(id: string): Promise<Reply<OpenedProject>>;
  /**
   * Writes the file whole or not at all, and drops its draft. `force`: also over what `changed` last told of; where somebody has
   * changed the file once more since, that is told in turn.
   */
  saveProject(file: FileId, text: string, force: boolean): Promise<Reply<Saved>>;
  /** Lets a person say where; null where they said nowhere. The draft that the work had before stays: the page drops it. */
  saveProjectAs(suggestedName: string, text: string): Promise<Reply<Omit<OpenedProject, 'text'> | null>>;

  /** Keeps unsaved work beside its file, or in the program's own place where it has none. One draft a project. */
  keepDraft(file: FileId | null, text: string): Promise<Reply<null>>;
  dropDraft(file: FileId | null): Promise<Reply<null>>;
  /** Drafts that an earlier window left, the newest first, those found beside a file that was opened included; never this window's own. */
  drafts(): Promise<readonly Draft[]>;
  /**
   * Takes a draft up (its file, where it still has one) or throws it away. One taken up is this window's own from then on and stays until
   * it is saved or dropped. Where the file has been changed since the draft was begun, the first save tells of it.
   */
  takeDraft(id: string): Promise<Reply<{ readonly project: OpenedProject | null; readonly text: string }>>;
  throwDraft(id: string): Promise<Reply<null>>;

  /** Lets a person choose where a package goes; null where they chose nowhere. In a browser it is a file to download. */
  choosePackage(suggestedName: string): Promise<Reply<PackageTarget | null>>;
  /** Writes the package whole or not at all. `kinds`: those that it holds, for a fuller one is never replaced by a lesser. */
  writePackage(folder: FolderId, files: readonly HandedFile[], kinds: readonly string[]): Promise<Reply<null>>;
  /** Shows a written package in the machine's own file window. Does nothing in a browser. */
  showPackage(folder: FolderId): Promise<Reply<null>>;
  /** Hands a PDF to the machine to print. */
  print(pdf: Uint8Array, name: string): Promise<Reply<null>>;

  /** Whether there is work that would be lost. */
  tellUnsaved(unsaved: boolean): void;
  /** Answers `close`. */
  letClose(close: boolean): void;
  /** Listens to what the machine asks; the answer ends it. */
  onAsked(listener: (asked: Asked) => void): () => void;
}
