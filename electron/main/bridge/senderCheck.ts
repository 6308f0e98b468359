import { isOwnAddress } from '../page/ownAddress.ts';

/** What a message from the page says about its sender. */
export type Sender = {
  readonly sender: { readonly id: number };
  readonly senderFrame: { readonly url: string; readonly parent: unknown } | null;
};

/**
 * Whether a message comes from the page itself: the known window, its main frame, an address of the app. A frame that
 * is gone, or has no address yet, is refused.
 */
export function isFromPage(message: Sender, windowContentsId: number | null): boolean {
  const frame = message.senderFrame;
  if (frame === null || frame === undefined || message.sender.id !== windowContentsId) return false;
  return frame.parent === null && isOwnAddress(frame.url);
}
