import type { ChildProcess } from 'node:child_process';
import { endNow, processTree } from '../processes.ts';

/** Ends a browser with every process that it has started. */
export async function endBrowser(child: ChildProcess): Promise<void> {
  for (const id of [...(await processTree(child.pid ?? 0))].reverse()) endNow(id);
}

/** Opens a page in a browser that was just started; where that fails, nothing of the browser stays. */
export async function orEnd<T>(child: ChildProcess, open: () => Promise<T>): Promise<T> {
  try {
    return await open();
  } catch (error) {
    await endBrowser(child);
    throw error;
  }
}
