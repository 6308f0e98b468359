import { utilityProcess } from 'electron';
import type { BackendProcess } from './backendProcess.ts';

/** Starts the backend as a utility process of the runtime, whose own Node is new enough. */
export function startUtilityBackend(bundle: string): BackendProcess {
  const child = utilityProcess.fork(bundle, [], { serviceName: 'Rackside library', stdio: 'inherit' });
  return {
    post: (message) => child.postMessage(message),
    onMessage: (listener) => void child.on('message', listener),
    onExit: (listener) => void child.once('exit', () => listener()),
    kill: () => void child.kill(),
  };
}
