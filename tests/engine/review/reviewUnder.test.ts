import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import type { Exercise } from '../../../engine/exercises/exercise.ts';
import { gradeSession } from '../../../engine/grading/gradeSession.ts';
import { parseReview } from '../../../engine/review/parseReview.ts';
import type { Flag, Review } from '../../../engine/review/review.ts';
import { reviewUnder } from '../../../engine/review/reviewUnder.ts';
import { severities } from '../../../engine/rubric/rubric.ts';
import { shippedUnder } from '../../seeds/shippedCatalogue.ts';
import { clip, entry, flag, review, ticks } from '../reviews.ts';

const first = shippedUnder(1);
const second = shippedUnder(2);
const third = shippedUnder(3);
const there = (one: Review) => reviewUnder(one, { from: first, to: second });
const back = (one: Review) => reviewUnder(one, { from: second, to: first });
const asked = { ...review(), rubric: { id: 'rackside', version: 1 } };

const squat = (...flags: readonly Flag[]): Review => ({
  ...asked,
  entries: [entry({ exercise: 'back-squat', flags: [...flags] })],
});
const flagsOf = (one: Review) => one.entries.flatMap((each) => each.flags);
const ticksOf = (one: Review) => one.entries.flatMap((each) => each.ticks);

/** A flag as the exercise allows it: any criterion, with one of its faults or none. */
const flagFor = (exercise: Exercise): fc.Arbitrary<Flag> =>
  fc
    .record({
      criterion: fc.constantFrom(...exercise.criteria.map((one) => one.id)),
      severity: fc.constantFrom(...severities),
      pick: fc.nat(),
    })
    .map(({ criterion, severity, pick }) => {
      const known = exercise.faults.filter((fault) => fault.criterion === criterion);
      const fault = severity === 'keep' || pick % 4 === 0 ? null : (known[pick % known.length]?.id ?? null);
      return flag({ criterion, severity, fault });
    });

const reviewOf = (exercises: readonly Exercise[], version: number): fc.Arbitrary<Review> =>
  fc
    .constantFrom(...exercises)
    .chain((exercise) =>
      fc.record({
        exercise: fc.constant(exercise),
        flags: fc.array(flagFor(exercise), { maxLength: 6 }),
        ticked: fc.subarray(exercise.criteria.map((one) => one.id)),
      }),
    )
    .map(({ exercise, flags, ticked }) => ({
      ...asked,
      rubric: { id: 'rackside', version },
      entries: [
        entry({
          exercise: exercise.id,
          clips: [clip()],
          flags: flags.map((one, i) => ({ ...one, id: `f${i}` })),
          ticks: ticks(...ticked),
        }),
      ],
    }));

const ofFirst = reviewOf(first.exercises, 1);
const ofSecond = reviewOf(second.exercises, 2);
const ofThird = reviewOf(third.exercises, 3);

describe('a review under another version of the rubric', () => {
  it('names that version', () => {
    expect(there(asked).rubric).toEqual({ id: 'rackside', version: 2 });
  });

  it('goes down from the narrowest criterion to the next one that is judged', () => {
    const flags = [flag({ criterion: 'setUp', severity: 'adjust' })];
    const placesIn = (exercise: string) => {
      const one = { ...asked, rubric: { id: 'rackside', version: 3 }, entries: [entry({ exercise, flags })] };
      return [second, first].map((to) =>
        flagsOf(reviewUnder(one, { from: third, to })).map(({ criterion }) => criterion),
      );
    };
    expect(placesIn('back-squat')).toEqual([['bracing'], ['spinePosition']]);
    expect(placesIn('push-up')).toEqual([['spinePosition'], ['spinePosition']]);
  });

  it('has each flag where its fault belongs', () => {
    const one = squat(flag({ criterion: 'barPath', severity: 'stop', fault: 'safetyArmsMissing' }));
    expect(flagsOf(there(one)).map(({ criterion }) => criterion)).toEqual(['bracing']);
    expect(flagsOf(back(there(one)))).toEqual(flagsOf(one));
  });

  it('has a flag without a fault where it was, or under what its criterion is part of', () => {
    const one = squat(
      flag({ criterion: 'gaze', severity: 'prefer' }),
      flag({ id: 'f2', criterion: 'depth', severity: 'keep' }),
    );
    expect(flagsOf(back(one)).map(({ criterion }) => criterion)).toEqual(['headPosition', 'depth']);
  });

  it('keeps the ticks that mean something there, and makes none up', () => {
    const ticked = [entry({ exercise: 'back-squat', ticks: ticks('depth', 'bracing', 'gaze') })];
    expect(ticksOf(back({ ...asked, entries: ticked })).map(({ criterion }) => criterion)).toEqual(['depth']);
  });

  it('is the same review under its own version', () => {
    fc.assert(
      fc.property(ofFirst, (one) => {
        expect(reviewUnder(one, { from: first, to: first })).toEqual(one);
        expect(gradeSession(reviewUnder(one, { from: first, to: first }), first)).toEqual(gradeSession(one, first));
      }),
    );
  });

  it('is a review that the other version takes', () => {
    fc.assert(
      fc.property(ofFirst, ofSecond, (older, newer) => {
        expect(parseReview(there(older), second)).toMatchObject({ ok: true });
        expect(parseReview(back(newer), first)).toMatchObject({ ok: true });
      }),
    );
  });

  it('comes back whole from the newer version: every flag, its fault and every tick', () => {
    fc.assert(
      fc.property(ofFirst, (one) => {
        expect(back(there(one))).toEqual(one);
      }),
    );
  });

  it('comes back from the older version with every flag and its fault, and with no tick that was not there', () => {
    fc.assert(
      fc.property(ofSecond, (one) => {
        const again = there(back(one));
        const named = (each: Review) => flagsOf(each).map(({ id, fault, severity }) => ({ id, fault, severity }));
        expect(named(again)).toEqual(named(one));
        for (const tick of ticksOf(again)) expect(ticksOf(one)).toContainEqual(tick);
      }),
    );
  });

  it.each([first, second])(
    'of the third version comes back from an older one with every flag and its fault',
    (older) => {
      fc.assert(
        fc.property(ofThird, (one) => {
          const moved = reviewUnder(one, { from: third, to: older });
          expect(parseReview(moved, older)).toMatchObject({ ok: true });
          const again = reviewUnder(moved, { from: older, to: third });
          const named = (each: Review) => flagsOf(each).map(({ id, fault, severity }) => ({ id, fault, severity }));
          expect(named(again)).toEqual(named(one));
        }),
      );
    },
  );
});
