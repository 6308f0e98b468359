import { describe, expect, it } from 'vitest';
import { shipped } from './shippedCatalogue.ts';

const { cautions, exercises } = shipped;
const text = (applies: string): string =>
  cautions
    .filter((caution) => caution.applies === applies)
    .map((caution) => caution.text)
    .join(' ');

describe('the cautions', () => {
  it('always say that a letter is an opinion from video and not medical advice', () => {
    expect(text('always')).toMatch(/not medical advice/);
    expect(text('always')).toMatch(/clinician/);
    expect(text('always')).toMatch(/rules of the gym/);
    expect(text('always')).toMatch(/local law/);
  });

  it('lead a pain note to a licensed clinician without naming a cause', () => {
    expect(text('pain')).toMatch(/licensed clinician/);
    expect(text('pain')).toMatch(/does not name causes/);
    expect(text('pain')).toMatch(/emergency services/);
  });

  it('ask for an adult and a guardian where a minor trains', () => {
    expect(text('minor')).toMatch(/adult/);
    expect(text('minor')).toMatch(/guardian/);
  });

  it('have words for a stop flag', () => {
    expect(text('stop')).not.toBe('');
  });

  it('that belong to exercises are named by at least one, or by a fault', () => {
    const named = new Set(
      exercises.flatMap(({ cautions: own, faults }) => [...own, ...faults.flatMap((fault) => fault.caution ?? [])]),
    );
    const own = cautions.filter((caution) => caution.applies === 'exercise').map((caution) => caution.id);
    expect(own.filter((id) => !named.has(id))).toEqual([]);
  });

  it('warn of the lying press alone', () => {
    // Lombardi and Troxel 2003: most deaths in the files were at home, under a press done lying down.
    expect(exercises.find((exercise) => exercise.id === 'bench-press')?.cautions).toContain('lying-press-alone');
  });

  it('are whole sentences that diagnose nothing and promise nothing', () => {
    for (const caution of cautions) {
      expect(caution.text, caution.id).toMatch(/^[A-Z].*\.$/);
      expect(caution.text, caution.id).not.toMatch(/diagnos|guarantee|\bcure/i);
      expect(caution.source, caution.id).not.toBe('');
    }
  });
});
