import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { daysBetween, latenessOf } from '../../../engine/night/lateness.ts';
import { clipsLeft, nextStep, sessionState, sessionStates } from '../../../engine/night/sessionState.ts';

describe('the state of a session', () => {
  it('follows its way from the first clip to the trainee', () => {
    const at = (touched: boolean, grade: 'none' | 'provisional' | 'whole', sent: 'never' | 'asItIs' | 'changedSince') =>
      sessionState({ touched, grade, sent });
    expect(at(false, 'none', 'never')).toBe('new');
    expect(at(true, 'none', 'never')).toBe('inWork');
    expect(at(true, 'provisional', 'never')).toBe('inWork');
    expect(at(true, 'whole', 'never')).toBe('judged');
    expect(at(true, 'whole', 'asItIs')).toBe('sent');
    expect(at(true, 'whole', 'changedSince')).toBe('changedSince');
    expect(at(true, 'provisional', 'asItIs')).toBe('sent');
  });
});

describe('the next step of a session', () => {
  const facts = { state: 'new', clips: 3, mark: '', provisional: false } as const;

  it('is its clips, then the judgement, then the letter, and none once it is sent', () => {
    expect(nextStep({ ...facts, clips: 0 })).toBe('import');
    expect(nextStep(facts)).toBe('judge');
    expect(nextStep({ ...facts, state: 'inWork', mark: 'B', provisional: true })).toBe('judge');
    expect(nextStep({ ...facts, state: 'judged', mark: 'B' })).toBe('letter');
    expect(nextStep({ ...facts, state: 'sent', mark: 'B' })).toBe('none');
  });

  it('is the letter again where a sent session was changed and still has its grade, else the judgement', () => {
    expect(nextStep({ ...facts, state: 'changedSince', mark: 'B' })).toBe('letter');
    expect(nextStep({ ...facts, state: 'changedSince', mark: 'B', provisional: true })).toBe('judge');
    expect(nextStep({ ...facts, state: 'changedSince' })).toBe('judge');
  });
});

describe('the clips left', () => {
  it('are the share nobody looked at, and none once the grade is whole', () => {
    expect(clipsLeft({ state: 'new', clips: 3, coverage: 0 })).toBe(3);
    expect(clipsLeft({ state: 'inWork', clips: 3, coverage: 2 / 3 })).toBe(1);
    expect(clipsLeft({ state: 'inWork', clips: 4, coverage: 0.3 })).toBe(3);
    expect(clipsLeft({ state: 'judged', clips: 4, coverage: 0.7 })).toBe(0);
  });

  it('are never more than the clips, nor fewer than none', () => {
    fc.assert(
      fc.property(
        fc.constantFrom(...sessionStates),
        fc.nat({ max: 500 }),
        fc.double({ min: 0, max: 1, noNaN: true }),
        (state, clips, coverage) => {
          const left = clipsLeft({ state, clips, coverage });
          expect(Number.isInteger(left)).toBe(true);
          expect(left).toBeGreaterThanOrEqual(0);
          expect(left).toBeLessThanOrEqual(clips);
        },
      ),
    );
  });
});

describe('lateness', () => {
  it('counts days on the calendar, over months, leap days and the change of clocks', () => {
    expect(daysBetween('2026-03-04', '2026-03-04')).toBe(0);
    expect(daysBetween('2026-02-27', '2026-03-02')).toBe(3);
    expect(daysBetween('2028-02-27', '2028-03-02')).toBe(4);
    expect(daysBetween('2026-03-28', '2026-03-30')).toBe(2);
    expect(daysBetween('2026-03-04', '2026-03-01')).toBe(-3);
  });

  it('begins on the day after the one that was promised', () => {
    expect(latenessOf('2026-03-04', '2026-03-05', 3)).toEqual({ kind: 'inTime', daysLeft: 2 });
    expect(latenessOf('2026-03-04', '2026-03-07', 3)).toEqual({ kind: 'today' });
    expect(latenessOf('2026-03-04', '2026-03-08', 3)).toEqual({ kind: 'late', days: 1 });
  });
});
