import { expect, it, onTestFinished } from 'vitest';
import { JobQueue, type JobTools } from '../../../../electron/backend/jobs/queue.ts';
import { runScript } from '../../../../electron/backend/store/connection.ts';
import { type JobRow, listJobs } from '../../../../electron/backend/store/jobs.ts';
import { createLibrary, openLibrary } from '../../../../electron/backend/store/library.ts';
import { messageOfText } from '../../../../electron/backend/store/storedMessage.ts';
import type { Job } from '../../../../electron/contract/jobs.ts';
import { ProblemError } from '../../../../electron/contract/reply.ts';
import type { Message } from '../../../../engine/message/message.ts';
import { sayJob, step } from '../../../../engine/wording/sayJob.ts';
import { appFolder, temporaryFolder } from '../workbench.ts';

const nameOf = (title: Message): string => sayJob(title, 'en');

type Call = { readonly job: JobRow; readonly tools: JobTools; readonly end: () => void };

/** A queue whose jobs run until the test ends them, or until they are told to stop. */
function queueOn(folder: string, nowMs = () => 0) {
  const library = openLibrary(folder, appFolder) ?? createLibrary(folder, appFolder, { voice: 'coach', coach: '' });
  const started: Call[] = [];
  let wake = () => {};
  const changed = () => wake();
  const run = (job: JobRow, tools: JobTools) =>
    new Promise<void>((resolve, reject) => {
      started.push({ job, tools, end: resolve });
      tools.signal.addEventListener('abort', () => reject(new ProblemError('cancelled', 'cancelled')));
      changed();
    });
  const queue = new JobQueue({ library: () => library, emit: changed, run, nowMs });
  const until = async (meets: () => boolean) => {
    while (!meets()) {
      await new Promise<void>((resolve) => {
        wake = resolve;
      });
    }
  };
  const close = async () => {
    await queue.close();
    library.close();
  };
  const add = (kind: Job['kind'], title: string) =>
    queue.add({
      kind,
      title: step('importFile', { file: title }),
      sessionId: null,
      task: { do: 'proxy', footageId: 'f' },
    });
  const measure = (title: string, joints: boolean) =>
    queue.add({
      kind: 'measure',
      title: step('importFile', { file: title }),
      sessionId: null,
      task: { do: 'measure', clipId: 'c', joints, again: false },
    });
  const running = () => started.map(({ job }) => nameOf(messageOfText(job.title)));
  const states = () => Object.fromEntries(queue.list().map(({ title, state }) => [nameOf(title), state]));
  return { library, queue, started, until, close, add, measure, running, states };
}

it('measures beside imports and copies, and does one after the other within each', async () => {
  const { add, close, until, running, started, states } = queueOn(temporaryFolder());
  onTestFinished(close);
  for (const title of ['measure 1', 'measure 2']) add('measure', title);
  add('import', 'import 1');
  add('proxy', 'proxy 1');
  await until(() => started.length === 2);
  expect(running().toSorted()).toEqual(['import 1', 'measure 1']);
  expect(states()).toMatchObject({ 'measure 2': 'waiting', 'proxy 1': 'waiting' });

  started.find(({ job }) => nameOf(messageOfText(job.title)) === 'import 1')?.end();
  await until(() => started.length === 3);
  expect(running()[2]).toBe('proxy 1');
  expect(states()).toMatchObject({ 'import 1': 'done', 'measure 1': 'running', 'measure 2': 'waiting' });

  started.find(({ job }) => nameOf(messageOfText(job.title)) === 'measure 1')?.end();
  await until(() => started.length === 4);
  expect(running()[3]).toBe('measure 2');
});

it('measures without joints before with them, each in the order asked for', async () => {
  const { measure, close, until, running, started } = queueOn(temporaryFolder());
  onTestFinished(close);
  measure('under way', true);
  await until(() => started.length === 1);
  for (const [title, joints] of [
    ['slow 1', true],
    ['slow 2', true],
    ['quick 1', false],
    ['quick 2', false],
  ] as const) {
    measure(title, joints);
  }
  for (let number = 1; number < 5; number += 1) {
    started[number - 1]?.end();
    await until(() => started.length === number + 1);
  }
  expect(running()).toEqual(['under way', 'quick 1', 'quick 2', 'slow 1', 'slow 2']);
});

it('cancels the job that is meant and leaves the one beside it running', async () => {
  const { queue, add, close, until, started, states } = queueOn(temporaryFolder());
  onTestFinished(close);
  const measuring = add('measure', 'measure');
  add('import', 'import');
  await until(() => started.length === 2);
  queue.cancel(measuring);
  await until(() => states().measure === 'cancelled');
  expect(states()).toEqual({ measure: 'cancelled', import: 'running' });
});

it('tells how far each of the two is', async () => {
  const { queue, add, close, until, started } = queueOn(temporaryFolder());
  onTestFinished(close);
  add('measure', 'measure');
  add('import', 'import');
  await until(() => started.length === 2);
  for (const { job, tools } of started)
    tools.report(
      job.kind === 'measure' ? 0.25 : 0.75,
      job.kind === 'measure' ? step('lookingForDisc') : step('copying'),
    );
  expect(queue.list().map(({ progress, message }) => [progress, message?.id])).toEqual([
    [0.25, 'lookingForDisc'],
    [0.75, 'copying'],
  ]);
});

it('tells how long the running job still takes, and those that wait behind it', async () => {
  let nowMs = 0;
  const { queue, add, close, until, started } = queueOn(temporaryFolder(), () => nowMs);
  onTestFinished(close);
  for (const title of ['one', 'two', 'three']) add('measure', title);
  await until(() => started.length === 1);
  const timesLeft = () => queue.list().map(({ secondsLeft, lineSecondsLeft }) => [secondsLeft, lineSecondsLeft]);
  const nothing = [null, null];
  expect(timesLeft()).toEqual([nothing, nothing, nothing]);

  nowMs += 10_000;
  started[0]?.tools.report(0.25, null);
  // A quarter took 10 s: 30 s are left, and 40 s for each of the two that wait.
  expect(timesLeft()).toEqual([[30, 110], nothing, nothing]);

  nowMs += 10_000;
  started[0]?.end();
  await until(() => started.length === 2);
  nowMs += 10_000;
  started[1]?.tools.report(0.2, null);
  // It took 20 s, the second takes 50 s in all: the third is given the mean, 35 s.
  expect(timesLeft()).toEqual([nothing, [40, 75], nothing]);
});

it('interrupts both when it is closed, and takes both up at the next opening', async () => {
  const folder = temporaryFolder();
  const first = queueOn(folder);
  first.add('measure', 'measure');
  first.add('import', 'import');
  await first.until(() => first.started.length === 2);
  await first.close();

  const second = queueOn(folder);
  onTestFinished(second.close);
  expect(second.states()).toEqual({ measure: 'waiting', import: 'waiting' });
  second.queue.resume();
  await second.until(() => second.started.length === 2);
  expect(second.running().toSorted()).toEqual(['import', 'measure']);
});

it('tells how a job ended though that can’t be stored, and stores it once it can be', async () => {
  const folder = temporaryFolder();
  const { add, close, library, queue, started, states, until } = queueOn(folder);
  add('import', 'One');
  await until(() => started.length === 1);
  runScript(
    library.writing,
    `CREATE TEMP TRIGGER disk_full BEFORE UPDATE ON main.job BEGIN SELECT RAISE(ABORT, 'database or disk is full'); END`,
  );
  started[0]?.end();
  await until(() => states().One === 'done');
  expect(listJobs(library.reading).map(({ state }) => state)).toEqual(['running']);
  runScript(library.writing, 'DROP TRIGGER temp.disk_full');
  add('import', 'Two');
  await until(() => started.length === 2);
  expect(listJobs(library.reading).map(({ state }) => state)).toEqual(['done', 'running']);
  expect(queue.list().map(({ state }) => state)).toEqual(['done', 'running']);
  await close();
});
