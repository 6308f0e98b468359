import { fork } from 'node:child_process';
import type { BackendProcess } from './backendProcess.ts';

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
