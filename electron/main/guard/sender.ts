import { isPageAddress } from '../scheme.ts';

/** A frame, as Electron's `WebFrameMain`: two objects may stand for one frame, so frames are told apart by their tokens. */
export interface Frame {
  readonly url: string;
  readonly frameToken: string;
}

/** What is looked at of a message's sender; of Electron's `IpcMainEvent` and `IpcMainInvokeEvent`. */
export interface Sent {
  readonly sender: unknown;
  /** Null where the frame has gone or gone elsewhere since. */
  readonly senderFrame: Frame | null;
}

/** The window's page, as Electron's `WebContents`. */
export interface Page {
  readonly mainFrame: Frame;
  isDestroyed(): boolean;
}

/** Whether a message comes from the page of our window: its main frame, at our own address. */
export function isFromPage({ sender, senderFrame }: Sent, page: Page | null): boolean {
  if (page === null || page.isDestroyed() || sender !== page || senderFrame === null) return false;
  return senderFrame.frameToken === page.mainFrame.frameToken && isPageAddress(senderFrame.url);
}
