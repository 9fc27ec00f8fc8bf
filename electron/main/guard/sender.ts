import { isPageAddress } from '../scheme.ts';

/** What is looked at of a message's sender; of Electron's `IpcMainEvent` and `IpcMainInvokeEvent`. */
export interface Sent {
  readonly sender: unknown;
  /** Null where the frame has gone or gone elsewhere since. */
  readonly senderFrame: { readonly url: string } | null;
}

/** The window's page, as Electron's `WebContents`. */
export interface Page {
  readonly mainFrame: { readonly url: string };
  isDestroyed(): boolean;
}

/** Whether a message comes from the page of our window: its main frame, at our own address. */
export function isFromPage({ sender, senderFrame }: Sent, page: Page | null): boolean {
  return page !== null && !page.isDestroyed() && sender === page && senderFrame !== null && senderFrame === page.mainFrame && isPageAddress(senderFrame.url);
}
