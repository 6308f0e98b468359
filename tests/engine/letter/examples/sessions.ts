import path from 'node:path';
import { loadCatalogue } from '../../../../electron/backend/catalogue/loadCatalogue.ts';
import { toMarkdown } from '../../../../engine/document/toMarkdown.ts';
import { translatedReview } from '../../../../engine/edition/shownReview.ts';
import { findExercise, translated } from '../../../../engine/exercises/catalogue.ts';
import { gradeSession } from '../../../../engine/grading/gradeSession.ts';
import { type LetterStyle, letterDocument } from '../../../../engine/letter/letter.ts';
import { planLetter } from '../../../../engine/letter/planLetter.ts';
import { writeLetter } from '../../../../engine/letter/writeLetter.ts';
import { equalSets } from '../../../../engine/review/plan.ts';
import type { Clip, Entry, Review } from '../../../../engine/review/review.ts';
import { draft, sessionOf } from '../sample.ts';

/** A session whose letter somebody has read and would send as it is. */
export type Example = {
  readonly name: string;
  readonly review: Review;
  readonly rubric: 2 | 3;
  readonly style: LetterStyle;
  readonly earlier: readonly Review[];
};

const appFolder = path.resolve(import.meta.dirname, '../../../..');

/** What somebody of that goal might lift, in kilograms. */
const loadsKg: Readonly<Record<string, number>> = {
  'front-squat': 70,
  'back-squat': 95,
  'romanian-deadlift': 80,
  'standing-curl': 25,
  'bench-press': 72.5,
  'split-squat': 24,
  'overhead-press': 42.5,
  'goblet-squat': 12,
  'dumbbell-bench-press': 24,
  'seated-cable-row': 50,
  deadlift: 160,
};

/** An entry as it was planned: three sets, two reps in reserve, a load where there is one. */
function planned(entry: Entry): Entry {
  const loadKg = loadsKg[entry.exercise];
  const reps = entry.clips[0]?.reps.length ?? 1;
  return {
    ...entry,
    setsDone: 3,
    plan: equalSets({ sets: 3, reps, repsInReserve: 2, ...(loadKg !== undefined && { loadKg }) }),
  };
}

const plain: LetterStyle = { length: 'full', tone: 'plain', language: 'en' };
/** The criteria that a coach ticked as fine: all of the exercise's, but for some. */
function but(exercise: string, ...left: readonly string[]): string[] {
  const known = findExercise(loadCatalogue(appFolder, 3), exercise)?.criteria ?? [];
  return known.map(({ id }) => id).filter((id) => !left.includes(id));
}

const example = (name: string, review: Review, change: Partial<Example> = {}): Example => ({
  name,
  review: { ...review, entries: review.entries.map(planned) },
  rubric: 3,
  style: plain,
  earlier: [],
  ...change,
});

const strength = {
  name: 'Ines Marrow',
  goal: 'strength',
  experience: 'experienced',
  units: 'kg',
  minor: false,
} as const;

/** The reps of a lift that begins with the way down, marked to their stretched end: so many frames of 30 a second. */
function marked(entry: Entry, frames: number): Entry {
  const ending = (moment: Clip['reps'][number]['start']) => {
    const frame = 'frame' in moment ? moment.frame + frames : frames;
    return { frame, ticks: frame };
  };
  return {
    ...entry,
    clips: entry.clips.map((clip) => ({
      ...clip,
      reps: clip.reps.map((rep) => ({ ...rep, stretchedEnd: ending(rep.start) })),
    })),
  };
}

const shortSquats = draft({
  reps: 5,
  ticks: but('back-squat', 'depth'),
  flags: [
    {
      severity: 'correct',
      criterion: 'depth',
      fault: 'shortOfDepth',
      reps: [3, 4, 5],
      note: 'Rep 3 is where it begins.',
    },
    { severity: 'keep', criterion: 'barPath', reps: 'set', note: 'The bar stays over the middle of the foot.' },
  ],
});

const quick = (exercise: string, reps: number): Entry =>
  draft({
    exercise,
    reps,
    ticks: but(exercise, 'eccentricTempo'),
    flags: [{ severity: 'adjust', criterion: 'eccentricTempo', fault: 'quickLowering', reps: 'set' }],
  });

const lastTime = (date: string, flags: NonNullable<Parameters<typeof draft>[0]>['flags'] = []): Review =>
  sessionOf([draft({ reps: 5, ticks: but('back-squat'), flags })], {
    trainee: strength,
    session: { id: 's', title: '', date, notes: '', painNote: '' },
  });
const drift = (reps: number[]) => ({
  severity: 'adjust' as const,
  criterion: 'barPath',
  fault: 'barDriftsForward',
  reps,
});
const shortOf = (reps: number[]) => ({ severity: 'correct' as const, criterion: 'depth', fault: 'shortOfDepth', reps });
const looks = (reps: number[]) => ({
  severity: 'adjust' as const,
  criterion: 'spinePosition',
  fault: 'lowBackRounds',
  reps,
});

/** Ten sessions as different as those of one week. */
export const examples: readonly Example[] = [
  example('1-clean', sessionOf([marked(draft({ exercise: 'front-squat', reps: 5, ticks: but('front-squat') }), 66)])),
  example('2-one-fault', sessionOf([shortSquats], { trainee: strength })),
  example(
    '3-one-theme-in-every-lift',
    sessionOf([quick('goblet-squat', 8), quick('dumbbell-bench-press', 8), quick('seated-cable-row', 10)]),
    { style: { ...plain, tone: 'direct' } },
  ),
  example(
    '4-stop',
    sessionOf(
      [
        draft({
          exercise: 'bench-press',
          reps: 4,
          ticks: but('bench-press', 'barPath', 'depth'),
          flags: [
            {
              severity: 'stop',
              criterion: 'barPath',
              fault: 'noSpotterOrArms',
              reps: 'set',
              note: 'The last rep was pressed with nobody near.',
            },
            { severity: 'adjust', criterion: 'depth', fault: 'shortOfDepth', reps: [3, 4] },
          ],
        }),
      ],
      { trainee: { ...strength, name: 'Teo Lark' } },
    ),
  ),
  example(
    '5-pain',
    sessionOf(
      [
        draft({
          exercise: 'split-squat',
          reps: 6,
          ticks: but('split-squat', 'depth'),
          flags: [{ severity: 'correct', criterion: 'depth', fault: 'shortOfDepth', reps: 'set' }],
        }),
        draft({
          exercise: 'bench-press',
          reps: 5,
          ticks: but('bench-press', 'barPath'),
          flags: [{ severity: 'adjust', criterion: 'barPath', fault: 'pathVaries', reps: [1, 2, 3] }],
        }),
      ],
      {
        session: {
          id: 's',
          title: 'Mixed',
          date: '2026-04-19',
          notes: '',
          painNote: 'The front of my left knee ached from the third set on, about a 4.',
        },
      },
    ),
    { style: { ...plain, tone: 'warm' } },
  ),
  example(
    '6-self',
    sessionOf(
      [
        draft({
          exercise: 'overhead-press',
          reps: 5,
          ticks: but('overhead-press', 'spinePosition'),
          flags: [
            {
              severity: 'adjust',
              criterion: 'spinePosition',
              fault: 'leansBack',
              reps: [4, 5],
              note: 'The ribs come up when it gets hard.',
            },
          ],
        }),
      ],
      {
        voice: 'self',
        trainee: { name: 'Noor Ashby', goal: 'strength', experience: 'experienced', units: 'lb', minor: false },
      },
    ),
  ),
  example(
    '7-minor-and-new',
    sessionOf(
      [
        draft({
          exercise: 'goblet-squat',
          reps: 8,
          ticks: but('goblet-squat', 'depth', 'eccentricTempo'),
          flags: [
            { severity: 'adjust', criterion: 'depth', fault: 'shortOfDepth', reps: [1, 2, 3] },
            { severity: 'prefer', criterion: 'eccentricTempo', fault: 'quickLowering', reps: 'set' },
          ],
        }),
      ],
      { trainee: { name: 'Pia Wren', goal: 'skill', experience: 'new', units: 'kg', minor: true } },
    ),
    { style: { ...plain, tone: 'warm' } },
  ),
  example(
    '8-stopped-by-pain-short',
    sessionOf(
      [
        draft({
          exercise: 'romanian-deadlift',
          reps: 6,
          ticks: but('romanian-deadlift', 'spinePosition'),
          flags: [{ severity: 'correct', criterion: 'spinePosition', fault: 'lowBackRounds', reps: 'set' }],
        }),
      ],
      {
        trainee: { ...strength, name: 'Mira Holt' },
        session: {
          id: 's',
          title: '',
          date: '2026-05-07',
          notes: '',
          painNote: 'Lower back 6 out of 10, and my left foot tingled on the way home.',
        },
      },
    ),
    { style: { ...plain, length: 'short' } },
  ),
  example('9-since-last-time', lastTime('2026-03-15', [drift([4, 5]), looks([5])]), {
    earlier: [lastTime('2026-03-01', [looks([4, 5])]), lastTime('2026-03-08', [drift([1, 2]), shortOf([3, 4, 5])])],
  }),
  example(
    '10-heavy-back-in-german',
    sessionOf(
      [
        draft({
          exercise: 'deadlift',
          reps: 4,
          ticks: but('deadlift', 'spinePosition', 'eccentricTempo'),
          flags: [
            {
              severity: 'correct',
              criterion: 'spinePosition',
              fault: 'lowBackRounds',
              reps: 'set',
              note: 'Schon beim Anheben ist der Rücken rund.',
            },
            { severity: 'adjust', criterion: 'eccentricTempo', fault: 'quickLowering', reps: 'set' },
          ],
        }),
        {
          ...draft({ exercise: 'bench-press', reps: 5, ticks: but('bench-press') }),
          override: { score: 88, reason: 'Erste Einheit nach vier Wochen Pause.' },
        },
      ],
      { trainee: { ...strength, name: 'Ruben Vale' } },
    ),
    { style: { ...plain, language: 'de' } },
  ),
];

/** The letter of an example, as it is written now. */
export function letterOfExample({ review, rubric, style, earlier }: Example): string {
  const own = loadCatalogue(appFolder, rubric);
  const catalogue = translated(own, style.language);
  const worded = translatedReview(review, catalogue);
  return toMarkdown(
    letterDocument(
      writeLetter(planLetter(worded, gradeSession(worded, catalogue, earlier), catalogue, earlier), style),
    ),
  );
}

/** Where the letter that was read is kept. */
export const fileOf = ({ name }: Example): string => path.join(import.meta.dirname, `${name}.md`);
