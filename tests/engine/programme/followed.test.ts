import fc from 'fast-check';
import { expect, it } from 'vitest';
import { findExercise } from '../../../engine/exercises/catalogue.ts';
import { isAtHand, places } from '../../../engine/exercises/equipment.ts';
import { goals } from '../../../engine/exercises/exercise.ts';
import type { ProgrammeFinding } from '../../../engine/programme/finding.ts';
import { programmeFindings } from '../../../engine/programme/findings.ts';
import { hardSets } from '../../../engine/programme/hardSets.ts';
import type { PlannedSet } from '../../../engine/review/plan.ts';
import type { Entry, Review } from '../../../engine/review/review.ts';
import { shippedUnder } from '../../seeds/shippedCatalogue.ts';
import { inEnglish, planned, sessionOf } from './sessions.ts';

const catalogue = shippedUnder(3);

const aSet = fc.record(
  {
    reps: fc.constantFrom(1, 3, 4, 5, 6, 8, 10, 12, 15, 20, 30, 40),
    loadKg: fc.constantFrom(0, 12, 20, 60, 100),
    repsInReserve: fc.constantFrom(0, 1, 3, 4, 6),
    tempo: fc.constantFrom('2-0-X-0', '2-0-1-1', '2-0-1-3', '3-1-1-1', '3-0-X-2'),
  },
  { requiredKeys: ['reps'] },
);
const somePlan: fc.Arbitrary<PlannedSet[]> = fc.oneof(
  fc.tuple(aSet, fc.integer({ min: 1, max: 10 })).map(([set, count]) => Array.from({ length: count }, () => set)),
  fc.array(aSet, { minLength: 1, maxLength: 5 }),
);
const someEntries = fc
  .array(fc.tuple(fc.constantFrom(...catalogue.exercises.map(({ id }) => id)), somePlan), {
    minLength: 1,
    maxLength: 6,
  })
  .map((drawn) => drawn.map(([exercise, own], at): Entry => ({ ...planned(exercise, own), id: `e${at}` })));
const someSession = fc
  .record({
    goal: fc.constantFrom(...goals),
    experience: fc.constantFrom('new' as const, 'experienced' as const),
    equipment: fc.option(fc.constantFrom(...places), { nil: undefined }),
    entries: someEntries,
  })
  .map(({ entries, equipment, ...trainee }) =>
    sessionOf({ ...trainee, ...(equipment !== undefined && { equipment }) }, ...entries),
  );

const setsOf = (entry: Entry): PlannedSet[] => entry.plan?.sets ?? [];
const withSets = (entry: Entry, own: PlannedSet[]): Entry => ({ ...entry, plan: { sets: own } });
const hardOf = (entry: Entry): PlannedSet[] => {
  const exercise = findExercise(catalogue, entry.exercise);
  return exercise === undefined ? [] : hardSets(setsOf(entry), exercise);
};

/** A session in which the advice of a finding was followed to the letter; the same one where a plan can't hold it. */
function follow(review: Review, { advice, kind }: ProgrammeFinding): Review {
  const each = (change: (entry: Entry) => readonly Entry[]): Review => ({
    ...review,
    entries: review.entries.flatMap(change),
  });
  const eachSet = (ids: readonly string[], change: (set: PlannedSet) => PlannedSet): Review =>
    each((entry) => [ids.includes(entry.id) ? withSets(entry, setsOf(entry).map(change)) : entry]);
  switch (advice.kind) {
    case 'sets':
      return each((entry) => {
        const to = advice.changes.find(({ entryId }) => entryId === entry.id)?.to;
        if (to === undefined) return [entry];
        return to === 0 ? [] : [withSets(entry, hardOf(entry).slice(0, to))];
      });
    case 'exercise':
      return each((entry) => {
        const [exercise = entry.exercise] = advice.to;
        if (entry.id !== advice.entryId) return [entry];
        // A step that can be done is done for more reps.
        const reps = (own: PlannedSet): PlannedSet =>
          kind === 'ladder' ? { ...own, reps: Math.max(8, own.reps) } : own;
        return [{ ...withSets(entry, setsOf(entry).map(reps)), exercise }];
      });
    case 'order': {
      const place = (entry: Entry): number => advice.entryIds.indexOf(entry.id);
      return { ...review, entries: review.entries.toSorted((a, b) => place(a) - place(b)) };
    }
    case 'heaviestFirst':
      return each((entry) => [
        advice.entryIds.includes(entry.id)
          ? withSets(
              entry,
              setsOf(entry).toSorted((a, b) => (b.loadKg ?? 0) - (a.loadKg ?? 0)),
            )
          : entry,
      ]);
    case 'tempo': {
      const tempos = new Map(advice.changes.map(({ entryId, tempo }) => [entryId, tempo]));
      return each((entry) => {
        const tempo = tempos.get(entry.id);
        return [
          tempo === undefined
            ? entry
            : withSets(
                entry,
                setsOf(entry).map((set) => ({ ...set, tempo })),
              ),
        ];
      });
    }
    case 'reps':
      return eachSet(advice.entryIds, (set) => ({
        ...set,
        reps: Math.min(advice.to, Math.max(advice.from, set.reps)),
      }));
    case 'repsInReserve':
      return eachSet(advice.entryIds, (set) => ({ ...set, repsInReserve: advice.to }));
    case 'setUp':
    case 'rest':
      return review;
  }
}

const isPlanned = ({ advice }: ProgrammeFinding): boolean => advice.kind !== 'setUp' && advice.kind !== 'rest';

it('is never taken back by what is said once it was followed, and comes to an end', () => {
  fc.assert(
    fc.property(someSession, (start) => {
      const before = new Map(start.entries.map(({ id, exercise }) => [id, new Set([exercise])]));
      const done: string[] = [];
      let review = start;
      for (let step = 0; step < 40; step += 1) {
        const [next] = programmeFindings(review, catalogue).filter(isPlanned);
        if (next === undefined) return;
        done.push(`${next.kind} ${JSON.stringify(next.advice)}`);
        const { advice } = next;
        const after = follow(review, next);
        if (advice.kind === 'exercise') {
          const [to = ''] = advice.to;
          const had = before.get(advice.entryId);
          expect(had?.has(to), `back to ${to}: ${done.join(' > ')}`).toBe(false);
          had?.add(to);
        }
        const again = programmeFindings(after, catalogue).find(({ id }) => id === next.id);
        const isSame = JSON.stringify(again?.advice) === JSON.stringify(advice);
        expect(isSame, `asked again: ${done.join(' > ')}`).toBe(false);
        review = after;
      }
      expect.unreachable(`no end: ${done.join(' > ')}`);
    }),
    { numRuns: 1500 },
  );
});

it('names exercises that are others, of the library, and at hand', () => {
  fc.assert(
    fc.property(someSession, (review) => {
      for (const { advice, entryIds, message } of programmeFindings(review, catalogue)) {
        expect(new Set(entryIds).size).toBe(entryIds.length);
        expect(entryIds.every((id) => review.entries.some((entry) => entry.id === id))).toBe(true);
        if (advice.kind !== 'exercise') continue;
        expect(advice.to.length).toBeGreaterThan(0);
        const from = review.entries.find(({ id }) => id === advice.entryId)?.exercise;
        for (const id of advice.to) {
          const exercise = findExercise(catalogue, id);
          expect(exercise, message.id).toBeDefined();
          expect(id).not.toBe(from);
          if (exercise) expect(isAtHand(exercise, review.trainee.equipment ?? null)).toBe(true);
        }
      }
    }),
    { numRuns: 1500 },
  );
});

it('is said without a name twice, and without a gap', () => {
  fc.assert(
    fc.property(someSession, (review) => {
      const findings = programmeFindings(review, catalogue);
      expect(new Set(findings.map(({ id }) => id)).size).toBe(findings.length);
      const said = findings.map(inEnglish).map(({ what, suggestion }) => `${what} ${suggestion}`);
      expect(said).toEqual([...new Set(said)]);
      for (const finding of findings) {
        const { what, suggestion } = inEnglish(finding);
        for (const text of [what, suggestion]) {
          expect(text).not.toMatch(/ {2}| ,|undefined|NaN|Infinity|\(\)|the the |\broman|: \./);
          expect(text).toMatch(/^[A-Z0-9].*\.$/);
        }
      }
    }),
    { numRuns: 800 },
  );
});
