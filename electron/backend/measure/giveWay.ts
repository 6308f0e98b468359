import { readlinkSync } from 'node:fs';
import os from 'node:os';
import path from 'node:path';
import { execa } from 'execa';

/** Whom measuring gives way to: whoever works at the window meanwhile, or nobody in particular. */
export type Courtesy = 'window' | 'nobody';

/**
 * Lowers the priority of the calling thread, and of the threads and programs it starts from then on. Beside a window it takes
 * only time that nobody else wants: at any other priority each of the many hand-overs from a key to a painted frame may wait for
 * it some milliseconds. Only Linux takes a priority for one thread; elsewhere it would slow the requests as well.
 */
export async function giveWay(to: Courtesy): Promise<void> {
  if (process.platform !== 'linux') return;
  try {
    const { PRIORITY_LOW, PRIORITY_BELOW_NORMAL } = os.constants.priority;
    os.setPriority(0, to === 'window' ? PRIORITY_LOW : PRIORITY_BELOW_NORMAL);
  } catch {
    // Some machines forbid it; the work is the same.
  }
  if (to === 'window') await execa('chrt', ['--idle', '--pid', '0', ownThread()], { reject: false });
}

/** The system's number of the calling thread. */
const ownThread = (): string => path.basename(readlinkSync('/proc/thread-self'));
