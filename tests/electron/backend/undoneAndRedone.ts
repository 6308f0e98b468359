import { expect } from 'vitest';
import type { Backend } from '../../../electron/contract/backend.ts';
import { ask, dump } from './workbench.ts';

type Opened = { readonly backend: Backend; readonly folder: string; readonly sessionId: string };

/** Takes every act back and does it again: the library is in each of its former states again, all of it. */
export async function undoneAndRedone(
  { backend, folder, sessionId }: Opened,
  states: readonly string[],
): Promise<void> {
  for (const state of states.slice(0, -1).reverse()) {
    await ask(backend, 'history.undo', { sessionId });
    expect(dump(folder)).toBe(state);
  }
  for (const state of states.slice(1)) {
    await ask(backend, 'history.redo', { sessionId });
    expect(dump(folder)).toBe(state);
  }
}
