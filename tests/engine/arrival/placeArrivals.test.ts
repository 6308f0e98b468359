import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import type { ArrivedClip, Choice, OpenSession } from '../../../engine/arrival/arrival.ts';
import { exerciseNames } from '../../../engine/arrival/nameClues.ts';
import { type KnownToInbox, placeArrivals } from '../../../engine/arrival/placeArrivals.ts';
import { shipped } from '../../seeds/shippedCatalogue.ts';

const exercises = exerciseNames(shipped);
const day = '2026-11-28';

/** A clip filmed at a minute of the day, in Mira's folder. */
const filmed = (minute: number, more: Partial<ArrivedClip> = {}): ArrivedClip => ({
  id: `c${minute}`,
  name: `IMG_${minute}.MOV`,
  folders: ['Mira Holt'],
  recordedAt: `${day}T17:${String(minute).padStart(2, '0')}:00.000Z`,
  recordedDay: day,
  seenFrom: null,
  choice: {},
  ...more,
});

const known = (sessions: readonly OpenSession[] = []): KnownToInbox => ({
  trainees: [
    { id: 'mira', name: 'Mira Holt' },
    { id: 'jo', name: 'Jo Berg' },
  ],
  lastUsed: null,
  sessions,
  exercises,
});

const session = (entries: OpenSession['entries'], more: Partial<OpenSession> = {}): OpenSession => ({
  id: 's1',
  traineeId: 'mira',
  date: day,
  entries,
  ...more,
});

const planned = (exercise: string, plannedSets: number | null, clips = 0) => ({ exercise, plannedSets, clips });

const exercisesOf = (clips: readonly ArrivedClip[], sessions: readonly OpenSession[] = []) =>
  placeArrivals(clips, known(sessions)).map(({ exercise }) => [exercise?.value ?? null, exercise?.basis ?? null]);

const times = <T>(count: number, value: T): T[] => Array.from({ length: count }, () => value);

describe('the session of a clip', () => {
  const placed = (clip: ArrivedClip, sessions: readonly OpenSession[]) => placeArrivals([clip], known(sessions))[0];

  it('is that of the trainee on the day of filming, else a new one of that day', () => {
    const others = [session([], { id: 'other', traineeId: 'jo' }), session([], { id: 'before', date: '2026-11-27' })];
    expect(placed(filmed(1), [...others, session([])])?.session).toEqual({
      value: { id: 's1', date: day },
      basis: 'recorded',
    });
    expect(placed(filmed(1), others)?.session).toEqual({ value: { id: null, date: day }, basis: 'recorded' });
  });

  it('is the one that was chosen, or that of the day that was chosen', () => {
    const sessions = [session([]), session([], { id: 'before', date: '2026-11-27' })];
    const chosen = (choice: Choice) => placed(filmed(1, { choice }), sessions)?.session;
    expect(chosen({ sessionId: 'before' })).toEqual({ value: { id: 'before', date: '2026-11-27' }, basis: 'chosen' });
    expect(chosen({ date: '2026-11-27' })).toEqual({ value: { id: 'before', date: '2026-11-27' }, basis: 'chosen' });
    expect(chosen({ date: '2026-11-26' })).toEqual({ value: { id: null, date: '2026-11-26' }, basis: 'chosen' });
    // Somebody else's session is no choice for this trainee.
    expect(chosen({ sessionId: 'other' })).toEqual({ value: { id: 's1', date: day }, basis: 'recorded' });
  });

  it('is none without a trainee', () => {
    const [stray] = placeArrivals([filmed(1, { folders: ['DCIM'] })], known());
    expect(stray).toMatchObject({ trainee: null, session: null, exercise: null });
  });
});

describe('the exercise of a clip', () => {
  it('follows the plan in the order of filming, set by set', () => {
    const plan = session([planned('back-squat', 2), planned('bench-press', 3)]);
    const clips = [5, 1, 3, 4, 2].map((minute) => filmed(minute));
    expect(exercisesOf(clips, [plan])).toEqual([
      ...times(2, ['back-squat', 'plan']),
      ...times(3, ['bench-press', 'plan']),
    ]);
  });

  it('goes on in the plan where the clips that are in already leave off', () => {
    const plan = session([planned('back-squat', 3, 2), planned('bench-press', 2)]);
    expect(exercisesOf([filmed(1), filmed(2), filmed(3)], [plan])).toEqual([
      ['back-squat', 'plan'],
      ...times(2, ['bench-press', 'plan']),
    ]);
  });

  it('is one of each where there are as many clips as exercises', () => {
    const plan = session([planned('back-squat', 5), planned('bench-press', 5), planned('deadlift', 3)]);
    expect(exercisesOf([filmed(1), filmed(2), filmed(3)], [plan])).toEqual([
      ['back-squat', 'plan'],
      ['bench-press', 'plan'],
      ['deadlift', 'plan'],
    ]);
  });

  it('is shared out evenly among exercises without a plan', () => {
    const plan = session([planned('back-squat', null), planned('bench-press', null)]);
    expect(
      exercisesOf(
        [1, 2, 3, 4, 5].map((minute) => filmed(minute)),
        [plan],
      ),
    ).toEqual([...times(2, ['back-squat', 'plan']), ...times(2, ['bench-press', 'plan']), ['bench-press', 'before']]);
  });

  it('is that of the clip before where nothing is planned', () => {
    const chosen = (exercise: string): Partial<ArrivedClip> => ({ choice: { exercise } });
    const clips = [filmed(1, chosen('back-squat')), filmed(2), filmed(3, chosen('deadlift')), filmed(4)];
    expect(exercisesOf(clips)).toEqual([
      ['back-squat', 'chosen'],
      ['back-squat', 'before'],
      ['deadlift', 'chosen'],
      ['deadlift', 'before'],
    ]);
    expect(exercisesOf([filmed(1), filmed(2)])).toEqual(times(2, [null, null]));
  });

  it('follows nobody else’s clip, and no other day’s', () => {
    const squat = filmed(1, { choice: { exercise: 'back-squat' } });
    const jos = filmed(2, { folders: ['Jo Berg'] });
    const later = filmed(3, { recordedDay: '2026-11-29' });
    expect(exercisesOf([squat, jos, later])).toEqual([
      ['back-squat', 'chosen'],
      [null, null],
      [null, null],
    ]);
  });

  it('is named by the file, else by the innermost folder that names one, before any plan', () => {
    const plan = session([planned('deadlift', 9)]);
    const folders = ['Mira Holt', 'squats'];
    expect(
      exercisesOf([filmed(1, { folders }), filmed(2, { folders, name: 'Bankdrücken 2.mp4' }), filmed(3)], [plan]),
    ).toEqual([
      ['back-squat', 'folder'],
      ['bench-press', 'fileName'],
      ['deadlift', 'plan'],
    ]);
  });

  it('goes on from a correction: the next clips follow it as far as the plan has sets of it', () => {
    const plan = session([planned('back-squat', 2), planned('bench-press', 2), planned('deadlift', 2)]);
    const skipped = filmed(2, { choice: { exercise: 'bench-press' } });
    expect(exercisesOf([filmed(1), skipped, filmed(3), filmed(4)], [plan])).toEqual([
      ['back-squat', 'plan'],
      ['bench-press', 'chosen'],
      ['bench-press', 'plan'],
      ['deadlift', 'plan'],
    ]);
  });
});

describe('the view of a clip', () => {
  it('is what the joints show, else what the file says, else that of the clip before of the same exercise', () => {
    const squat: Choice = { exercise: 'back-squat' };
    const placed = placeArrivals(
      [
        filmed(1, { choice: squat, seenFrom: 'side', name: 'front.mov' }),
        filmed(2, { choice: squat }),
        filmed(3, { choice: { exercise: 'deadlift' } }),
        filmed(4, { name: 'deadlift front.mov' }),
        filmed(5, { choice: { view: null } }),
      ],
      known(),
    );
    expect(placed.map(({ view }) => (view === null ? null : [view.value, view.basis]))).toEqual([
      ['side', 'joints'],
      ['side', 'before'],
      null,
      ['front', 'fileName'],
      [null, 'chosen'],
    ]);
  });
});

const anyClip = fc
  .record({
    minute: fc.integer({ min: 0, max: 59 }),
    folder: fc.constantFrom('Mira Holt', 'Jo Berg', 'DCIM', 'squats'),
    name: fc.constantFrom('IMG_1.mov', 'squat.mp4', 'bench 80kg.mp4', 'front.mp4'),
    day: fc.constantFrom(day, '2026-11-29'),
    choice: fc.constantFrom<Choice>(
      {},
      { exercise: 'deadlift' },
      { traineeId: 'jo' },
      { date: '2026-11-20' },
      { loadKg: null },
    ),
  })
  .map(({ minute, folder, name, day, choice }) =>
    filmed(minute, { folders: [folder], name, recordedDay: day, choice }),
  );

const anyInbox = fc
  .array(anyClip, { maxLength: 12 })
  .map((clips) => clips.map((clip, index) => ({ ...clip, id: `c${index}` })));

describe('all guesses together', () => {
  it('place every clip once, keep what was chosen, and don’t depend on the order they came in', () => {
    fc.assert(
      fc.property(anyInbox, fc.boolean(), (clips, withPlan) => {
        const sessions = withPlan ? [session([planned('back-squat', 2), planned('bench-press', null)])] : [];
        const placed = placeArrivals(clips, known(sessions));
        expect(placed.map(({ id }) => id).sort()).toEqual(clips.map(({ id }) => id).sort());
        for (const { id, choice } of clips) {
          const placement = placed.find((one) => one.id === id);
          if (choice.exercise !== undefined)
            expect(placement?.exercise).toEqual({ value: choice.exercise, basis: 'chosen' });
          if (choice.loadKg !== undefined) expect(placement?.loadKg).toEqual({ value: choice.loadKg, basis: 'chosen' });
        }
        expect(placeArrivals(clips.toReversed(), known(sessions))).toEqual(placed);
      }),
    );
  });

  it('stay as they are when each is chosen as it was guessed', () => {
    fc.assert(
      fc.property(anyInbox, (clips) => {
        const placed = placeArrivals(clips, known());
        const taken = clips.map((clip) => {
          const guess = placed.find(({ id }) => id === clip.id);
          return {
            ...clip,
            choice: {
              ...clip.choice,
              ...(guess?.exercise && { exercise: guess.exercise.value }),
              ...(guess?.view && { view: guess.view.value }),
            },
          };
        });
        const values = ({ id, exercise, view }: (typeof placed)[number]) => [id, exercise?.value, view?.value];
        expect(placeArrivals(taken, known()).map(values)).toEqual(placed.map(values));
      }),
    );
  });
});
