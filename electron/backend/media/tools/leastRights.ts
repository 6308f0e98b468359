import { open } from 'node:fs/promises';
import { totalmem } from 'node:os';
import path from 'node:path';

/**
 * What a program can reach: the files that its arguments name and nothing else, everything but the network, or all that this
 * user can.
 */
export type Reach = 'own-files' | 'no-network' | 'everything';

/** What may be tried on this system, the least first. The two narrow ones need bubblewrap and util-linux, which may be missing or forbidden. */
export const reaches: readonly Reach[] =
  process.platform === 'linux' ? ['own-files', 'no-network', 'everything'] : ['everything'];

/** A program and the rights it is started with. */
export type Confined = { readonly path: string; readonly reach: Reach; readonly mostMemoryBytes: number };

/** Footage of a phone at its largest takes a third of it. */
export const usualMemoryBytes = Math.min(4 * 1024 ** 3, Math.floor(totalmem() / 2));

/** No core dump, which would hold pictures of people, and so many kilobytes of memory. The last words replace the shell. */
const limited = 'ulimit -c 0; ulimit -d "$1"; shift; exec "$@"';

/** Programs that could not be given their files; they go without that for as long as the process lives. */
const widened = new Set<string>();

/** Whether a run failed for want of what bubblewrap should have given it. */
export const isSandboxComplaint = (stderr: string): boolean => stderr.startsWith('bwrap: ');

/** Lets programs reach all files from now on, still without the network: bubblewrap can't bind every kind of folder. */
export function widen(programs: readonly Confined[]): void {
  for (const program of programs) widened.add(program.path);
}

/** What to start so that a program runs with no more rights than it needs. Files are known by their addresses (`fileAddress`). */
export async function withLeastRights(
  confined: Confined,
  args: readonly string[],
): Promise<{ readonly program: string; readonly args: readonly string[] }> {
  if (process.platform === 'win32') return { program: confined.path, args };
  const before = await sandbox(confined, args);
  const kilobytes = String(Math.floor(confined.mostMemoryBytes / 1024));
  return { program: '/bin/sh', args: ['-c', limited, 'sh', kilobytes, ...before, confined.path, ...args] };
}

async function sandbox({ path: program, reach }: Confined, args: readonly string[]): Promise<readonly string[]> {
  if (reach === 'everything') return [];
  // What encodes in hardware is fed our own pictures, and its drivers need devices that nobody can list.
  const inHardware = args.some((word) => word.startsWith('h264_'));
  if (reach === 'no-network' || inHardware || widened.has(program)) return ['unshare', '--net', '--map-root-user'];
  return [
    ...['bwrap', '--unshare-net', '--unshare-ipc', '--unshare-uts', '--die-with-parent', '--cap-drop', 'ALL'],
    // What comes later lies over what came before, and files may lie in /dev/shm.
    ...systemFolders.flatMap((folder) => ['--ro-bind-try', folder, folder]),
    ...['--dev', '/dev', '--ro-bind', path.dirname(program), path.dirname(program)],
    ...(await filesOf(args)),
    '--',
  ];
}

/** Where systems keep the libraries of a program. */
const systemFolders = [
  ...['/usr', '/bin', '/lib', '/lib64', '/nix/store', '/gnu/store'],
  ...['/etc/alternatives', '/etc/ld.so.cache', '/etc/ld.so.conf', '/etc/ld.so.conf.d'],
];

/** The files that arguments name: those after `-i` are read, all others written, so that they have to be there. */
async function filesOf(args: readonly string[]): Promise<readonly string[]> {
  const words: string[] = [];
  for (const [index, word] of args.entries()) {
    if (!word.startsWith('file:')) continue;
    const file = word.slice('file:'.length);
    if (args[index - 1] === '-i') {
      words.push('--ro-bind-try', file, file);
      continue;
    }
    await (await open(file, 'a')).close();
    words.push('--bind', file, file);
  }
  return words;
}
