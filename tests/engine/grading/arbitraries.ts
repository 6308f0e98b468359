import fc from 'fast-check';
import type { EntryGrade, SessionGrade } from '../../../engine/grading/grade.ts';
import { equalSets } from '../../../engine/review/plan.ts';
import type { Clip, Entry, Flag, Reps, Review, Tick } from '../../../engine/review/review.ts';
import { type Severity, severities } from '../../../engine/rubric/rubric.ts';
import { catalogueOf, exercise, shippedRubric } from '../catalogue.ts';
import { allSix, reps, review } from '../reviews.ts';

/** Two exercises: shares that add up to one exactly, and shares that only nearly do in binary. */
export const catalogue = catalogueOf(
  exercise(),
  exercise({
    id: 'other',
    criteria: [
      { id: 'depth', share: 0.3 },
      { id: 'eccentricTempo', share: 0.1 },
      { id: 'pauses', share: 0.1 },
      { id: 'barPath', share: 0.1 },
      { id: 'headPosition', share: 0.1 },
      { id: 'spinePosition', share: 0.3 },
    ],
  }),
);

/** The same exercises under the first rubric, which counts whole criteria, and under the third, which counts cells. */
export const catalogues = [
  ['whole criteria', catalogue],
  ['cells', { ...catalogue, rubric: shippedRubric(3) }],
] as const;

/** A mark on the reps of one criterion: a flag or a tick. */
type Mark = Pick<Tick, 'clip' | 'criterion' | 'reps'>;

/** The cells of the scorecard that a mark reaches: each rep, or the set of a clip without marked reps. */
const cellsOf = ({ clip: id, criterion: about, reps: which }: Mark, { clips: all }: Entry): string[] => {
  const marked = all.find((clip) => clip.id === id)?.reps.map((rep) => rep.index) ?? [];
  const own = which === 'set' ? marked : marked.filter((index) => which.includes(index));
  return (marked.length === 0 ? ['set'] : own).map((cell) => `${id} ${about} ${cell}`);
};

/** Whether every cell that a mark reaches has been looked at already. */
export function isLookedAt(entry: Entry, mark: Mark): boolean {
  const seen = new Set([...entry.flags, ...entry.ticks].flatMap((one) => cellsOf(one, entry)));
  return cellsOf(mark, entry).every((cell) => seen.has(cell));
}

/** A tick where a flag is: what looking there and finding nothing would leave. */
export const tickFor = ({ clip, criterion: about, reps: which }: Mark): Tick => ({
  clip,
  criterion: about,
  reps: which,
});

const faultOf: Readonly<Record<string, string>> = {
  depth: 'shortOfDepth',
  eccentricTempo: 'quickEccentric',
  pauses: 'noLongPause',
  barPath: 'pathForward',
  headPosition: 'headUp',
  spinePosition: 'rounding',
};

const criterion = fc.constantFrom(...allSix);
const repsOf = (clip: Clip): fc.Arbitrary<Reps> =>
  clip.reps.length === 0
    ? fc.constant('set')
    : fc.oneof(
        fc.constant<Reps>('set'),
        fc.subarray(
          clip.reps.map((rep) => rep.index),
          { minLength: 1 },
        ),
      );

const clips = (entryId: string): fc.Arbitrary<Clip[]> =>
  fc
    .array(fc.record({ count: fc.nat({ max: 6 }), view: fc.constantFrom('side', 'front', 'rear', 'oblique', null) }), {
      minLength: 1,
      maxLength: 3,
    })
    .map((drawn) =>
      drawn.map(({ count, view }, i) => ({
        id: `${entryId}-${i}`,
        name: `Set ${i + 1}`,
        view,
        realTimeFactor: 1,
        reps: reps(count),
      })),
    );

/** A flag on one of the clips; corrective unless other severities are asked for. */
export const flagOn = (
  onClips: readonly Clip[],
  id: string,
  ofSeverities: readonly Severity[] = ['prefer', 'adjust', 'correct', 'stop'],
): fc.Arbitrary<Flag> =>
  fc.constantFrom(...onClips).chain((clip) =>
    fc
      .record({ criterion, severity: fc.constantFrom(...ofSeverities), named: fc.boolean(), reps: repsOf(clip) })
      .map(({ criterion: about, severity, named, reps: which }) => ({
        id,
        clip: clip.id,
        criterion: about,
        fault: named && severity !== 'keep' ? (faultOf[about] ?? null) : null,
        severity,
        reps: which,
        at: { seconds: 1 },
        note: '',
        cue: '',
      })),
  );

const tickOn = (onClips: readonly Clip[]): fc.Arbitrary<Tick> =>
  fc.constantFrom(...onClips).chain((clip) => fc.record({ clip: fc.constant(clip.id), criterion, reps: repsOf(clip) }));

const flagCount = { minLength: 0, maxLength: 8 };
const flagsOn = (onClips: readonly Clip[], entryId: string): fc.Arbitrary<Flag[]> =>
  fc
    .array(flagOn(onClips, '', severities), flagCount)
    .map((flags) => flags.map((flag, i) => ({ ...flag, id: `${entryId}-f${i}` })));

/** An entry of one to three clips, with flags and ticks of every kind. */
export const entryOf = (id: string): fc.Arbitrary<Entry> =>
  clips(id).chain((drawn) =>
    fc.record({
      id: fc.constant(id),
      exercise: fc.constantFrom('squat', 'other'),
      clips: fc.constant(drawn),
      flags: flagsOn(drawn, id),
      ticks: fc.array(tickOn(drawn), { minLength: 0, maxLength: 8 }),
    }),
  );

export const entries = entryOf('e');

const sets = fc.option(fc.integer({ min: 1, max: 8 }), { nil: undefined });
const plan = fc.option(fc.record({ sets: fc.integer({ min: 1, max: 5 }), reps: fc.integer({ min: 1, max: 40 }) }), {
  nil: undefined,
});

/** A session of one to three entries, some with a plan, some with their sets stated. */
export const reviews: fc.Arbitrary<Review> = fc
  .integer({ min: 1, max: 3 })
  .chain((count) =>
    fc.tuple(
      ...Array.from({ length: count }, (_, i) =>
        fc.tuple(entryOf(`e${i}`), sets, plan).map(
          ([entry, setsDone, planned]): Entry => ({
            ...entry,
            ...(setsDone === undefined ? {} : { setsDone }),
            ...(planned === undefined ? {} : { plan: equalSets(planned) }),
          }),
        ),
      ),
    ),
  )
  .map((drawn) => review(...drawn));

/** The score of a grade; null where there is none. */
export const scoreOf = (grade: EntryGrade | SessionGrade): number | null =>
  grade.state.kind === 'none' ? null : grade.state.score;

/** Scores are given to a billionth of a point; two of them may differ by one such step through rounding. */
export const step = 2e-9;
