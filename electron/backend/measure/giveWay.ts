import { readlinkSync } from 'node:fs';
import os from 'node:os';
import path from 'node:path';
import { execa } from 'execa';

/** Whom measuring gives way to: whoever works at the window meanwhile, or nobody in particular. */
export type Courtesy = 'window' | 'nobody';

/**
 * Lowers the priority of the calling thread, and of the threads and programs it starts from then on. Only Linux takes a
 * priority for one thread; elsewhere it would slow the requests as well.
 */
export function lowerPriority(): void {
  if (process.platform !== 'linux') return;
  try {
    os.setPriority(0, os.constants.priority.PRIORITY_BELOW_NORMAL);
  } catch {
    // Some machines forbid it; the work is the same.
  }
}

/**
 * Has the calling thread run only in time that nobody else wants. At any other priority each of the many hand-overs from a key
 * to a painted frame may wait for it some milliseconds. Without rights there is no way back: the thread has to be replaced.
 */
export async function takeIdleTimeOnly(): Promise<void> {
  if (process.platform !== 'linux') return;
  const thread = path.basename(readlinkSync('/proc/thread-self'));
  await execa('chrt', ['--idle', '--pid', '0', thread], { reject: false });
}
