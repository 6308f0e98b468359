import { mkdtempSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import path from 'node:path';
import { openBackend } from '../../electron/backend/backend.ts';
import type { Backend } from '../../electron/contract/backend.ts';
import type { Params, RequestName, Result } from '../../electron/contract/requests.ts';
import { rootFolder } from '../../electron/launch/folders.ts';
import { type Figure, median, timed } from './bench.ts';
import { writeLargeLibrary } from './largeLibrary.ts';

const small = 10;
const large = 5000;
const actRounds = 40;
/** Reads are quick: many of them, so that what else the machine does weighs little. */
const readRounds = 300;

async function ask<N extends RequestName>(backend: Backend, name: N, params: Params<N>): Promise<Result<N>> {
  const reply = await backend.ask(name, params);
  if (!reply.ok) throw new Error(JSON.stringify(reply.problem));
  return reply.value;
}

/** An act as the window makes one: the act, then the session read again. */
async function actAndRead(backend: Backend): Promise<void> {
  const flag = { criterion: 'depth', severity: 'prefer', reps: 'set', frame: 12 } as const;
  await ask(backend, 'flags.add', { clipId: 's0c1', ...flag });
  await ask(backend, 'review.get', { sessionId: 's0' });
}

/** What the window asks when the desk opens. */
async function openDesk(backend: Backend): Promise<void> {
  await Promise.all([
    ask(backend, 'desk.sessions', { list: 'due' }),
    ask(backend, 'desk.sessions', { list: 'done' }),
    ask(backend, 'night.left', {}),
    ask(backend, 'desk.sessions', { list: 'secondLooks' }),
    ask(backend, 'desk.trainees', {}),
  ]);
}

/** What the same work costs in a library of 5,000 sessions against one of 10; both in turn, so that both have the same weather. */
export async function growth(): Promise<Figure[]> {
  const folder = mkdtempSync(path.join(tmpdir(), 'rackside-bench-'));
  const folders = [small, large].map((sessions) => path.join(folder, String(sessions)));
  writeLargeLibrary(folders[0] ?? '', small);
  writeLargeLibrary(folders[1] ?? '', large);
  const backends = folders.map((libraryFolder) => openBackend({ libraryFolder, appFolder: rootFolder }));
  const ratio = async (
    rounds: number,
    work: (backend: Backend) => Promise<void>,
    after?: (backend: Backend) => Promise<unknown>,
  ) => {
    const times: [number[], number[]] = [[], []];
    for (let round = 0; round < rounds; round += 1) {
      for (const [place, backend] of backends.entries()) {
        const took = await timed(() => work(backend));
        // The first rounds fill caches of both.
        if (round >= 5) times[place]?.push(took);
        await after?.(backend);
      }
    }
    return median(times[1]) / median(times[0]);
  };
  try {
    const undo = (backend: Backend) => ask(backend, 'history.undo', { sessionId: 's0' });
    const history = async (backend: Backend) => void (await ask(backend, 'trainees.history', { traineeId: 't0' }));
    const beside = `in a library of ${large.toLocaleString('en')} sessions / in one of ${small}`;
    return [
      { what: `an act's round trip ${beside}`, ratio: await ratio(actRounds, actAndRead, undo), goal: 1.3 },
      { what: `opening the desk, a page at a time, ${beside}`, ratio: await ratio(readRounds, openDesk), goal: 3 },
      {
        what: `the history of a trainee with 10 sessions ${beside}`,
        ratio: await ratio(actRounds, history),
        goal: 1.3,
      },
    ];
  } finally {
    await Promise.all(backends.map((backend) => backend.close()));
    rmSync(folder, { recursive: true });
  }
}
