import { statfsSync } from 'node:fs';

const memory = '/dev/shm';
const leastBytes = 6 * 2 ** 30;

/**
 * The environment in which temporary folders lie in memory, where the system has a file system for that and room in it: the
 * tests write thousands of acts, each of which waits for the disk. Empty where there is none, or a person chose a folder.
 */
export function memoryEnvironment(): { TMPDIR?: string } {
  if (process.env.TMPDIR !== undefined || process.platform !== 'linux') return {};
  try {
    const { bavail, bsize } = statfsSync(memory);
    return bavail * bsize >= leastBytes ? { TMPDIR: memory } : {};
  } catch {
    return {};
  }
}
