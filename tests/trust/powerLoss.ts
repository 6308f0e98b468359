import { execFile, spawnSync } from 'node:child_process';
import { cpSync, mkdirSync, readFileSync, renameSync, rmSync } from 'node:fs';
import path from 'node:path';
import { promisify } from 'node:util';
import { openBackend } from '../../electron/backend/backend.ts';
import { rootFolder } from '../../electron/launch/folders.ts';
import { sayProblem } from '../../engine/wording/sayProblem.ts';
import { ask } from './harness/ask.ts';
import { NotHere, type Order, type Proof } from './harness/proof.ts';
import { brokenHandover } from './kills/longWork.ts';
import { Disk, endsOf, type Spared } from './powerLoss/disk.ts';
import { followed, type Operation, operationsOf } from './powerLoss/trace.ts';
import type { Acknowledged, WorkOrder } from './powerLoss/workOrder.ts';

/** A real run is followed call by call; then the disk is laid out as a power cut at a moment of it could have left it. */
export const powerLoss: Proof = {
  name: 'power loss',
  run: async (order) => {
    const { long, random, progress, isOver, folder } = order;
    const places = {
      root: path.join(folder, 'root'),
      before: path.join(folder, 'before'),
      after: path.join(folder, 'after'),
    };
    const work = await prepared(order, places.root, long ? 60 : 12);
    cpSync(places.root, places.before, { recursive: true });
    const operations = await followedRun(work, path.join(folder, 'trace'));
    renameSync(places.root, places.after);

    const disk = new Disk(places, endsOf(operations, places.root, places.before));
    const moments = momentsOf(operations, work.notebook);
    const share = Math.min(1, (long ? 400 : 20) / moments.length);
    const acknowledged: Acknowledged[] = [];
    const wrong: string[] = [];
    let [tried, most] = [0, 0];
    for (const [index, operation] of operations.entries()) {
      if (isOver()) break;
      disk.do(operation);
      if (isOf(operation, work.notebook)) acknowledged.push(JSON.parse(operation.bytes.toString('utf8')));
      // Those of the end, where files come, are few: all of them are tried.
      if (!moments.includes(index) || random.share() > share) continue;
      for (const spared of ['nothing', 'some'] as const satisfies readonly Spared[]) {
        rmSync(places.root, { recursive: true, force: true });
        disk.leave(places.root, spared, random);
        const lost = await lostIn(work, acknowledged);
        wrong.push(...lost.map((what) => `at call ${index}, ${spared} spared: ${what}`));
        tried += 1;
      }
      most = Math.max(most, acknowledged.length);
      progress(index, operations.length);
    }
    const syncs = operations.filter((each) => each.do === 'sync').length;
    return [
      {
        what: 'the power cut at a moment of a run; what was not synced is lost, or torn and out of order',
        tried,
        found: `of up to ${most} acknowledged acts, imports and handovers none is lost; ${operations.length} writes and names followed, ${syncs} syncs`,
        wrong,
      },
    ];
  },
};

async function prepared({ seedLibrary }: Order, root: string, acts: number): Promise<WorkOrder> {
  if (spawnSync('strace', ['-V']).status !== 0) throw new NotHere('strace is not installed');
  const seed = await seedLibrary();
  const [library, out] = [path.join(root, 'library'), path.join(root, 'out')];
  mkdirSync(out, { recursive: true });
  cpSync(seed.folder, library, { recursive: true });
  const { sessionId, clipId, emptySessionId, emptyEntryId, film } = seed;
  return { library, out, acts, notebook: `${root}-notebook`, sessionId, clipId, emptySessionId, emptyEntryId, film };
}

async function followedRun(work: WorkOrder, trace: string): Promise<Operation[]> {
  const script = path.join(import.meta.dirname, 'powerLoss/work.ts');
  const options = [
    '-f',
    '-qq',
    '-y',
    '-s',
    '8000000',
    '--seccomp-bpf',
    '-e',
    `trace=${followed}`,
    '-e',
    'signal=none',
    '-o',
    trace,
  ];
  await promisify(execFile)('strace', [...options, process.execPath, script, JSON.stringify(work)]);
  return operationsOf(readFileSync(trace, 'latin1'));
}

const isOf = (operation: Operation, file: string): operation is Extract<Operation, { do: 'write' }> =>
  operation.do === 'write' && operation.file === file;

/** The moments that matter: before and after something is synced, named or said. */
function momentsOf(operations: readonly Operation[], notebook: string): number[] {
  const turns = operations.flatMap((operation, index) =>
    operation.do === 'sync' || operation.do === 'name' || isOf(operation, notebook) ? [index - 1, index] : [],
  );
  return [...new Set(turns)].filter((index) => index >= 0);
}

/** What was acknowledged and is not there, or is not as it was; a sentence each. */
async function lostIn(work: WorkOrder, acknowledged: readonly Acknowledged[]): Promise<string[]> {
  const backend = openBackend({ libraryFolder: work.library, appFolder: rootFolder });
  try {
    const state = await ask(backend, 'library.state', {});
    if (state.kind !== 'open') return [state.kind === 'none' ? 'no library' : sayProblem(state.message, 'en')];
    const { review } = await ask(backend, 'review.get', { sessionId: work.sessionId });
    const there = new Set(review.entries.flatMap((entry) => entry.flags.map(({ note }) => note)));
    const notes = acknowledged.findLast((each) => each.kind === 'notes');
    const kept = (kind: Acknowledged['kind']): number => acknowledged.filter((each) => each.kind === kind).length;
    const other = await ask(backend, 'review.get', { sessionId: work.emptySessionId });
    const { deliveries } = await ask(backend, 'handover.list', { sessionId: work.sessionId });
    const { findings } = await ask(backend, 'library.verify', {});
    return [
      ...acknowledged.flatMap((each) =>
        each.kind === 'flag' && !there.has(each.note) ? [`“${each.note}” is lost`] : [],
      ),
      ...(notes === undefined || isAtLeast(review.session.notes ?? '', notes.notes)
        ? []
        : [`the notes are “${review.session.notes}”`]),
      ...(kept('import') > 0 && !other.media.some(({ ready }) => ready) ? ['the clip is lost'] : []),
      ...(deliveries.length < kept('handover') ? ['a handover is not recorded'] : []),
      ...deliveries.slice(0, kept('handover')).flatMap(({ path: place }) => brokenHandover(place)),
      ...findings,
    ];
  } finally {
    await backend.close();
  }
}

/** Whether notes are those that were acknowledged, or later ones that were on their way. */
const isAtLeast = (found: string, acknowledged: string): boolean => numberIn(found) >= numberIn(acknowledged);
const numberIn = (notes: string): number => Number(/^After act (\d+)$/.exec(notes)?.[1] ?? -1);
