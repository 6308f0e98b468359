import type { Log } from '../../backend/log/log.ts';
import type { Backend, BackendSettings } from '../../contract/backend.ts';
import { childProtocolVersion } from '../../contract/childMessages.ts';
import type { AnyEvent } from '../../contract/events.ts';
import type { Reply } from '../../contract/reply.ts';
import type { Params, RequestName, Result } from '../../contract/requests.ts';
import type { BackendProcess } from './backendProcess.ts';
import { createPendingCalls, readFromChild } from './childCalls.ts';

/** Waits before the first, second, ... restart; after the last one the backend stays down. */
export const restartDelaysMs = [250, 500, 1000, 2000, 4000] as const;
/** A backend that stays up this long gets all its restarts back. */
const soundMs = 60_000;
const closeMs = 5000;
/** Even one that was killed may not end: the system holds it while a disk does not answer. */
const killedMs = 2000;

export type HostedBackendOptions = {
  readonly start: () => BackendProcess;
  readonly settings: BackendSettings;
  /** Is told when the backend stops. */
  readonly log: Log;
  /** Calls back after a time; the returned function prevents that. */
  readonly after: (delayMs: number, run: () => void) => () => void;
  /** A clock that only runs forward, in milliseconds. */
  readonly nowMs: () => number;
};

const gone = (id: 'closing' | 'stoppedOnce' | 'keepsStopping'): Reply<never> => ({
  ok: false,
  problem: { code: 'backend-gone', message: { id, values: {} } },
});

/**
 * The backend in a process of its own. Questions wait until it is ready and are answered `backend-gone` when it dies; then it
 * is started again, up to five times, after a longer wait each time. It is never restarted while closing.
 */
export function hostBackend(options: HostedBackendOptions): Backend {
  const listeners = new Set<(event: AnyEvent) => void>();
  const calls = createPendingCalls();
  let child: BackendProcess | null = null;
  let startedAtMs = 0;
  let restarts = 0;
  let state: 'starting' | 'ready' | 'down' | 'closing' = 'starting';
  let closing: Promise<void> | null = null;
  let stopWaiting: () => void = () => {};

  const tell = (event: AnyEvent): void => {
    for (const listener of listeners) listener(event);
  };

  const start = (): void => {
    state = 'starting';
    startedAtMs = options.nowMs();
    const started = options.start();
    child = started;
    started.onMessage((message) => {
      if (child === started) receive(message);
    });
    started.onExit(() => {
      if (child === started) died();
    });
    started.post({ kind: 'open', settings: options.settings });
  };

  const receive = (raw: unknown): void => {
    const message = readFromChild(raw);
    switch (message?.kind) {
      case 'ready':
        isReady(message.version);
        break;
      case 'reply':
        calls.answer(message.id, message.reply);
        break;
      case 'event':
        tell(message.event);
        break;
    }
  };

  const isReady = (version: number): void => {
    if (version !== childProtocolVersion) {
      options.log.error('backend of another version', { version, wanted: childProtocolVersion });
      child?.kill();
    }
    if (version !== childProtocolVersion || state === 'closing') return;
    state = 'ready';
    calls.sendWaiting((call) => child?.post(call));
    if (restarts > 0) tell({ name: 'backendRestarted', data: {} });
  };

  const died = (): void => {
    child = null;
    calls.answerSent(gone(state === 'closing' ? 'closing' : 'stoppedOnce'));
    if (state === 'closing') return;
    if (options.nowMs() - startedAtMs > soundMs) restarts = 0;
    const delayMs = restartDelaysMs[restarts];
    if (delayMs === undefined) {
      options.log.error('backend stopped and stays down', { restarts });
      state = 'down';
      calls.answerAll(gone('keepsStopping'));
      return;
    }
    restarts += 1;
    options.log.warn('backend stopped and is started again', { restart: restarts, delayMs });
    state = 'starting';
    stopWaiting = options.after(delayMs, start);
  };

  const close = (): Promise<void> =>
    new Promise((resolve) => {
      state = 'closing';
      stopWaiting();
      calls.answerWaiting(gone('closing'));
      const last = child;
      if (last === null) return resolve();
      let stopClock = options.after(closeMs, () => {
        stopClock = options.after(killedMs, resolve);
        last.kill();
      });
      last.onExit(() => {
        stopClock();
        resolve();
      });
      last.post({ kind: 'close' });
    });

  start();
  return {
    ask: <N extends RequestName>(name: N, params: Params<N>) => {
      if (state === 'closing') return Promise.resolve(gone('closing'));
      if (state === 'down') return Promise.resolve(gone('keepsStopping'));
      // The reply's shape is the backend's promise: it checks its own results against the same table.
      return calls.add(name, params, state === 'ready' ? (call) => child?.post(call) : null) as Promise<
        Reply<Result<N>>
      >;
    },
    onEvent: (listener) => {
      listeners.add(listener);
      return () => {
        listeners.delete(listener);
      };
    },
    close: () => {
      closing ??= close();
      return closing;
    },
  };
}
