import { describe, expect, it } from 'vitest';
import { diffRubrics } from '../../engine/rubric/diffRubrics.ts';
import { exerciseRule, programmeRule } from '../../engine/rubric/rules.ts';
import { shipped, shippedUnder } from './shippedCatalogue.ts';

const [second, third] = [shippedUnder(2).rubric, shippedUnder(3).rubric];

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
