import { describe, expect, it } from 'vitest';
import type { RepMeasurement } from '../../../../engine/motion/measurement.ts';
import { missedIn, saidAsKnown } from '../../../../engine/motion/suggest/missedBefore.ts';
import type { Suggestion } from '../../../../engine/motion/suggestion.ts';
import { sayMeasuring } from '../../../../engine/wording/sayMeasuring.ts';
import { joints, pm, rep } from './sets.ts';

const nothing = { eccentric: null, pauseStretched: null, concentric: null, pauseShortened: null };
const lowered = (seconds: number, change: Partial<RepMeasurement> = {}): RepMeasurement =>
  rep(1, { durationsS: { ...nothing, eccentric: pm(seconds, 0.1) }, romM: pm(0.5, 0.02), ...change });

describe('what a person corrected', () => {
  it.each([
    ['within the ±', 2.09, []],
    ['to the edge of the ±', 2.1, []],
    ['beyond the ±', 2.11, ['eccentric']],
    ['beyond it the other way', 1.89, ['eccentric']],
  ])('%s', (_, seconds, missed) => {
    const corrected = lowered(seconds, { manualEdges: ['start'] });
    expect([...missedIn([lowered(2)], [corrected])]).toEqual(missed);
  });

  it('counts only in reps whose edges a person set', () => {
    expect([...missedIn([lowered(2)], [lowered(3)])]).toEqual([]);
    expect([...missedIn([], [lowered(3, { manualEdges: ['end'] })])]).toEqual([]);
  });

  it('tells range and depth from their own ±', () => {
    const wide = lowered(2, { manualEdges: ['end'], romM: pm(0.53, 0.02) });
    expect([...missedIn([lowered(2)], [wide])]).toEqual(['range']);
    const seen = lowered(2, { joints: joints({ depthM: pm(0.05, 0.03), depthFrom: 'joints' }) });
    const clicked = (metres: number) =>
      lowered(2, { joints: joints({ depthM: pm(metres, 0.01), depthFrom: 'clicks' }) });
    expect([...missedIn([seen], [clicked(0.03)])]).toEqual([]);
    expect([...missedIn([seen], [clicked(0.01)])]).toEqual(['depth']);
  });
});

describe('a suggestion whose number missed before', () => {
  const tooQuick: Suggestion = {
    id: 'eccentricTempo.tooQuick',
    criterion: 'eccentricTempo',
    fault: null,
    severity: 'adjust',
    reps: [1],
    atS: 11,
    measure: { name: 'eccentric', value: 1.2, plusMinus: 0.1, unit: 's' },
    message: {
      id: 'eccentricTime',
      values: {
        ...{ rep: 1, verb: 'lowers', value: 1.2, within: 0.1, alsoCount: 0, alsoReps: [] },
        ...{ asked: 'targetBetween', askedFromS: 2, askedToS: 3 },
      },
    },
  };
  const said = (missed: readonly 'eccentric'[], dismissed: readonly string[]) => {
    const known = { missed: new Set(missed), dismissed: new Set(dismissed) };
    return saidAsKnown([tooQuick], known).map(({ message }) => [
      sayMeasuring(message, 'en'),
      sayMeasuring(message, 'de'),
    ]);
  };

  it('is said as about, with its ±', () => {
    const about = [
      'Rep 1 lowers in about 1.2 s ± 0.1 s; the target is 2 to 3 s.',
      'Wiederholung 1: Absenken in etwa 1,2 s ± 0,1 s; Vorgabe: 2 bis 3 s.',
    ];
    expect(said(['eccentric'], [])).toEqual([about]);
    expect(said([], [tooQuick.id])).toEqual([about]);
  });

  it('is said as it is where another missed', () => {
    expect(said([], ['depth.short'])).toEqual([
      [
        'Rep 1 lowers in 1.2 s ± 0.1 s; the target is 2 to 3 s.',
        'Wiederholung 1: Absenken in 1,2 s ± 0,1 s; Vorgabe: 2 bis 3 s.',
      ],
    ]);
  });
});
