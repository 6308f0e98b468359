import { type ChildProcess, execFile, spawn } from 'node:child_process';
import { once } from 'node:events';
import net from 'node:net';
import path from 'node:path';
import { promisify } from 'node:util';
import { debuggingEndpoint, type Started } from '../../harness/app.ts';
import { chosenPathsFile } from '../../harness/command.ts';
import { until } from '../../harness/until.ts';
import { asUser, type User } from './user.ts';

const run = promisify(execFile);

export type InstalledStart = {
  /** The program and its arguments, as the menu's entry has them. */
  readonly command: readonly string[];
  readonly user: User;
  readonly environment: NodeJS.ProcessEnv;
  /** For what answers the dialogs; the user may read it. */
  readonly folder: string;
};

/** Runs in the app's network: carries what arrives at a file's socket to the port there. */
const carrier = `const net = require('node:net');
const [file, port] = process.argv.slice(1);
net.createServer((from) => {
  const to = net.connect(Number(port), '127.0.0.1');
  from.pipe(to).pipe(from);
  for (const end of [from, to]) end.on('error', () => { from.destroy(); to.destroy(); });
}).listen(file, () => process.stdout.write('ready'));`;

/**
 * Starts an installed app as an ordinary user on a machine without network, and without Node or anything else on its path. It
 * is driven through a file, since no port of its own can be reached.
 */
export async function startInstalled(start: InstalledStart): Promise<Started> {
  const { command, user, environment, folder } = start;
  const socket = path.join(folder, `${Date.now()}.socket`);
  const outside = net.createServer((from) => {
    const to = net.connect(socket);
    from.pipe(to).pipe(from);
    for (const end of [from, to]) {
      end.on('error', () => {
        from.destroy();
        to.destroy();
      });
    }
  });
  outside.listen(0, '127.0.0.1');
  await once(outside, 'listening');
  const address = outside.address();
  const port = typeof address === 'object' ? address?.port : undefined;

  const words = [...command, `--remote-debugging-port=${port}`, '--force-device-scale-factor=1'];
  const child = spawn(
    'unshare',
    [
      '--net',
      'sh',
      '-c',
      'ip link set lo up; exec "$@"',
      'sh',
      ...asUser(user),
      'env',
      '-i',
      ...variables(start),
      ...words,
    ],
    { env: { ...process.env, ...environment }, stdio: ['ignore', 'ignore', 'pipe'] },
  );
  const ended = new Promise<number | null>((resolve) => {
    child.once('exit', resolve);
  });
  const endpoint = await debuggingEndpoint(child);
  const inside = await carryInside(child, socket, port);
  void ended.then(() => {
    inside.kill();
    outside.close();
  });
  return { child, ended, endpoint };
}

async function carryInside(app: ChildProcess, socket: string, port: number | undefined): Promise<ChildProcess> {
  const network = `--net=/proc/${app.pid}/ns/net`;
  const inside = spawn('nsenter', [network, process.execPath, '-e', carrier, socket, String(port)], {
    stdio: ['ignore', 'pipe', 'inherit'],
  });
  await until('the way into the app’s network', () => inside.stdout.read() !== null);
  return inside;
}

/** What the user's session sets, and how a test chooses files. */
const variables = ({ user, environment, folder }: InstalledStart): readonly string[] => [
  `HOME=${user.home}`,
  `DISPLAY=${environment.DISPLAY ?? process.env.DISPLAY ?? ''}`,
  'PATH=/nowhere',
  'LANG=C.UTF-8',
  'RACKSIDE_TEST=1',
  `RACKSIDE_CHOSEN_PATHS=${chosenPathsFile(folder)}`,
];

/** The names of the network devices that a process has. */
export async function networkDevices(processId: number): Promise<readonly string[]> {
  const { stdout } = await run('nsenter', [`--net=/proc/${processId}/ns/net`, 'ip', '-o', 'link']);
  return stdout.split('\n').flatMap((line) => /^\d+: ([^:@]+)/.exec(line)?.[1] ?? []);
}
