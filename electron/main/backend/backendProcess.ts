import { fork } from 'node:child_process';
import type { ToChild } from '../../contract/childMessages.ts';

/** A running backend process, however it was started. */
export type BackendProcess = {
  readonly post: (message: ToChild) => void;
  readonly onMessage: (listener: (message: unknown) => void) => void;
  /** Called once, when the process is gone for any reason. */
  readonly onExit: (listener: () => void) => void;
  /** Ends it at once, without asking. */
  readonly kill: () => void;
};

/** The database module needs this version of Node's native interface. */
const neededNodeApi = 10;

/** How to start the backend: inside the runtime where its Node is new enough, else on the Node that npm brought. */
export function backendHostFor(nodeApi: string | undefined): 'utility' | 'fork' {
  return Number(nodeApi ?? 0) >= neededNodeApi ? 'utility' : 'fork';
}

/**
 * Starts the backend on a Node of its own, for a runtime whose own Node is too old for the database module.
 *
 * @param bundle the built backend
 * @param node path of a Node binary of 22.14 or newer
 */
export function forkBackend(bundle: string, node: string): BackendProcess {
  const child = fork(bundle, [], {
    execPath: node,
    execArgv: [],
    serialization: 'advanced',
    stdio: ['ignore', 'inherit', 'inherit', 'ipc'],
  });
  return {
    // A message to a process that has just died is lost; its exit tells.
    post: (message) => void (child.connected && child.send(message, () => {})),
    onMessage: (listener) => void child.on('message', listener),
    onExit: (listener) => {
      child.once('exit', listener);
      child.once('error', () => {
        if (child.pid === undefined) listener();
      });
    },
    kill: () => void child.kill('SIGKILL'),
  };
}
