import path from 'node:path';
import { loadCatalogue } from '../../../../electron/backend/catalogue/loadCatalogue.ts';
import { toMarkdown } from '../../../../engine/document/toMarkdown.ts';
import { translatedReview } from '../../../../engine/edition/shownReview.ts';
import { translated } from '../../../../engine/exercises/catalogue.ts';
import { gradeSession } from '../../../../engine/grading/gradeSession.ts';
import { type LetterStyle, letterDocument } from '../../../../engine/letter/letter.ts';
import { planLetter } from '../../../../engine/letter/planLetter.ts';
import { writeLetter } from '../../../../engine/letter/writeLetter.ts';
import { equalSets } from '../../../../engine/review/plan.ts';
import type { Entry, Review } from '../../../../engine/review/review.ts';
import { draft, sessionOf } from '../sample.ts';

/** A session whose letter somebody has read and would send as it is. */
export type Example = {
  readonly name: string;
  readonly review: Review;
  readonly rubric: 1 | 2;
  readonly style: LetterStyle;
  readonly earlier: readonly Review[];
};

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
const six = ['depth', 'eccentricTempo', 'pauses', 'barPath', 'headPosition', 'spinePosition'];
const but = (...left: readonly string[]) => six.filter((id) => !left.includes(id));

const example = (name: string, review: Review, change: Partial<Example> = {}): Example => ({
  name,
  review: { ...review, entries: review.entries.map(planned) },
  rubric: 1,
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

const shortSquats = draft({
  reps: 5,
  ticks: but('depth'),
  flags: [
    {
      weight: 'correct',
      criterion: 'depth',
      fault: 'shortOfDepth',
      reps: [3, 4, 5],
      note: 'Rep 3 is where it begins.',
    },
    { weight: 'keep', criterion: 'barPath', reps: 'set', note: 'The bar stays over the middle of the foot.' },
  ],
});

/** Ten sessions as different as those of one week. */
export const examples: readonly Example[] = [
  example('1-clean', sessionOf([draft({ exercise: 'front-squat', reps: 5 })])),
  example('2-one-fault', sessionOf([shortSquats], { trainee: strength }), { rubric: 2 }),
  example(
    '3-many-faults',
    sessionOf([
      draft({
        exercise: 'romanian-deadlift',
        reps: 6,
        ticks: ['headPosition'],
        flags: [
          { weight: 'adjust', criterion: 'eccentricTempo', fault: 'quickLowering', reps: 'set' },
          {
            weight: 'correct',
            criterion: 'spinePosition',
            fault: 'lowBackRounds',
            reps: [4, 5, 6],
            note: 'From rep 4 on.',
          },
          { weight: 'adjust', criterion: 'barPath', fault: 'barDriftsForward', reps: [2, 3] },
          { weight: 'prefer', criterion: 'pauses', fault: 'noLongPause', reps: 'set' },
          { weight: 'keep', criterion: 'depth', reps: 'set', note: 'The hips go back as far as they should.' },
        ],
      }),
      draft({
        exercise: 'standing-curl',
        reps: 8,
        ticks: but('barPath', 'depth'),
        flags: [
          { weight: 'adjust', criterion: 'barPath', fault: 'swingsLoad', reps: [6, 7, 8] },
          { weight: 'prefer', criterion: 'depth', fault: 'shortAtShortEnd', reps: [8] },
        ],
      }),
    ]),
    { style: { ...plain, tone: 'direct' } },
  ),
  example(
    '4-stop',
    sessionOf(
      [
        draft({
          exercise: 'bench-press',
          reps: 4,
          ticks: but('barPath'),
          flags: [
            {
              weight: 'stop',
              criterion: 'barPath',
              fault: 'noSpotterOrArms',
              reps: 'set',
              note: 'The last rep was pressed with nobody near.',
            },
          ],
        }),
      ],
      { trainee: { ...strength, name: 'Teo Lark' } },
    ),
  ),
  example(
    '5-pain',
    sessionOf(
      [draft({ exercise: 'split-squat', reps: 6, view: 'front', ticks: ['eccentricTempo', 'pauses', 'headPosition'] })],
      {
        session: {
          id: 's',
          title: 'Legs',
          date: '2026-04-19',
          notes: '',
          painNote: 'The front of my left knee ached from the third set on.',
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
          ticks: but('spinePosition'),
          flags: [
            {
              weight: 'adjust',
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
          ticks: but('depth', 'eccentricTempo'),
          flags: [
            { weight: 'adjust', criterion: 'depth', fault: 'shortOfDepth', reps: [1, 2, 3] },
            { weight: 'prefer', criterion: 'eccentricTempo', fault: 'quickLowering', reps: 'set' },
          ],
        }),
      ],
      { trainee: { name: 'Pia Wren', goal: 'skill', experience: 'new', units: 'kg', minor: true } },
    ),
    { style: { ...plain, tone: 'warm' } },
  ),
  example(
    '8-partly-looked-at',
    sessionOf([
      draft({
        exercise: 'pull-up',
        reps: 5,
        view: 'rear',
        ticks: ['pauses'],
        flags: [{ weight: 'adjust', criterion: 'depth', fault: 'shortOfTop', reps: [4, 5] }],
      }),
    ]),
    { rubric: 1, style: { ...plain, length: 'short' } },
  ),
  example(
    '9-since-last-time',
    sessionOf(
      [
        draft({
          reps: 5,
          ticks: but('barPath'),
          flags: [{ weight: 'adjust', criterion: 'barPath', fault: 'barDriftsForward', reps: [5] }],
        }),
      ],
      { trainee: strength, session: { id: 's', title: '', date: '2026-03-15', notes: '', painNote: '' } },
    ),
    { earlier: [sessionOf([shortSquats], { trainee: strength })] },
  ),
  example(
    '10-by-hand-in-german',
    sessionOf([{ ...shortSquats, override: { score: 88, reason: 'Erste Einheit nach vier Wochen Pause.' } }], {
      trainee: { ...strength, name: 'Ines Marrow' },
    }),
    { style: { ...plain, language: 'de' } },
  ),
];

const appFolder = path.resolve(import.meta.dirname, '../../../..');

/** The letter of an example, as it is written now. */
export function letterOfExample({ review, rubric, style, earlier }: Example): string {
  const own = loadCatalogue(appFolder, rubric);
  const catalogue = translated(own, style.language);
  const worded = translatedReview(review, catalogue);
  return toMarkdown(
    letterDocument(writeLetter(planLetter(worded, gradeSession(worded, catalogue), catalogue, earlier), style)),
  );
}

/** Where the letter that was read is kept. */
export const fileOf = ({ name }: Example): string => path.join(import.meta.dirname, `${name}.md`);
