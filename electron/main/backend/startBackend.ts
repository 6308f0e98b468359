import { utilityProcess } from 'electron';
import type { Log } from '../../backend/log/log.ts';
import type { BackendSettings } from '../../contract/backend.ts';
import type { BackendPlace } from './backendPlace.ts';
import { type BackendProcess, backendHostFor, forkBackend } from './backendProcess.ts';
import { hostBackend } from './hostedBackend.ts';

type LibraryPlace = Pick<BackendSettings, 'libraryFolder' | 'library'>;

/** Starts the backend on a library and keeps it running. */
export function startBackend(
  { appFolder, bundle, node }: BackendPlace,
  { libraryFolder, library }: LibraryPlace,
  log: Log,
) {
  const start = (): BackendProcess =>
    backendHostFor(process.versions.napi) === 'utility' ? startUtilityBackend(bundle) : forkBackend(bundle, node);
  return hostBackend({
    start,
    settings: { libraryFolder, appFolder, ...(library !== undefined && { library }) },
    log,
    after: (delayMs, run) => {
      const timer = setTimeout(run, delayMs);
      return () => clearTimeout(timer);
    },
    nowMs: () => performance.now(),
  });
}

/** Starts the backend as a utility process of the runtime, whose own Node is new enough. */
function startUtilityBackend(bundle: string): BackendProcess {
  const child = utilityProcess.fork(bundle, [], { serviceName: 'Rackside library', stdio: 'inherit' });
  return {
    post: (message) => child.postMessage(message),
    onMessage: (listener) => void child.on('message', listener),
    onExit: (listener) => void child.once('exit', () => listener()),
    kill: () => void child.kill(),
  };
}
