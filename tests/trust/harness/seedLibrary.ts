import { execFileSync } from 'node:child_process';
import path from 'node:path';
import { openBackend } from '../../../electron/backend/backend.ts';
import { findMediaTools } from '../../../electron/backend/media/tools/mediaTools.ts';
import { rootFolder } from '../../../electron/launch/folders.ts';
import { ask, jobsAtRest } from './ask.ts';

/** A closed library to be copied, and what is in it. */
export type SeedLibrary = {
  readonly folder: string;
  /** A second and a half of film, to be brought in. */
  readonly film: string;
  readonly traineeId: string;
  /** One clip with two reps, flags, a tick, notes and a sent letter. */
  readonly sessionId: string;
  readonly entryId: string;
  readonly clipId: string;
  /** An exercise without clips. */
  readonly emptySessionId: string;
  readonly emptyEntryId: string;
};

/** Cuts a short film out of the demo's footage. */
export async function shortFilm(folder: string): Promise<string> {
  const { ffmpeg } = await findMediaTools();
  const film = path.join(folder, 'film.mp4');
  const source = path.join(rootFolder, 'seeds/footage/squat-side.mp4');
  execFileSync(ffmpeg.path, ['-v', 'error', '-i', source, '-t', '1.5', '-an', '-c', 'copy', film]);
  return film;
}

/** Makes a library with something in most of its tables. */
export async function seedLibrary(place: string): Promise<SeedLibrary> {
  const folder = path.join(place, 'seed');
  const film = await shortFilm(place);
  const backend = openBackend({ libraryFolder: folder, appFolder: rootFolder });
  await ask(backend, 'library.create', { contents: 'empty', voice: 'coach', coach: 'Ada Quill' });
  await ask(backend, 'settings.change', { measureByItself: false });
  const trainee = { name: 'Mira Holt', goal: 'growth', experience: 'new', units: 'kg', minor: false } as const;
  const { traineeId } = await ask(backend, 'trainees.add', trainee);
  const session = async (date: string) => {
    const { sessionId } = await ask(backend, 'sessions.add', { traineeId, title: 'Legs', date });
    const { entryId } = await ask(backend, 'entries.add', { sessionId, exercise: 'back-squat' });
    return { sessionId, entryId };
  };
  const { sessionId, entryId } = await session('2026-03-04');
  const { sessionId: emptySessionId, entryId: emptyEntryId } = await session('2026-03-11');
  await ask(backend, 'clips.import', { sessionId, entryId, view: 'side', paths: [film] });
  const [job] = await jobsAtRest(backend);
  const clipId = job?.clipId ?? '';
  for (const [edge, frame] of [
    ['start', 4],
    ['end', 20],
    ['start', 22],
    ['end', 38],
  ] as const) {
    await ask(backend, 'reps.mark', { clipId, edge, frame });
  }
  const flag = { clipId, fault: null, cue: 'Sit lower next time' } as const;
  await ask(backend, 'flags.add', {
    ...flag,
    criterion: 'depth',
    severity: 'adjust',
    reps: [1],
    frame: 12,
    note: 'Above parallel today',
  });
  await ask(backend, 'flags.add', {
    ...flag,
    criterion: 'barPath',
    severity: 'keep',
    reps: 'set',
    frame: 30,
    note: 'Straight all the way',
  });
  await ask(backend, 'ticks.set', { clipId, criterion: 'headPosition', reps: 'set', fine: true });
  await ask(backend, 'covers.add', { clipId, cover: { kind: 'head' }, look: 'filled' });
  await ask(backend, 'sessions.update', { sessionId, notes: 'A calm evening session' });
  await ask(backend, 'entries.update', { entryId, setsDone: 2 });
  await ask(backend, 'letters.edit', { sessionId, paragraph: 'greeting', words: 'Well done today.' });
  await ask(backend, 'measures.start', { clipIds: [clipId], joints: false });
  await jobsAtRest(backend);
  await ask(backend, 'letters.send', { sessionId });
  await backend.close();
  return { folder, film, traineeId, sessionId, entryId, clipId, emptySessionId, emptyEntryId };
}
