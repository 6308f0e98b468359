import path from 'node:path';
import fc from 'fast-check';
import { loadCatalogue } from '../../../electron/backend/catalogue/loadCatalogue.ts';
import { type Block, plainText, type RacksideDocument } from '../../../engine/document/document.ts';
import type { Exercise } from '../../../engine/exercises/exercise.ts';
import { gradeSession } from '../../../engine/grading/gradeSession.ts';
import { letterDocument } from '../../../engine/letter/letter.ts';
import type { LetterPlan } from '../../../engine/letter/letterPlan.ts';
import { planLetter } from '../../../engine/letter/planLetter.ts';
import { writeLetter } from '../../../engine/letter/writeLetter.ts';
import { equalSets } from '../../../engine/review/plan.ts';
import type { Clip, Entry, Flag, Reps, Review } from '../../../engine/review/review.ts';
import { type Severity, severities } from '../../../engine/rubric/rubric.ts';

export const catalogue = loadCatalogue(path.resolve(import.meta.dirname, '../../..'));

export const planOf = (review: Review): LetterPlan => planLetter(review, gradeSession(review, catalogue), catalogue);
export const letterOf = (review: Review): RacksideDocument => letterDocument(writeLetter(planOf(review)));

/** Every paragraph, list item, cell, heading and notice line of a document, as plain text. */
export function linesOf({ blocks }: RacksideDocument): string[] {
  return blocks.flatMap(linesOfBlock);
}

function linesOfBlock(block: Block): string[] {
  switch (block.kind) {
    case 'heading':
      return [block.text];
    case 'paragraph':
      return [plainText(block.inlines)];
    case 'list':
      return block.items.map(plainText);
    case 'table':
      return [block.caption, ...block.rows.flat().map(plainText)];
    case 'picture':
      return [block.alt, block.caption];
    case 'notice':
      return [block.title, ...block.paragraphs.map(plainText)];
  }
}

export const lettersText = (review: Review): string => linesOf(letterOf(review)).join('\n');

const allCriteria = (exercise: Exercise): string[] => exercise.criteria.map(({ id }) => id);

export type Draft = {
  readonly exercise?: string;
  readonly reps?: number;
  readonly flags?: readonly {
    severity: Severity;
    criterion: string;
    reps: Reps;
    fault?: string | null;
    note?: string;
  }[];
  /** Criteria ticked for the whole set; all of the exercise's by default. */
  readonly ticks?: readonly string[];
  readonly view?: Clip['view'];
};

/** A session of one entry and one clip, everything else looked at and fine. */
export function draft({ exercise = 'back-squat', reps = 5, flags = [], ticks, view = 'side' }: Draft = {}): Entry {
  const known = catalogue.exercises.find(({ id }) => id === exercise);
  if (known === undefined) throw new Error(`no exercise ${exercise}`);
  return {
    id: exercise,
    exercise,
    plan: equalSets({ sets: 3, reps: Math.max(1, reps), loadKg: 80, repsInReserve: 2 }),
    clips: [
      {
        id: `${exercise}-clip`,
        name: `${known.name}, set 1`,
        view,
        realTimeFactor: 1,
        facts: {
          codec: 'h264',
          width: 640,
          height: 480,
          rotationDeg: 0,
          frames: 900,
          timeBase: { numerator: 1, denominator: 30 },
          durationUs: 30_000_000,
        },
        reps: Array.from({ length: reps }, (_, i) => ({
          index: i + 1,
          start: { frame: 30 + i * 120, ticks: 30 + i * 120 },
        })),
      },
    ],
    flags: flags.map(
      (flag, i): Flag => ({
        id: `${exercise}-${i}`,
        clip: `${exercise}-clip`,
        fault: null,
        note: '',
        cue: '',
        at: { frame: 40 + i, ticks: 40 + i },
        ...flag,
      }),
    ),
    ticks: (ticks ?? allCriteria(known)).map((criterion) => ({ clip: `${exercise}-clip`, criterion, reps: 'set' })),
  };
}

export function sessionOf(entries: readonly Entry[], change: Partial<Review> = {}): Review {
  return {
    format: 'rackside-review',
    version: 4,
    voice: 'coach',
    coach: 'Jo Harwick',
    trainee: { name: 'Alva Brook', goal: 'growth', experience: 'experienced', units: 'kg', minor: false },
    session: { id: 's', title: '', date: '2026-03-01', notes: '', painNote: '' },
    entries: [...entries],
    ...change,
  };
}

const words = fc.constantFrom(
  '',
  'Slower here.',
  'Löwe <b>&',
  'سلام',
  '🏋️ strong',
  '=SUM(A1)',
  'a'.repeat(300),
  '{count}',
);

const entryOf = (exercise: Exercise): fc.Arbitrary<Entry> =>
  fc.nat({ max: 6 }).chain((reps) =>
    fc
      .array(
        fc.record({
          severity: fc.constantFrom(...severities),
          fault: fc.option(fc.constantFrom(...exercise.faults), { nil: null }),
          criterion: fc.constantFrom(...allCriteria(exercise)),
          reps: reps === 0 ? fc.constant<Reps>('set') : fc.constantFrom<Reps>('set', [1], [reps], [1, reps]),
          note: words,
        }),
        { maxLength: 6 },
      )
      .chain((flags) =>
        fc.subarray(allCriteria(exercise)).map((ticks) =>
          draft({
            exercise: exercise.id,
            reps,
            ticks,
            flags: flags.map(({ fault, criterion, severity, ...rest }) => ({
              ...rest,
              severity,
              criterion: fault?.criterion ?? criterion,
              fault: severity === 'keep' ? null : (fault?.id ?? null),
            })),
          }),
        ),
      ),
  );

/** Sessions of none to four exercises of the library, in every voice and unit, with and without pain. */
export const sessions: fc.Arbitrary<Review> = fc
  .record({
    exercises: fc.subarray([...catalogue.exercises], { maxLength: 4 }),
    voice: fc.constantFrom('coach' as const, 'self' as const),
    units: fc.constantFrom('kg' as const, 'lb' as const),
    experience: fc.constantFrom('new' as const, 'experienced' as const),
    goal: fc.constantFrom('growth' as const, 'strength' as const, 'skill' as const),
    minor: fc.boolean(),
    painNote: fc.constantFrom('', 'My knee hurts a little.'),
  })
  .chain(({ exercises, voice, painNote, ...trainee }) =>
    fc.tuple(...exercises.map(entryOf)).map((entries) =>
      sessionOf(entries, {
        voice,
        trainee: { name: 'Alva Brook', ...trainee },
        session: { id: 's', title: '', date: '2026-03-01', notes: '', painNote },
      }),
    ),
  );
