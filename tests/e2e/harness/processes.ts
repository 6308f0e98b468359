import { readdir, readFile, readlink } from 'node:fs/promises';

/** All processes, by id (Linux). */
export async function processIds(): Promise<readonly number[]> {
  return (await readdir('/proc')).filter((name) => /^\d+$/.test(name)).map(Number);
}

/** All processes below one, itself included, by id (Linux). */
export async function processTree(root: number): Promise<readonly number[]> {
  const parents = new Map<number, number>();
  for (const id of await processIds()) {
    const stat = await readFile(`/proc/${id}/stat`, 'utf8').catch(() => '');
    const parent = /^\d+ \(.*\) \S (\d+)/s.exec(stat)?.[1];
    if (parent !== undefined) parents.set(id, Number(parent));
  }
  const tree = new Set([root]);
  for (let before = 0; before !== tree.size; ) {
    before = tree.size;
    for (const [id, parent] of parents) if (tree.has(parent)) tree.add(id);
  }
  return [...tree];
}

/** The command line of a process, '' when it is gone. */
export async function commandLine(id: number): Promise<string> {
  return (await readFile(`/proc/${id}/cmdline`, 'utf8').catch(() => '')).replaceAll('\0', ' ');
}

/** What a process has open: paths, `socket:[inode]`, ... */
export async function openFiles(id: number): Promise<readonly string[]> {
  const names = await readdir(`/proc/${id}/fd`).catch(() => []);
  return Promise.all(names.map((name) => readlink(`/proc/${id}/fd/${name}`).catch(() => '')));
}

/** Whether a process still runs; one that has ended and waits to be collected does not. */
export async function isAlive(id: number): Promise<boolean> {
  const stat = await readFile(`/proc/${id}/stat`, 'utf8').catch(() => '');
  return stat !== '' && !/^\d+ \(.*\) Z/s.test(stat);
}

/** Whether a process may only make the system calls that a filter lets through (Linux). */
export async function hasCallFilter(id: number): Promise<boolean> {
  // `Seccomp: 2` is filter mode (the manual page proc_pid_status(5)).
  return /^Seccomp:\s+2$/m.test(await readFile(`/proc/${id}/status`, 'utf8').catch(() => ''));
}

/** Ends a process at once; nothing happens when it is gone already. */
export function endNow(id: number): void {
  try {
    process.kill(id, 'SIGKILL');
  } catch {
    // It ended on its own meanwhile.
  }
}
