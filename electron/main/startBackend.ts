import path from 'node:path';
import type { BackendSettings } from '../contract/backend.ts';
import { backendHostFor } from './backend/backendHost.ts';
import type { BackendProcess } from './backend/backendProcess.ts';
import { forkBackend } from './backend/forkedProcess.ts';
import { hostBackend } from './backend/hostedBackend.ts';
import { startUtilityBackend } from './backend/utilityBackend.ts';

/** Starts the backend and keeps it running. */
export function startBackend(settings: BackendSettings) {
  const bundle = path.join(settings.appFolder, 'dist', 'backend.mjs');
  const node = process.env.RACKSIDE_NODE ?? path.join(settings.appFolder, 'node_modules', '.bin', 'node');
  const start = (): BackendProcess =>
    backendHostFor(process.versions.napi) === 'utility' ? startUtilityBackend(bundle) : forkBackend(bundle, node);
  return hostBackend({
    start,
    settings,
    after: (delayMs, act) => {
      const timer = setTimeout(act, delayMs);
      return () => clearTimeout(timer);
    },
    nowMs: () => performance.now(),
  });
}
