import { execFile, spawn, spawnSync } from 'node:child_process';
import { cpSync, mkdirSync, rmSync } from 'node:fs';
import path from 'node:path';
import { createInterface } from 'node:readline';
import { promisify } from 'node:util';
import { lostAfter, type Strained } from './fullDisk/strained.ts';
import type { Round, StrainOrder } from './fullDisk/strainOrder.ts';
import { type Figure, NotHere, type Order, type Proof } from './harness/proof.ts';

const script = path.join(import.meta.dirname, 'fullDisk/work.ts');

/** A disk that is full, or fails, at any write: it is said, and nothing is lost that was not said to be refused. */
export const fullDisk: Proof = {
  name: 'full disk',
  run: async (order) => {
    const { sessionId, clipId, emptySessionId, emptyEntryId, film, folder: seed } = await order.seedLibrary();
    const disk = path.join(order.folder, 'disk');
    mkdirSync(disk);
    const [library, out] = [path.join(disk, 'library'), path.join(disk, 'out')];
    const strain = { library, out, seed, sessionId, clipId, emptySessionId, emptyEntryId, film, free: null };
    const full = await fullAtEveryPage(strain, order);
    return order.long ? [full, await failsAtEveryWrite(strain, order)] : [full];
  },
};

/** Numbers of free pages: every one where acts are refused, then so many that imports and handovers are. */
function freePages(long: boolean): number[] {
  if (!long) return [0, 3, 20, 200, 400];
  const acts = Array.from({ length: 120 }, (_, index) => index);
  return [...acts, ...Array.from({ length: 40 }, (_, index) => 120 + index * 20)];
}

async function fullAtEveryPage(strain: StrainOrder, { long, progress, isOver }: Order): Promise<Figure> {
  const isRoot = process.getuid?.() === 0;
  const apart = isRoot ? ['-m'] : ['-r', '-m'];
  if (spawnSync('unshare', [...apart, 'mount', '-t', 'tmpfs', 'tmpfs', path.dirname(strain.library)]).status !== 0) {
    throw new NotHere('no disk of its own can be mounted');
  }
  const free = freePages(long);
  const child = spawn('unshare', [...apart, process.execPath, script, JSON.stringify({ ...strain, free })], {
    stdio: ['ignore', 'pipe', 'ignore'],
  });
  const rounds: Round[] = [];
  for await (const line of createInterface({ input: child.stdout })) {
    rounds.push(JSON.parse(line));
    progress(rounds.length, free.length);
    if (isOver()) child.kill();
  }
  const sum = (count: (round: Round) => number): number => rounds.reduce((all, round) => all + count(round), 0);
  const broken =
    rounds.length < free.length && !isOver() ? [`it broke off after ${rounds.length} of ${free.length}`] : [];
  return {
    what: `the disk full after 0 to ${Math.max(...rounds.map((round) => round.free ?? 0))} more pages of 4 KB`,
    tried: rounds.length,
    found: `${sum(({ acknowledged }) => acknowledged)} acts, imports and handovers acknowledged and there, ${sum(({ refused }) => refused)} refused in a sentence and not there`,
    wrong: [
      ...rounds.flatMap(({ free: pages, wrong }) => wrong.map((each) => `${pages} pages free: ${each}`)),
      ...broken,
    ],
  };
}

/** Calls fail from the n-th on, as those of a dying disk do. */
async function failsAtEveryWrite(strain: StrainOrder, { folder, progress, isOver }: Order): Promise<Figure> {
  if (spawnSync('strace', ['-V']).status !== 0) throw new NotHere('strace is not installed');
  const calls = ['pwrite64:error=EIO', 'pwrite64:error=ENOSPC', 'fdatasync:error=EIO', 'ftruncate:error=EIO'];
  const most = 60;
  const wrong: string[] = [];
  let [tried, acknowledged, refused] = [0, 0, 0];
  for (; tried < most && !isOver(); tried += 1) {
    const when = 1 + Math.floor(tried / calls.length) * 3;
    const call = `${calls[tried % calls.length]}:when=${when}${tried % 8 < 4 ? '+' : ''}`;
    rmSync(path.dirname(strain.library), { recursive: true, force: true });
    mkdirSync(strain.out, { recursive: true });
    cpSync(strain.seed, strain.library, { recursive: true });
    const paths = ['', '-wal', '-shm'].flatMap((ending) => [
      '-P',
      `${path.join(strain.library, 'rackside.sqlite')}${ending}`,
    ]);
    const options = ['-f', '-qqq', '-o', path.join(folder, 'faults'), ...paths, '-e', `inject=${call}`];
    const { stdout } = await promisify(execFile)('strace', [
      ...options,
      process.execPath,
      script,
      JSON.stringify(strain),
    ]);
    const strained: Strained = JSON.parse(stdout);
    acknowledged += strained.flags.length + Number(strained.imported) + Number(strained.handedOver);
    refused += strained.refused;
    wrong.push(...[...strained.wrong, ...(await lostAfter(strain, strained))].map((each) => `${call}: ${each}`));
    progress(tried + 1, most);
  }
  return {
    what: 'the database’s write, sync or cut fails from the n-th on, or once',
    tried,
    found: `${acknowledged} acts, imports and handovers acknowledged and there, ${refused} refused in a sentence`,
    wrong,
  };
}
