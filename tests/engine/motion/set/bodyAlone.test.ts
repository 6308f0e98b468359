import { readFileSync } from 'node:fs';
import path from 'node:path';
import * as v from 'valibot';
import { describe, expect, it } from 'vitest';
import type { SetMeasurement } from '../../../../engine/motion/measurement.ts';
import { measureSet } from '../../../../engine/motion/set/measureSet.ts';
import { setUpSchema } from '../../../../engine/recording/setUp.ts';
import { exercise } from '../../catalogue.ts';
import { bodiesOf, type KnownLifter, knownLifter, lifterNames } from '../joints/knownLifter.ts';

const patternOf = (name: KnownLifter['name']): string =>
  name.startsWith('hinge') ? 'hinge' : name.startsWith('split') ? 'lunge' : 'squat';

type Phases = { readonly eccentric: readonly [number, number]; readonly concentric: readonly [number, number] };

/** When each rep's phases truly begin and end, in seconds. */
function phasesOf(name: KnownLifter['name']): readonly Phases[] {
  const file = path.join(import.meta.dirname, `../../../footage/${name}.truth.json`);
  const { reps }: { readonly reps: readonly { readonly phases_s: Phases }[] } = JSON.parse(readFileSync(file, 'utf8'));
  return reps.map(({ phases_s: phases }) => phases);
}

/** What is measured of a rendered lifter from the joints alone, as if no disc had been found. */
function byBody(lifter: KnownLifter): SetMeasurement {
  const ticks = lifter.timesS.map((timeS) => Math.round(timeS * 90_000));
  return measureSet({
    recording: {
      disc: null,
      point: null,
      joints: { method: 'recorded', everyFrames: lifter.everyFrames, frames: [...bodiesOf(lifter)] },
      warnings: [],
    },
    table: { timeBase: { numerator: 1, denominator: 90_000 }, ticks, endTicks: (ticks.at(-1) ?? 0) + 3000 },
    shown: { width: lifter.width, height: lifter.height },
    realTimeFactor: 1,
    exercise: exercise({ pattern: patternOf(lifter.name), implement: 'barbell', trackedPoint: 'disc' }),
    view: null,
    setUp: v.parse(setUpSchema, {}),
    edges: [],
  });
}

/** Those that the recordings hold from their first frame to their last. */
const seenThroughout = lifterNames.filter((name) => name !== 'hinge-hevc');

describe.each(seenThroughout)('%s without a disc', (name) => {
  const lifter = knownLifter(name);
  const { reps, follows, followsBecause, calibration, warnings } = byBody(lifter);

  it('has its reps, by the body, near where they truly are', () => {
    expect(['shoulders', 'hips', 'head', 'hands']).toContain(follows);
    expect(followsBecause).toBe('noDisc');
    expect(reps).toHaveLength(lifter.reps.length);
    const off = reps.flatMap(({ phases: { eccentric, concentric } }, index) => {
      const truth = phasesOf(name)[index];
      if (!truth || !eccentric || !concentric) return [];
      return [
        Math.abs(eccentric.startS - truth.eccentric[0]),
        Math.abs(eccentric.endS - truth.eccentric[1]),
        Math.abs(concentric.startS - truth.concentric[0]),
        Math.abs(concentric.endS - truth.concentric[1]),
      ];
    });
    expect(off).toHaveLength(4 * lifter.reps.length);
    const sorted = off.toSorted((one, other) => one - other);
    // The figure sets out with minimum jerk, of which a tenth of the time goes by before a hundredth of the way can be seen.
    expect(sorted[sorted.length >> 1]).toBeLessThan(0.22);
    expect(sorted[Math.floor(0.9 * sorted.length)]).toBeLessThan(0.42);
  });

  it('gives lengths as about or not at all, and neither drift nor bounces', () => {
    if (calibration !== null) {
      expect(calibration.from).toBe('body');
      expect(calibration.relativeUncertainty).toBeGreaterThan(0.1);
    }
    for (const { romM, driftForwardM, bounces, downOnWayUpM } of reps) {
      expect(romM === null).toBe(calibration === null);
      expect([driftForwardM, bounces, downOnWayUpM]).toEqual([null, null, null]);
    }
    expect(warnings.map(({ id }) => id)).toContain(calibration === null ? 'fromBody' : 'aboutFromBody');
  });
});
