import { type ChildProcess, fork } from 'node:child_process';
import { once } from 'node:events';
import path from 'node:path';
import type { FromChild, ToChild } from '../../../electron/contract/childMessages.ts';
import type { Reply } from '../../../electron/contract/reply.ts';
import type { Params, RequestName, Result } from '../../../electron/contract/requests.ts';
import { distFolder, rootFolder } from '../../../electron/launch/folders.ts';
import type { Asked } from './ask.ts';

/** The process was ended before it answered. */
export class Gone extends Error {}

type Pending = { readonly resolve: (reply: Reply<unknown>) => void; readonly reject: (error: Gone) => void };

/** The backend as the window starts it: the built file, in a process of its own. */
export type BackendChild = Asked & {
  /** Resolves when the library is open, or known not to open. Rejects with `Gone`. */
  readonly ready: Promise<void>;
  /** Ends it as `kill -9` does; resolves when it is gone and all that it had answered has arrived. */
  readonly kill: () => Promise<void>;
  readonly close: () => Promise<void>;
};

/** Starts the backend on a library. */
export function startBackend(libraryFolder: string): BackendChild {
  const child = fork(path.join(distFolder, 'backend.mjs'), [], { serialization: 'advanced', stdio: 'ignore' });
  const pending = new Map<number, Pending>();
  const ended = Promise.all([once(child, 'exit'), once(child, 'disconnect')]);
  let next = 0;
  let isGone = false;
  const opened = Promise.withResolvers<void>();
  // Whoever kills it at once does not wait for it.
  opened.promise.catch(() => undefined);
  child.on('message', (raw) => {
    const message = raw as FromChild;
    if (message.kind === 'ready') opened.resolve();
    if (message.kind !== 'reply') return;
    pending.get(message.id)?.resolve(message.reply);
    pending.delete(message.id);
  });
  child.on('error', () => undefined);
  void ended.then(() => {
    isGone = true;
    opened.reject(new Gone());
    for (const { reject } of pending.values()) reject(new Gone());
    pending.clear();
  });
  post(child, { kind: 'open', settings: { libraryFolder, appFolder: rootFolder } });
  return {
    ready: opened.promise,
    ask: <N extends RequestName>(name: N, params: Params<N>) =>
      new Promise<Reply<Result<N>>>((resolve, reject) => {
        if (isGone || !child.connected) return reject(new Gone());
        next += 1;
        pending.set(next, { resolve: resolve as Pending['resolve'], reject });
        post(child, { kind: 'ask', id: next, name, params });
      }),
    kill: async () => {
      child.kill('SIGKILL');
      await ended;
    },
    close: async () => {
      if (child.connected) post(child, { kind: 'close' });
      await ended;
    },
  };
}

function post(child: ChildProcess, message: ToChild): void {
  // It may have been ended meanwhile.
  child.send(message, () => undefined);
}
