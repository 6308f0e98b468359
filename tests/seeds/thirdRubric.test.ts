import { describe, expect, it } from 'vitest';
import { faultsFor } from '../../engine/exercises/catalogue.ts';
import { narrowerOf, views } from '../../engine/exercises/exercise.ts';
import { diffRubrics } from '../../engine/rubric/diffRubrics.ts';
import { exerciseRule, programmeRule } from '../../engine/rubric/rules.ts';
import { shipped, shippedUnder } from './shippedCatalogue.ts';

const [second, third] = [shippedUnder(2).rubric, shippedUnder(3).rubric];
const exercises = shippedUnder(3).exercises;

describe('the third version of the rubric', () => {
  it('keeps what a remark costs, the marks and the anchors, and differs in how scores are put together', () => {
    const places = diffRubrics(second, third).map(({ path }) => path.split('.')[0]);
    expect(places.filter((place) => place === 'cost' || place === 'letters')).toEqual([]);
    expect(new Set(places.filter((place) => place !== 'criteria'))).toEqual(
      new Set(['version', 'lowestShare', 'sessionShare', 'lookedAt', 'exerciseScore', 'programmeCost', 'stopCap']),
    );
  });

  it('lets no session stand above the cap of its lifts', () => {
    expect(third.stopCap.session).toBeLessThanOrEqual(third.stopCap.exercise);
  });

  it('takes 1, 2.5 and 6 points off for a finding of the programme, and 10 at most', () => {
    expect(programmeRule(third)).toMatchObject({
      kind: 'cost',
      cost: { prefer: 1, adjust: 2.5, correct: 6 },
      most: 10,
    });
  });

  it('leaves the older versions with the arithmetic they had: 0.75 mean and 0.25 lowest, 0.8 and 0.2', () => {
    for (const { rubric } of [shipped, shippedUnder(2)]) {
      expect(exerciseRule(rubric)).toEqual({ meanShare: 0.75, lowest: [{ rank: 1, under: 100, share: 0.25 }] });
      expect(programmeRule(rubric)).toEqual({ kind: 'share', technique: 0.8, programme: 0.2 });
      expect(rubric.lookedAt ?? 'criterion').toBe('criterion');
    }
  });
});

describe('set-up and equipment, from the third version on', () => {
  it.each(exercises)('are judged on $id, for a twentieth of its score, from every view', (exercise) => {
    expect(exercise.criteria.find(({ id }) => id === 'setUp')?.share).toBeCloseTo(0.05, 9);
    for (const view of views) expect(exercise.judgedFrom[view]).toContain('setUp');
  });

  it.each(exercises)('$id offers at least four faults for each of its criteria', (exercise) => {
    for (const { id } of exercise.criteria) expect(faultsFor(exercise, id).length, id).toBeGreaterThanOrEqual(4);
  });

  it('are part of bracing before, and of the spine position before that', () => {
    for (const { id, criteria, faults } of shippedUnder(2).exercises) {
      const stance = faults.find((fault) => fault.id === 'baseTooNarrow');
      const bracing = criteria.some((criterion) => criterion.id === 'bracing');
      expect(stance?.criterion, id).toBe(bracing ? 'bracing' : 'spinePosition');
    }
    for (const { criteria } of shipped.exercises) expect(criteria.map(({ id }) => id)).not.toContain('setUp');
  });

  it('take the same part of every other criterion', () => {
    for (const [at, { id, criteria }] of exercises.entries()) {
      for (const before of shippedUnder(2).exercises[at]?.criteria ?? []) {
        const now = criteria.find((criterion) => criterion.id === before.id)?.share ?? Number.NaN;
        expect(now, `${id} ${before.id}`).toBeGreaterThan(0.93 * before.share);
        expect(now, `${id} ${before.id}`).toBeLessThan(before.share);
      }
    }
  });

  it('hold what a coach would look for there, whatever it stood under before', () => {
    const place = (id: string, fault: string) =>
      exercises.find((exercise) => exercise.id === id)?.faults.find((one) => one.id === fault)?.criterion;
    const expected = [
      ['heel-raised-squat', 'wedgeTooHigh'],
      ['heel-raised-squat', 'wedgeSlides'],
      ['front-squat', 'baseTooNarrow'],
      ['back-squat', 'safetyArmsMissing'],
      ['bench-press', 'noSpotterOrArms'],
      ['leg-press', 'stopsNotSet'],
      ['rear-foot-raised-split-squat', 'benchMoves'],
      ['deadlift', 'collarsMissing'],
    ] as const;
    for (const [id, fault] of expected) expect([id, fault, place(id, fault)]).toEqual([id, fault, 'setUp']);
  });

  it('name a caution for every fault by which something could give way', () => {
    const unsafe = exercises.flatMap(({ faults }) =>
      faults.filter(
        (fault) => fault.usualSeverity === 'stop' && fault.everywhere && narrowerOf(fault).includes('setUp'),
      ),
    );
    expect(unsafe.length).toBeGreaterThan(0);
    expect(unsafe.filter((fault) => fault.caution === undefined).map((fault) => fault.id)).toEqual([]);
  });

  it('offer a fault of equipment only where that equipment is used', () => {
    const offered = (id: string) => exercises.find((one) => one.id === id)?.faults.map((fault) => fault.id) ?? [];
    expect(offered('back-squat')).toContain('discNotSecured');
    expect(offered('prone-back-raise')).not.toContain('discNotSecured');
    expect(offered('prone-back-raise')).not.toContain('collarsMissing');
  });
});
