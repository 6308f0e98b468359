import * as v from 'valibot';
import type { MessageValues } from '../../../engine/message/message.ts';
import type { Reply } from '../../contract/reply.ts';
import {
  type RequestName,
  requests,
  type ScreenName,
  type WindowRequestName,
  windowRequests,
} from '../../contract/requests.ts';
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

type Checked<N extends string> = Reply<{ readonly name: N; readonly params: unknown }>;

const bad = (id: 'unknownQuestion' | 'faultyQuestion', values: MessageValues = {}): Reply<never> => ({
  ok: false,
  problem: { code: 'bad-request', message: { id, values } },
});

/** Checks a question of the page to the backend: a known name that screens may use, and params of its shape. */
export function checkRequest(name: unknown, params: unknown): Checked<ScreenName> {
  if (!isNameOf(requests, name) || !isForScreens(name)) {
    return bad('unknownQuestion');
  }
  return checkParams(name, requests[name].params, params);
}

/** Checks a question of the page to the window's host. */
export function checkWindowRequest(name: unknown, params: unknown): Checked<WindowRequestName> {
  if (!isNameOf(windowRequests, name)) return bad('unknownQuestion');
  return checkParams(name, windowRequests[name].params, params);
}

function checkParams<N extends string>(name: N, schema: v.GenericSchema, params: unknown): Checked<N> {
  const read = v.safeParse(schema, params);
  if (read.success) return { ok: true, value: { name, params: read.output } };
  const field = v.getDotPath(read.issues[0]) ?? 'params';
  return bad('faultyQuestion', { request: name, field });
}

function isNameOf<T extends object>(table: T, name: unknown): name is keyof T & string {
  return typeof name === 'string' && Object.hasOwn(table, name);
}

const isForScreens = (name: RequestName): name is ScreenName => requests[name].kind !== 'host';
