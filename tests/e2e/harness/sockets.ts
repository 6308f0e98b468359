import { readFile } from 'node:fs/promises';
import { openFiles, processTree } from './processes.ts';

const tables = ['tcp', 'tcp6', 'udp', 'udp6'] as const;

/**
 * The network sockets that a process and its children hold, without those of the debugging port the run itself drives them
 * through (Linux): one line each, "tcp 0100007F:1F90 -> ...".
 */
export async function networkSockets(root: number, debuggingPort: number): Promise<readonly string[]> {
  const inodes = new Set<string>();
  for (const id of await processTree(root)) {
    for (const file of await openFiles(id)) {
      const inode = /^socket:\[(\d+)\]$/.exec(file)?.[1];
      if (inode !== undefined) inodes.add(inode);
    }
  }
  const found: string[] = [];
  for (const table of tables) {
    const text = await readFile(`/proc/net/${table}`, 'utf8').catch(() => '');
    for (const line of text.split('\n').slice(1)) {
      const [, local = '', remote = '', , , , , , , inode = ''] = line.trim().split(/\s+/);
      if (!inodes.has(inode)) continue;
      if (Number.parseInt(local.split(':')[1] ?? '', 16) === debuggingPort) continue;
      found.push(`${table} ${local} -> ${remote}`);
    }
  }
  return found;
}
