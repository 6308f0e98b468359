import path from 'node:path';
import type { Machine } from './runtimeArguments.ts';

/**
 * What to do when the runtime ended because its sandbox can't start: Linux systems that keep user namespaces from
 * ordinary programs need the runtime's own helper to belong to root.
 *
 * @param signal the signal that ended the runtime, null when it ended otherwise
 * @returns one sentence, or null when the end was of another kind
 */
export function sandboxTrouble(machine: Machine, executable: string, signal: string | null): string | null {
  if (machine.platform !== 'linux' || machine.userId === 0 || signal !== 'SIGTRAP') return null;
  const helper = path.join(path.dirname(executable), 'chrome-sandbox');
  return (
    'The window could not start, probably because this system does not let its sandbox use user namespaces; nothing was changed. Allow it once with: ' +
    `sudo chown root:root "${helper}" && sudo chmod 4755 "${helper}"`
  );
}
