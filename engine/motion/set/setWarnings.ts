import type { Exercise, View } from '../../exercises/exercise.ts';
import { type Warning, warning } from '../../recording/warnings.ts';
import type { SetMeasurement } from '../measurement.ts';
import { isOfBody, type Tracked } from '../source/tracked.ts';
import { offAxisLimitsDeg, type Scale } from './calibrate.ts';
import { bodyRangeShare } from './repMeasurement.ts';
import { medianSpacing } from './tracked.ts';

/** Below this many frames a second the ends of phases blur. */
const fewFramesPerSecond = 20;

/** What to know of a set's numbers: frame rate, source, camera. */
export function warningsOf(
  view: View | null,
  {
    timesS,
    scale,
    leanDeg,
    facing,
    follows,
  }: {
    readonly follows: Tracked['follows'];
    readonly timesS: readonly number[];
    readonly scale: Scale | null;
    readonly leanDeg: number | null;
    readonly facing: 'left' | 'right' | null;
  },
): Warning[] {
  const warnings: Warning[] = [];
  const framesPerSecond = 1 / medianSpacing(timesS);
  if (framesPerSecond < fewFramesPerSecond) {
    warnings.push(
      warning('fewFramesPerSecond', {
        framesPerSecond: Math.round(framesPerSecond),
        seconds: Math.round(100 / framesPerSecond) / 100,
      }),
    );
  }
  if (view !== null && view !== 'side') warnings.push(warning('notFromSide', {}));
  if (isOfBody(follows)) {
    warnings.push(fromBody(scale));
    return warnings;
  }
  if (!scale) {
    warnings.push(warning('noScale', {}));
    return warnings;
  }
  const offAxisDeg = scale.calibration.offAxisDeg ?? 0;
  if (offAxisDeg > offAxisLimitsDeg.refuse) {
    warnings.push(warning('farOffAxis', { degrees: Math.round(offAxisDeg) }));
  } else if (offAxisDeg > offAxisLimitsDeg.warn) {
    warnings.push(warning('offAxis', { degrees: Math.round(offAxisDeg) }));
  }
  if (leanDeg === null) {
    warnings.push(warning('nothingUpright', {}));
  }
  if (facing === null) warnings.push(warning('facingUnknown', {}));
  return warnings;
}

/** Why there are no reps. */
export const noRepWarning = ({ beginsWith }: Exercise): Warning =>
  beginsWith === 'hold' ? warning('hold', {}) : warning('noRep', {});

/** What to know of numbers that a body gives. */
function fromBody(scale: Scale | null): Warning {
  if (!scale) return warning('fromBody', {});
  const { from, relativeUncertainty } = scale.calibration;
  if (from !== 'body') return warning('lengthsFromBody', {});
  return warning('aboutFromBody', { percent: Math.round(100 * Math.hypot(relativeUncertainty, bodyRangeShare)) });
}

/** What recording says of a disc is told where a disc is followed; elsewhere the reason for what is followed says it. */
export function ofRecording(warnings: readonly Warning[], follows: SetMeasurement['follows']): readonly Warning[] {
  return isOfBody(follows) ? warnings.filter(({ id }) => !ofDisc.includes(id)) : warnings;
}

const ofDisc: readonly Warning['id'][] = ['noDisc', 'discLost', 'discDoubtful'];
