import { spawn, spawnSync } from 'node:child_process';
import { once } from 'node:events';
import { readFileSync } from 'node:fs';
import path from 'node:path';
import { rootFolder } from '../../electron/launch/folders.ts';
import { findRuntime } from '../../electron/launch/runtime.ts';
import { type Figure, NotHere, type Proof } from './harness/proof.ts';

/** Every call that could open a way to another machine is followed while the main job is done. */
export const noPacket: Proof = {
  name: 'no packet',
  run: async ({ long, folder, progress }) => {
    if (spawnSync('strace', ['-V']).status !== 0) throw new NotHere('strace is not installed');
    const guard = path.join(rootFolder, 'electron/launch/guard.mjs');
    const short = ['grade', path.join(rootFolder, 'seeds/example-session.json')];
    const command = long ? ['demo', '--out', path.join(folder, 'demo')] : short;
    const ran = await follow('node', [guard, '../cli/main.ts', ...command], path.join(folder, 'command'));
    progress(1, long ? 2 : 1);
    const figures = [
      figureOf(
        long ? 'the demo by command: import, measure, grade, letter, handover' : 'a session graded by command',
        ran,
      ),
    ];
    if (!long) return figures;
    const { executable } = await findRuntime();
    // Where nobody names the runtime, what starts the window looks for Electron's own on the network.
    const named = { ELECTRON_OVERRIDE_DIST_PATH: path.dirname(executable) };
    const run = [guard, '../../tests/e2e/run.ts', 'flow'];
    const shown = await follow('node', run, path.join(folder, 'window'), named);
    progress(2, 2);
    return [
      ...figures,
      figureOf('the main job in the window, with the run that drives it by the debugging port', shown),
    ];
  },
};

type Followed = { readonly code: number; readonly calls: readonly string[] };

async function follow(
  program: string,
  given: readonly string[],
  trace: string,
  environment: Readonly<Record<string, string>> = {},
): Promise<Followed> {
  const executable = program === 'node' ? process.execPath : program;
  const options = [
    '-f',
    '-qq',
    // Tells of each socket what it is and where it leads.
    '-yy',
    '--seccomp-bpf',
    '-e',
    'trace=socket,connect,sendto,sendmsg,sendmmsg,bind',
    '-e',
    'signal=none',
    '-o',
    trace,
  ];
  const child = spawn('strace', [...options, executable, ...given], {
    stdio: ['ignore', 'ignore', 'inherit'],
    cwd: rootFolder,
    env: { ...process.env, ...environment },
  });
  const [code] = await once(child, 'exit');
  return {
    code: Number(code),
    calls: readFileSync(trace, 'utf8')
      .split('\n')
      .filter((line) => line !== ''),
  };
}

/** Addresses of this machine itself: what a run drives the window by, and what never leaves it. */
const isInside = (call: string): boolean =>
  /inet_addr\("127\.|sin6?_addr[^)]*"(127\.|::1)|"::1"|inet_pton\(AF_INET6, "::(1|ffff:127\.[\d.]+)"|inet_addr\("0\.0\.0\.0"\)/.test(
    call,
  );

/** Gives a datagram socket an address, which sends nothing: Chromium asks the system so whether a way leads out. */
const asksTheWay = (call: string): boolean => /\bconnect\(\d+<UDP/.test(call);

const addressee = /\bsend(?:to|msg|mmsg)\(\d+<(?:TCP|UDP)(?:v6)?:\[.*?->(\[[^\]]*\]|[\d.]+):\d+\]>/;

/** Sends on a socket that leads to another machine. */
function sendsOut(call: string): boolean {
  const to = addressee.exec(call)?.[1];
  return to !== undefined && !/^(127\.|\[::1\]|\[::ffff:127\.)/.test(to);
}

function figureOf(what: string, { code, calls }: Followed): Figure {
  const addressed = calls.filter((call) => /sa_family=AF_INET6?\b/.test(call));
  const elsewhere = addressed.filter((call) => !isInside(call));
  const asked = elsewhere.filter(asksTheWay).length;
  const outside = [...elsewhere.filter((call) => !asksTheWay(call)), ...calls.filter(sendsOut)];
  const sockets = calls.filter((call) => /\bsocket\(AF_(INET6?|PACKET)\b/.test(call)).length;
  const failed = code === 0 ? [] : [`it ended with ${code}`];
  return {
    what,
    tried: 1,
    found: `${calls.length} calls on sockets of any kind; ${sockets} network sockets made, ${addressed.length - elsewhere.length} calls to addresses of this machine, ${outside.length} to others${asked === 0 ? '' : `; asked the system whether a way leads out, without a packet: ${asked}`}`,
    wrong: [...outside, ...failed],
  };
}
