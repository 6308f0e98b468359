import { expect, it, onTestFinished } from 'vitest';
import { openBackend } from '../../../../electron/backend/backend.ts';
import type { Backend } from '../../../../electron/contract/backend.ts';
import { appFolder, ask, hingeFile, jobEnd, jobWhen, squatFile, temporaryFolder } from '../workbench.ts';

/** A backend as the window has it, with a library where measuring is paused: what is put in line stays there. */
async function atWindow(folder: string): Promise<Backend> {
  const backend = openBackend({ libraryFolder: folder, appFolder, host: 'window' });
  onTestFinished(() => backend.close());
  if ((await ask(backend, 'library.state', {})).kind === 'none') {
    await ask(backend, 'library.create', { contents: 'empty', voice: 'coach', coach: 'Ada Quill' });
    await ask(backend, 'settings.change', { measuringPaused: true });
  }
  return backend;
}

const trainee = { name: 'Mira Holt', goal: 'growth', experience: 'new', units: 'kg', minor: false } as const;

/** Sessions of some days with one clip each, in the order given. */
async function sessionsOf(backend: Backend, days: readonly string[]) {
  const { traineeId } = await ask(backend, 'trainees.add', trainee);
  const clips: { readonly sessionId: string; readonly clipId: string }[] = [];
  for (const [at, date] of days.entries()) {
    const { sessionId } = await ask(backend, 'sessions.add', { traineeId, date });
    const paths = [at % 2 === 0 ? squatFile : hingeFile];
    const { jobIds } = await ask(backend, 'clips.import', { sessionId, exercise: 'back-squat', view: 'side', paths });
    const { clipId } = await jobEnd(backend, jobIds[0] ?? '');
    clips.push({ sessionId, clipId: clipId ?? '' });
  }
  return clips;
}

/** The clips that wait to be measured, in the order they are taken up. */
async function lineOf(backend: Backend): Promise<(string | null)[]> {
  const [jobs, line] = [await ask(backend, 'jobs.list', {}), await ask(backend, 'jobs.line', {})];
  return line.map((id) => jobs.find((job) => job.id === id)?.clipId ?? null);
}

const jobOf = async (backend: Backend, clipId: string): Promise<string> =>
  (await ask(backend, 'jobs.list', {})).find((job) => job.kind === 'measure' && job.clipId === clipId)?.id ?? '';

it('puts clips in line once they are in, the newest session first, and keeps the order a person gave', async () => {
  const folder = temporaryFolder();
  const backend = await atWindow(folder);
  const [old, newest, middle] = await sessionsOf(backend, ['2026-03-01', '2026-03-09', '2026-03-05']);
  const ids = [newest, middle, old].map((one) => one?.clipId ?? '');
  expect(await lineOf(backend)).toEqual(ids);
  const [first = '', second = '', third = ''] = ids;
  await ask(backend, 'jobs.move', { jobId: await jobOf(backend, third), to: 'first' });
  expect(await lineOf(backend)).toEqual([third, first, second]);
  // The clip on screen comes before what nobody has ordered.
  await ask(backend, 'position.set', { sessionId: middle?.sessionId ?? '', clipId: second, frame: 1 });
  expect(await lineOf(backend)).toEqual([third, second, first]);
  // One taken out stays out, also after a restart; a paused line stays paused.
  await ask(backend, 'jobs.cancel', { jobId: await jobOf(backend, second) });
  await backend.close();
  const again = await atWindow(folder);
  expect(await lineOf(again)).toEqual([third, first]);
  expect((await ask(again, 'jobs.list', {})).filter(({ state }) => state === 'running')).toEqual([]);
});

it('takes what nobody asked for out of the line when it is switched off, and puts it back when it is switched on', async () => {
  const backend = await atWindow(temporaryFolder());
  const [one, asked] = await sessionsOf(backend, ['2026-03-01', '2026-03-02']);
  await ask(backend, 'measures.start', { clipIds: [asked?.clipId ?? ''] });
  await ask(backend, 'settings.change', { measureByItself: false });
  expect(await lineOf(backend)).toEqual([asked?.clipId]);
  const put = new Promise<void>((resolve) => backend.onEvent(({ name }) => name === 'lineChanged' && resolve()));
  await ask(backend, 'settings.change', { measureByItself: true });
  await put;
  expect(await lineOf(backend)).toEqual([asked?.clipId, one?.clipId]);
});

it('measures what waits once it goes on, and puts what a pause stopped back in line', async () => {
  const backend = await atWindow(temporaryFolder());
  const [clip] = await sessionsOf(backend, ['2026-03-01']);
  const jobId = await jobOf(backend, clip?.clipId ?? '');
  await ask(backend, 'settings.change', { measuringPaused: false });
  await jobWhen(backend, jobId, ({ state }) => state === 'running');
  await ask(backend, 'settings.change', { measuringPaused: true });
  await jobWhen(backend, jobId, ({ state }) => state === 'waiting');
  expect(await lineOf(backend)).toEqual([clip?.clipId]);
});

it('leaves the line alone where nobody works at a window', async () => {
  const backend = openBackend({ libraryFolder: temporaryFolder(), appFolder });
  onTestFinished(() => backend.close());
  await ask(backend, 'library.create', { contents: 'empty', voice: 'coach' });
  await sessionsOf(backend, ['2026-03-01']);
  expect(await lineOf(backend)).toEqual([]);
});
