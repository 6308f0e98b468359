import { mkdtempSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import path from 'node:path';
import { openBackend } from '../../electron/backend/backend.ts';
import { loadCatalogue } from '../../electron/backend/catalogue/loadCatalogue.ts';
import type { Backend } from '../../electron/contract/backend.ts';
import type { Params, RequestName, Result } from '../../electron/contract/requests.ts';
import { rootFolder } from '../../electron/launch/folders.ts';
import { gradeSession } from '../../engine/grading/gradeSession.ts';
import { equalSets } from '../../engine/review/plan.ts';
import type { Entry, Flag, Review } from '../../engine/review/review.ts';
import { type Bench, median, timed } from './bench.ts';

const catalogue = loadCatalogue(rootFolder, 2);
const severities = ['prefer', 'adjust', 'correct', 'keep'] as const;

/** One entry of an exercise: its reps in one clip, flags spread over criteria, faults and reps. */
function entryOf(exercise: (typeof catalogue.exercises)[number], id: string, reps: number, flags: number): Entry {
  const marked = Array.from({ length: reps }, (_, i) => ({ index: i + 1, start: { seconds: 3 * i } }));
  return {
    id,
    exercise: exercise.id,
    plan: equalSets({ sets: 3, reps: 6, loadKg: 80, repsInReserve: 2 }),
    clips: [{ id: `${id}-clip`, name: 'Set 1', view: 'side', realTimeFactor: 1, reps: marked }],
    flags: Array.from({ length: flags }, (_, i): Flag => {
      const fault = exercise.faults[i % exercise.faults.length];
      const severity = severities[i % severities.length] ?? 'adjust';
      return {
        id: `${id}-${i}`,
        clip: `${id}-clip`,
        criterion: fault?.criterion ?? 'depth',
        fault: severity === 'keep' ? null : (fault?.id ?? null),
        severity,
        reps: [(i % reps) + 1],
        at: { seconds: i % (3 * reps) },
        note: '',
        cue: '',
      };
    }),
    ticks: exercise.criteria.map(({ id: criterion }) => ({ clip: `${id}-clip`, criterion, reps: 'set' })),
  };
}

/** A session of some exercises, each with its reps and flags. */
function sessionOf(exercises: number, repsEach: number, flagsEach: number): Review {
  const known = catalogue.exercises.filter((one) => one.beginsWith !== 'hold');
  return {
    format: 'rackside-review',
    version: 4,
    rubric: { id: 'rackside', version: 2 },
    voice: 'coach',
    trainee: { name: 'Robin Vale', goal: 'growth', experience: 'experienced', units: 'kg', minor: false },
    session: { id: 'session', title: '', date: '2026-03-09', notes: '', painNote: '' },
    entries: Array.from({ length: exercises }, (_, i) => {
      const exercise = known[i % 10];
      if (exercise === undefined) throw new Error('The exercise library is empty.');
      return entryOf(exercise, `e${i}`, repsEach, flagsEach);
    }),
  };
}

/** Advice on a plan compares every two exercises of a session, so its length is left out of how grading grows. */
const withoutPlan = (review: Review): Review => ({
  ...review,
  entries: review.entries.map(({ plan: _, ...entry }) => entry),
});

async function ask<N extends RequestName>(backend: Backend, name: N, params: Params<N>): Promise<Result<N>> {
  const reply = await backend.ask(name, params);
  if (!reply.ok) throw new Error(JSON.stringify(reply.problem));
  return reply.value;
}

/** A library on disk with one clip to flag. */
async function flagging(folder: string) {
  const backend = openBackend({ libraryFolder: folder, appFolder: rootFolder });
  await ask(backend, 'library.create', { contents: 'empty', voice: 'coach', coach: '' });
  const trainee = { name: 'Robin Vale', goal: 'growth', experience: 'new', units: 'kg', minor: false } as const;
  const { traineeId } = await ask(backend, 'trainees.add', trainee);
  const { sessionId } = await ask(backend, 'sessions.add', { traineeId, date: '2026-03-09' });
  const { entryId } = await ask(backend, 'entries.add', { sessionId, exercise: 'back-squat' });
  const paths = [path.join(rootFolder, 'seeds/footage/squat-side.mp4')];
  const imported = new Promise<string>((resolve, reject) => {
    backend.onEvent((event) => {
      if (event.name !== 'jobChanged') return;
      const { state, clipId, message } = event.data.job;
      if (state === 'done' && clipId !== null) resolve(clipId);
      if (state === 'failed') reject(new Error(JSON.stringify(message)));
    });
  });
  await ask(backend, 'clips.import', { sessionId, entryId, view: 'side', paths });
  return { backend, clipId: await imported };
}

const rounds = 60;

/**
 * Grading a whole session anew, with its list of what would raise the grade, against putting one flag on disk; and how
 * the grading grows when every exercise has ten times the reps and flags.
 */
export const regrade: Bench = {
  name: 'regrade',
  about: 'grading 10 exercises, 60 reps, 300 flags with what would raise it',
  run: async () => {
    const folder = mkdtempSync(path.join(tmpdir(), 'rackside-bench-'));
    const { backend, clipId } = await flagging(folder);
    try {
      const usual = sessionOf(10, 6, 30);
      const long = sessionOf(10, 60, 300);
      const wide = withoutPlan(sessionOf(100, 6, 30));
      const ten = Array.from({ length: 10 }, () => withoutPlan(sessionOf(10, 6, 30)));
      const flag = { clipId, criterion: 'depth', severity: 'adjust', reps: 'set', frame: 10 } as const;
      const times: Record<'grade' | 'long' | 'wide' | 'ten' | 'commit', number[]> = {
        ...{ grade: [], long: [], wide: [], ten: [], commit: [] },
      };
      for (let round = 0; round < rounds; round += 1) gradeSession(usual, catalogue);
      for (let round = 0; round < rounds; round += 1) {
        times.commit.push(await timed(() => ask(backend, 'flags.add', flag)));
        times.grade.push(await timed(() => gradeSession(usual, catalogue)));
        if (round % 6 === 0) times.long.push(await timed(() => gradeSession(long, catalogue)));
        if (round % 6 === 0) times.ten.push(await timed(() => ten.map((one) => gradeSession(one, catalogue))));
        if (round % 6 === 0) times.wide.push(await timed(() => gradeSession(wide, catalogue)));
      }
      const grade = median(times.grade);
      return [
        { what: 'grading the session / committing one flag', ratio: grade / median(times.commit), goal: 1 },
        { what: 'ten times the reps and flags / once', ratio: median(times.long) / grade, goal: 12 },
        {
          what: 'ten times the exercises in one session / in ten',
          ratio: median(times.wide) / median(times.ten),
          goal: 1.2,
        },
      ];
    } finally {
      await backend.close();
      rmSync(folder, { recursive: true, force: true });
    }
  },
};
