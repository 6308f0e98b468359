import fc from 'fast-check';
import { expect, it } from 'vitest';
import { gradeSession } from '../../../engine/grading/gradeSession.ts';
import { letterDocument } from '../../../engine/letter/letter.ts';
import { planLetter } from '../../../engine/letter/planLetter.ts';
import { writeLetter } from '../../../engine/letter/writeLetter.ts';
import type { Review } from '../../../engine/review/review.ts';
import { sayFinding } from '../../../engine/wording/sayGrade.ts';
import { catalogue, linesOf, sessions } from './sample.ts';

const numbersIn = (text: string): string[] => text.match(/\d+(?:[.,:]\d+)*/g) ?? [];

/** Every string of a value. */
function textsOf(value: unknown): string[] {
  if (typeof value === 'string') return [value];
  if (typeof value !== 'object' || value === null) return [];
  return Object.values(value).flatMap(textsOf);
}

/** Every number of a value. */
function figuresOf(value: unknown): number[] {
  if (typeof value === 'number') return [value];
  if (typeof value !== 'object' || value === null) return [];
  return Object.values(value).flatMap(figuresOf);
}

/** A figure as people may write it: whole, to one decimal either way, in per cent; nothing else. */
const written = (value: number): string[] => [
  String(value),
  String(Math.floor(value * 10 + 1e-9) / 10),
  String(Math.round(value * 10) / 10),
  `${Math.floor(value * 100 + 1e-9)}`,
];

/** Media seconds as m:ss, the second they fall in. */
const clock = (seconds: number): string =>
  `${Math.floor(seconds / 60)}:${String(Math.floor(seconds % 60)).padStart(2, '0')}`;

/** What the session would gain without a fault in all its exercises: it is graded again, the fault ticked as fine. */
function jointGains(review: Review): number[] {
  const scoreOf = (one: Review): number => {
    const { state } = gradeSession(one, catalogue);
    return state.kind === 'none' ? 0 : state.score;
  };
  const corrective = review.entries.flatMap(({ exercise, flags }) =>
    flags.flatMap((flag) => (flag.severity === 'keep' ? [] : [{ exercise, flag }])),
  );
  type Remark = (typeof corrective)[number];
  // A return is a lowering where the load goes sideways: one thing under two names.
  const thing = ({ flag: { fault, criterion } }: Remark): string => (fault ?? criterion).replace(/Return$/, 'Lowering');
  // Remarks without a fault in the same words are one thing, whatever criterion they stand under.
  const unnamed = corrective.filter(({ flag }) => flag.fault === null);
  const saidUnder = ({ exercise, flag }: Remark): string => {
    const notes = unnamed
      .filter((one) => one.exercise === exercise && one.flag.criterion === flag.criterion)
      .map((one) => one.flag.note.trim());
    return JSON.stringify([exercise, ...[...new Set(notes)].sort()]);
  };
  const groups = [...Map.groupBy(corrective, thing).values(), ...Map.groupBy(unnamed, saidUnder).values()];
  return groups.map((group) => {
    const gone = new Set(group.map(({ flag }) => flag));
    const isOfIt = (flag: Remark['flag']): boolean => gone.has(flag);
    const entries = review.entries.map((entry) => ({
      ...entry,
      flags: entry.flags.filter((flag) => !isOfIt(flag)),
      ticks: [
        ...entry.ticks,
        ...entry.flags.filter(isOfIt).map(({ clip, criterion, reps }) => ({ clip, criterion, reps })),
      ],
    }));
    return scoreOf({ ...review, entries }) - scoreOf(review);
  });
}

/** Everything a number of the letter may come from, gathered without the letter's own code. */
function knownNumbers(review: Review): ReadonlySet<string> {
  const grade = gradeSession(review, catalogue);
  const findings = grade.findings.map((finding) => sayFinding(finding, 'en'));
  const done = new Set(review.entries.map(({ exercise }) => exercise));
  const exercises = catalogue.exercises.filter(({ id }) => done.has(id));
  const loads = review.entries.flatMap(({ plan, clips }) => [
    ...(plan?.sets ?? []).map((set) => set.loadKg),
    ...clips.map(({ loadKg }) => loadKg),
  ]);
  const pounds = loads.flatMap((kg) => (kg === undefined ? [] : [Math.round((kg / 0.453_592_37) * 2) / 2]));
  const moments = review.entries.flatMap(({ flags }) =>
    flags.map(({ at }) => ('frame' in at ? at.frame / 30 : at.seconds)),
  );
  const reps = review.entries.flatMap(({ clips }) => clips.flatMap((clip) => clip.reps)).length;
  const counts = Math.max(reps, 10, review.entries.flatMap(({ flags }) => flags).length);
  const [year = '', month = '', day = ''] = review.session.date.split('-');
  return new Set([
    ...textsOf([exercises, catalogue.cautions, catalogue.rubric, findings, review]).flatMap(numbersIn),
    ...figuresOf([grade, review, catalogue.rubric.stopCap, pounds, jointGains(review)]).flatMap(written),
    ...moments.map(clock),
    ...Array.from({ length: counts + 1 }, (_, count) => String(count)),
    ...[year, String(Number(month)), String(Number(day)), '100', String(catalogue.rubric.version)],
  ]);
}

it('says no number that is not in the session, its grade, or the texts of the library', () => {
  fc.assert(
    fc.property(sessions, fc.constantFrom('full' as const, 'short' as const), (review, length) => {
      const known = knownNumbers(review);
      const plan = planLetter(review, gradeSession(review, catalogue), catalogue);
      const lines = linesOf(letterDocument(writeLetter(plan, { length, tone: 'plain', language: 'en' })));
      const strange = lines.flatMap((line) =>
        numbersIn(line)
          .filter((number) => !known.has(number))
          .map((number) => `${number} in ${line}`),
      );
      expect(strange).toEqual([]);
    }),
    { numRuns: 500 },
  );
});

it('would catch a number that is made up', () => {
  const review = fc.sample(sessions, 1)[0];
  if (review === undefined) throw new Error('no session');
  expect(knownNumbers(review).has('86.47')).toBe(false);
});
