import { execFileSync } from 'node:child_process';
import { copyFileSync, mkdirSync, mkdtempSync, rmSync, utimesSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import path from 'node:path';
import { beforeAll, expect, it } from 'vitest';
import { findMediaTools } from '../../../../electron/backend/media/tools/mediaTools.ts';
import type { Backend } from '../../../../electron/contract/backend.ts';
import type { InboxFile } from '../../../../electron/contract/inbox.ts';
import type { Params } from '../../../../electron/contract/requests.ts';
import { ask, backendOn, jobEnd, newLibrary, newSession, refusal, temporaryFolder } from '../workbench.ts';

/** A folder with three short films of different content. */
const shortFilms = mkdtempSync(path.join(tmpdir(), 'rackside-films-'));
const barsFile = path.join(shortFilms, 'smptebars.mp4');
const stripesFile = path.join(shortFilms, 'rgbtestsrc.mp4');
const columnsFile = path.join(shortFilms, 'testsrc.mp4');

beforeAll(async () => {
  const { ffmpeg } = await findMediaTools();
  for (const file of [barsFile, stripesFile, columnsFile]) {
    const picture = `${path.basename(file, '.mp4')}=size=64x48:rate=10:duration=1`;
    const coded = ['-pix_fmt', 'yuv420p', '-c:v', 'libx264', file];
    execFileSync(ffmpeg.path, ['-v', 'error', '-f', 'lavfi', '-i', picture, ...coded]);
  }
  return () => rmSync(shortFilms, { recursive: true });
});

/** A copy of a clip in a folder that is made for it, written on a day. */
function put(folder: string, name: string, source: string, day = '2026-11-28T18:00:00'): string {
  mkdirSync(folder, { recursive: true });
  const file = path.join(folder, name);
  copyFileSync(source, file);
  utimesSync(file, new Date(day), new Date(day));
  return file;
}

/** Takes paths into the inbox and waits until they are read. */
async function take(backend: Backend, paths: readonly string[]) {
  const taken = await ask(backend, 'inbox.take', { paths: [...paths] });
  if (taken.jobId !== null) expect(await jobEnd(backend, taken.jobId)).toMatchObject({ state: 'done' });
  return taken;
}

const filesOf = async (backend: Backend) => (await ask(backend, 'inbox.get', {})).files;

/** A file of the inbox as it is brought in where nothing is corrected. */
function asGuessed({ arrivalId, placement }: InboxFile): Params<'inbox.bringIn'>['clips'][number] {
  const { trainee, session, exercise, view, loadKg } = placement;
  if (trainee === null || session === null) throw new Error('Nobody’s clip can’t be brought in.');
  return {
    arrivalId,
    trainee: trainee.value,
    sessionId: session.value.id,
    date: session.value.date,
    exercise: exercise?.value ?? 'back-squat',
    view: view?.value ?? null,
    loadKg: loadKg?.value ?? null,
  };
}

const addTrainee = async (backend: Backend, name: string) =>
  (await ask(backend, 'trainees.add', { name, goal: 'growth', experience: 'new', units: 'kg', minor: false }))
    .traineeId;

it('takes a folder in, subfolders too, passes over what is no film, and guesses whose each clip is', async () => {
  const films = temporaryFolder();
  put(path.join(films, 'Holt, Mira'), 'squat 100kg side.mp4', barsFile);
  put(path.join(films, 'jo berg', 'day 2'), 'IMG_2.mp4', stripesFile, '2026-11-27T09:00:00');
  writeFileSync(path.join(films, 'notes.txt'), 'no film');
  writeFileSync(path.join(films, '.hidden.mp4'), '');
  const backend = await newLibrary();
  const mira = await addTrainee(backend, 'Mira Holt');
  const jo = await addTrainee(backend, 'Jo Berg');

  const taken = await take(backend, [films]);
  expect(taken).toMatchObject({ taken: 2, alreadyThere: 0, passedOver: 1, passedOverNames: ['notes.txt'] });
  const files = await filesOf(backend);
  expect(files.map(({ name, state, hasPoster, recordedBy }) => [name, state, hasPoster, recordedBy])).toEqual([
    ['IMG_2.mp4', 'read', true, 'file'],
    ['squat 100kg side.mp4', 'read', true, 'file'],
  ]);
  expect(files.map(({ placement }) => placement)).toEqual([
    {
      trainee: { value: { kind: 'known', traineeId: jo }, basis: 'folder' },
      session: { value: { id: null, date: '2026-11-27' }, basis: 'recorded' },
      exercise: null,
      view: null,
      loadKg: null,
    },
    {
      trainee: { value: { kind: 'known', traineeId: mira }, basis: 'folder' },
      session: { value: { id: null, date: '2026-11-28' }, basis: 'recorded' },
      exercise: { value: 'back-squat', basis: 'fileName' },
      view: { value: 'side', basis: 'fileName' },
      loadKg: { value: 100, basis: 'fileName' },
    },
  ]);
  const picture = await ask(backend, 'inbox.picture', { arrivalId: files[0]?.arrivalId ?? '', what: 'poster' });
  expect(picture.type).toBe('image/jpeg');
  // The same folder once more: everything lies there already.
  expect(await take(backend, [films])).toMatchObject({ taken: 0, alreadyThere: 2, jobId: null });
});

it('brings clips of several people into their sessions, each session in one act that undo takes back', async () => {
  const films = temporaryFolder();
  put(path.join(films, 'Jo Berg'), '1.mp4', barsFile, '2026-03-04T10:00:00');
  put(path.join(films, 'Jo Berg'), '2.mp4', stripesFile, '2026-03-04T10:05:00');
  put(path.join(films, 'New One'), '3.mov', columnsFile, '2026-03-05T10:00:00');
  const backend = await newLibrary();
  const { sessionId } = await newSession(backend);
  const jo = await addTrainee(backend, 'Jo Berg');
  await take(backend, [films]);
  const files = await filesOf(backend);
  const press = files.find(({ name }) => name === '3.mov');
  await ask(backend, 'inbox.choose', { arrivalIds: [press?.arrivalId ?? ''], choice: { newTrainee: 'Ada Lund' } });
  const [first, second, third] = await filesOf(backend);
  if (!first || !second || !third) throw new Error('Three files were taken in.');
  const { sessionIds, clipIds } = await ask(backend, 'inbox.bringIn', {
    clips: [
      { ...asGuessed(first), loadKg: 90 },
      { ...asGuessed(second), exercise: 'romanian-deadlift' },
      { ...asGuessed(third), exercise: 'overhead-press' },
    ],
  });
  expect([sessionIds.length, clipIds.length]).toEqual([2, 3]);
  expect(await filesOf(backend)).toEqual([]);
  const { sessions } = await ask(backend, 'desk.sessions', {});
  expect(
    sessions
      .filter(({ id }) => id !== sessionId)
      .map(({ traineeName, date, exercises, clips }) => [traineeName, date, exercises, clips]),
  ).toEqual([
    ['Ada Lund', '2026-03-05', ['overhead-press'], 1],
    ['Jo Berg', '2026-03-04', ['back-squat', 'romanian-deadlift'], 2],
  ]);
  const ofJo = sessions.find(({ traineeId }) => traineeId === jo)?.id ?? '';
  const { review } = await ask(backend, 'review.get', { sessionId: ofJo });
  expect(review.entries[0]?.clips[0]).toMatchObject({ name: '1.mp4', loadKg: 90 });

  await ask(backend, 'history.undo', { sessionId: ofJo });
  expect((await filesOf(backend)).map(({ name, placement }) => [name, placement.session?.value.id])).toEqual([
    ['1.mp4', ofJo],
    ['2.mp4', ofJo],
  ]);
  await ask(backend, 'history.redo', { sessionId: ofJo });
  expect(await ask(backend, 'inbox.count', {})).toEqual({ files: 0 });
});

it('brings in all or nothing', async () => {
  const films = temporaryFolder();
  put(films, '1.mp4', barsFile);
  put(films, '2.mp4', stripesFile);
  const backend = await newLibrary();
  const { sessionId, traineeId } = await newSession(backend);
  await addTrainee(backend, 'Jo Berg');
  await take(backend, [films]);
  const before = await ask(backend, 'desk.sessions', {});
  const clips = (await filesOf(backend)).map(asGuessed);
  const spoilt = clips.map((clip, index) => (index === 1 ? { ...clip, exercise: 'moon-walk' } : clip));
  expect((await refusal(backend, 'inbox.bringIn', { clips: spoilt })).sentence).toMatch(/moon-walk/);
  const strange = clips.map((clip) => ({ ...clip, sessionId, trainee: { kind: 'new', name: 'Ada' } as const }));
  expect((await refusal(backend, 'inbox.bringIn', { clips: strange })).sentence).toMatch(/another trainee/);
  const twice = clips.map((clip) => ({
    ...clip,
    arrivalId: clips[0]?.arrivalId ?? '',
    sessionId,
    trainee: { kind: 'known', traineeId } as const,
  }));
  expect((await refusal(backend, 'inbox.bringIn', { clips: twice })).sentence).toMatch(/already in this session/);
  expect(await ask(backend, 'desk.sessions', {})).toEqual(before);
  expect(await ask(backend, 'inbox.count', {})).toEqual({ files: 2 });
});

it('tells where the library has a film already, and of a film that came twice', async () => {
  const films = temporaryFolder();
  const backend = await newLibrary();
  await newSession(backend);
  await take(backend, [put(films, 'first.mp4', barsFile)]);
  const [first] = await filesOf(backend);
  if (first === undefined) throw new Error('One file was taken in.');
  await ask(backend, 'inbox.bringIn', { clips: [asGuessed(first)] });
  await take(backend, [
    put(films, 'again.mp4', barsFile),
    put(films, 'press.mov', columnsFile),
    put(films, 'press copy.mov', columnsFile),
  ]);
  const told = (await filesOf(backend)).map(({ name, twins, sameAs }) => [
    name,
    twins.map(({ traineeName, date, exercise }) => [traineeName, date, exercise]),
    sameAs,
  ]);
  expect(told).toEqual([
    ['again.mp4', [['Mira Holt', '2026-11-28', 'back-squat']], null],
    ['press copy.mov', [], null],
    ['press.mov', [], 'press copy.mov'],
  ]);
});

it('says why a file can’t be read, reads the others, and reads it again when it is whole', async () => {
  const films = temporaryFolder();
  writeFileSync(path.join(films, 'broken.mp4'), 'not a film at all');
  put(films, 'whole.mp4', barsFile);
  const backend = await newLibrary();
  await take(backend, [films]);
  const [broken, whole] = (await filesOf(backend)).toSorted((a, b) => a.name.localeCompare(b.name));
  expect(broken).toMatchObject({ state: 'failed', trouble: { id: 'noVideo' }, durationUs: null });
  expect(whole).toMatchObject({ state: 'read', trouble: null });
  copyFileSync(stripesFile, path.join(films, 'broken.mp4'));
  const { jobId } = await ask(backend, 'inbox.readAgain', { arrivalIds: [broken?.arrivalId ?? ''] });
  await jobEnd(backend, jobId);
  expect((await filesOf(backend)).map(({ state }) => state)).toEqual(['read', 'read']);
});

it('keeps everything over a restart: what was said, what was removed, and what is still to be read', async () => {
  const films = temporaryFolder();
  const folder = temporaryFolder();
  const first = await newLibrary(folder);
  await newSession(first);
  await take(first, [put(films, 'a.mp4', barsFile), put(films, 'b.mp4', stripesFile)]);
  const [a, b] = (await filesOf(first)).toSorted((one, other) => one.name.localeCompare(other.name));
  await ask(first, 'inbox.choose', {
    arrivalIds: [a?.arrivalId ?? ''],
    choice: { exercise: 'front-squat', loadKg: 60 },
  });
  await ask(first, 'inbox.remove', { arrivalIds: [b?.arrivalId ?? ''] });
  const { jobId } = await ask(first, 'inbox.take', { paths: [put(films, 'c.mov', columnsFile)] });
  await first.close();

  const second = backendOn(folder);
  await jobEnd(second, jobId ?? '');
  const files = (await filesOf(second)).toSorted((one, other) => one.name.localeCompare(other.name));
  expect(files.map(({ name, state }) => [name, state])).toEqual([
    ['a.mp4', 'read'],
    ['c.mov', 'read'],
  ]);
  expect(files[0]?.placement).toMatchObject({
    exercise: { value: 'front-squat', basis: 'chosen' },
    loadKg: { value: 60, basis: 'chosen' },
  });
  await ask(second, 'inbox.putBack', { arrivalIds: [b?.arrivalId ?? ''] });
  expect(await ask(second, 'inbox.count', {})).toEqual({ files: 3 });
});

it('leaves files that were called off where they are, to be read when somebody asks again', async () => {
  const films = temporaryFolder();
  const backend = await newLibrary();
  const { jobId } = await ask(backend, 'inbox.take', {
    paths: [put(films, 'a.mp4', barsFile), put(films, 'b.mp4', stripesFile)],
  });
  await ask(backend, 'jobs.cancel', { jobId: jobId ?? '' });
  await jobEnd(backend, jobId ?? '');
  const files = await filesOf(backend);
  expect(files.map(({ state }) => state)).toEqual(['stopped', 'stopped']);
  expect((await refusal(backend, 'inbox.picture', { arrivalId: files[0]?.arrivalId ?? '', what: 'poster' })).code).toBe(
    'not-found',
  );
  const again = await ask(backend, 'inbox.readAgain', { arrivalIds: files.map(({ arrivalId }) => arrivalId) });
  expect(await jobEnd(backend, again.jobId)).toMatchObject({ state: 'done' });
  expect((await filesOf(backend)).map(({ state }) => state)).toEqual(['read', 'read']);
});

it('reads when a film says that it was made, whatever the day of its file', async () => {
  const films = temporaryFolder();
  const { ffmpeg } = await findMediaTools();
  const dated = path.join(films, 'dated.mp4');
  execFileSync(ffmpeg.path, [
    '-v',
    'error',
    '-i',
    barsFile,
    '-c',
    'copy',
    '-metadata',
    'creation_time=2026-02-03T12:00:00Z',
    dated,
  ]);
  const backend = await newLibrary();
  await take(backend, [dated]);
  expect((await filesOf(backend))[0]).toMatchObject({ recordedAt: '2026-02-03T12:00:00.000Z', recordedBy: 'film' });
});

it('takes nothing out of the library’s own folder', async () => {
  const folder = temporaryFolder();
  const films = path.join(folder, 'films');
  const backend = await newLibrary(path.join(folder, 'library'));
  await take(backend, [put(films, 'a.mp4', barsFile)]);
  expect(await take(backend, [folder])).toMatchObject({ taken: 0, alreadyThere: 1 });
  expect((await refusal(backend, 'inbox.take', { paths: [path.join(folder, 'library', 'clips')] })).code).toBe(
    'conflict',
  );
});
