import { type IpcMainInvokeEvent, ipcMain } from 'electron';
import type { Backend } from '../../contract/backend.ts';
import { channels } from '../../contract/bridge.ts';
import type { AnyEvent } from '../../contract/events.ts';
import type { Reply } from '../../contract/reply.ts';
import type { Params, RequestName } from '../../contract/requests.ts';
import type { MicrophoneGate } from '../window/microphone.ts';
import { checkRequest, checkWindowRequest, isFromPage } from './checkRequest.ts';
import type { WindowAnswers } from './windowAnswers.ts';

export type BridgeParts = {
  readonly backend: Backend;
  readonly windowAnswers: WindowAnswers;
  /** Is told of every answer. */
  readonly microphone: Pick<MicrophoneGate, 'follow'>;
  /** The page, while its window is open. */
  readonly page: () => {
    readonly id: number;
    readonly isDestroyed: () => boolean;
    readonly send: (channel: string, event: AnyEvent) => void;
  } | null;
};

const stranger: Reply<never> = {
  ok: false,
  problem: { code: 'bad-request', message: { id: 'strangeQuestion', values: {} } },
};

/**
 * The only place that touches the platform's messages between page and host: checks who asks and what, then passes on.
 */
export function serveBridge({ backend, windowAnswers, microphone, page }: BridgeParts): void {
  const isTrusted = (event: IpcMainInvokeEvent): boolean => isFromPage(event, page()?.id ?? null);

  ipcMain.handle(channels.ask, async (event, name: unknown, params: unknown): Promise<Reply<unknown>> => {
    if (!isTrusted(event)) return stranger;
    const checked = checkRequest(name, params);
    if (!checked.ok) return checked;
    const reply = await backend.ask(checked.value.name, checked.value.params as Params<RequestName>);
    microphone.follow(checked.value.name, reply);
    return reply;
  });

  ipcMain.handle(channels.askWindow, async (event, name: unknown, params: unknown): Promise<Reply<unknown>> => {
    if (!isTrusted(event)) return stranger;
    const checked = checkWindowRequest(name, params);
    if (!checked.ok) return checked;
    return windowAnswers(checked.value.name, checked.value.params);
  });

  backend.onEvent((event) => {
    const open = page();
    if (open !== null && !open.isDestroyed()) open.send(channels.event, event);
  });
}
