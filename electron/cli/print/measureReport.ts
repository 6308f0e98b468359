import type { Exercise } from '../../../engine/exercises/exercise.ts';
import type { Calibration, Measured, RepMeasurement, SetMeasurement } from '../../../engine/motion/measurement.ts';
import { followedParts } from '../../../engine/wording/english/following.ts';
import { followedBecauseForCoach } from '../../../engine/wording/english/measuringForCoach.ts';
import { sayMeasuring, sayWarningToCoach } from '../../../engine/wording/sayMeasuring.ts';
import { sayDoubts } from '../../../engine/wording/sayOffered.ts';
import { sayProblem } from '../../../engine/wording/sayProblem.ts';
import { sayViewWithAzimuth } from '../../../engine/wording/sayView.ts';
import type { MeasuredFile } from '../sources/measureFiles.ts';
import { count, percent, shortNumber } from './numbers.ts';
import { numberColumns, textPairs, textTable } from './table.ts';

/** What `measure` prints about one clip, for people. */
export function measureReport(measured: MeasuredFile, exercise: Exercise): string {
  if (measured.kind === 'failed')
    return `${measured.file}\n  not measured: ${sayProblem(measured.problem.message, 'en')}\n`;
  const { file, measurement, suggestions, probe } = measured;
  const sections = [
    `${file}: ${exercise.name}, ${count(measurement.reps.length, 'rep')}\n`,
    textPairs(factsOf(measurement, probe.realTimeFactor)),
    measurement.reps.length === 0 ? '' : barTable(measurement),
    measurement.reps.some(({ joints }) => joints !== null) ? jointTable(measurement.reps) : '',
    list(
      'Suggestions',
      suggestions.map(({ severity, message }) => `${severity}: ${sayMeasuring(message, 'en')}`),
    ),
    list(
      'Not counted',
      measurement.offered.map(
        (rep) => `${rep.startS.toFixed(2)} s to ${rep.endS.toFixed(2)} s: ${sayDoubts(rep, 'en')}`,
      ),
    ),
    list(
      'Warnings',
      measurement.warnings.map((one) => sayWarningToCoach(one, 'en')),
    ),
  ];
  return sections.filter((section) => section !== '').join('\n');
}

function factsOf(
  { follows, followsBecause, track, calibration, facing, view, set }: SetMeasurement,
  factor: number,
): [string, string][] {
  const seen = track.frames === 0 ? 'no frames' : `${track.frames - track.lost} of ${count(track.frames, 'frame')}`;
  return [
    ['Follows', `${followedParts[follows]}, because ${followedBecauseForCoach[followsBecause]}`],
    ['Seen', `in ${seen}, confidence ${percent(track.meanConfidence)}`],
    ['Scale', calibration === null ? 'none, so no distances and speeds' : scaleOf(calibration)],
    ['View', view === null ? 'can’t be told from the joints' : sayViewWithAzimuth(view, 'en')],
    ['Facing', facing ?? 'not known, so no drift'],
    ...(factor === 1 ? [] : [['Slowed by', shortNumber(factor, 3)] satisfies [string, string]]),
    ['Speed loss', set.speedLossPct === null ? 'not known' : `${withPlusMinus(set.speedLossPct, 1, 0)} %`],
  ];
}

function scaleOf({ from, metresPerPixel, relativeUncertainty, offAxisDeg }: Calibration): string {
  const by = {
    disc: 'by the disc',
    knownLength: 'by the known length',
    body: 'by an adult’s average height, so all lengths are approximate',
  }[from];
  const turned = offAxisDeg === null ? '' : `; camera ${shortNumber(offAxisDeg, 0)}° off square`;
  return `${shortNumber(metresPerPixel * 1000, 2)} mm a pixel ${by}, ± ${shortNumber(relativeUncertainty * 100, 1)} %${turned}`;
}

function barTable({ reps, calibration }: SetMeasurement): string {
  const about = calibration?.from === 'body' ? 'about ' : '';
  const lengths = (measured: Measured | null, scale: number, digits: number) =>
    measured === null ? '-' : `${about}${withPlusMinus(measured, scale, about === '' ? digits : digits - 1)}`;
  const labels = [
    'Rep',
    'From',
    'To',
    'Eccentric s',
    'Pause, stretched s',
    'Concentric s',
    'Pause, shortened s',
    'Range cm',
    'Mean m/s',
  ];
  return textTable(
    numberColumns(...labels, 'Peak m/s', 'Forward mm', 'Back mm'),
    reps.map(({ index, startS, endS, durationsS, ...rep }) => [
      String(index),
      startS.toFixed(3),
      endS.toFixed(3),
      withPlusMinus(durationsS.eccentric, 1, 2),
      withPlusMinus(durationsS.pauseStretched, 1, 2),
      withPlusMinus(durationsS.concentric, 1, 2),
      withPlusMinus(durationsS.pauseShortened, 1, 2),
      lengths(rep.romM, 100, 1),
      lengths(rep.meanConcentricMps, 1, 2),
      lengths(rep.peakConcentricMps, 1, 2),
      withPlusMinus(rep.driftForwardM, 1000, 0),
      withPlusMinus(rep.driftBackM, 1000, 0),
    ]),
  );
}

const outcomes = { reached: 'reached', tooClose: 'too close to call', short: 'short' } as const;

function jointTable(reps: readonly RepMeasurement[]): string {
  return textTable(
    numberColumns('Rep', 'Knee bent °', 'Hip bent °', 'Trunk lean °', 'Head °', 'Hip over knee cm', 'Depth'),
    reps.map(({ index, joints }) => [
      String(index),
      withPlusMinus(joints?.kneeDeg, 1, 0),
      withPlusMinus(joints?.hipDeg, 1, 0),
      withPlusMinus(joints?.trunkLeanMaxDeg, 1, 0),
      withPlusMinus(joints?.headTrunkDeg, 1, 0),
      withPlusMinus(joints?.depthM, 100, 1),
      joints?.depthOutcome ? outcomes[joints.depthOutcome] : '-',
    ]),
  );
}

/** "1.60 ± 0.03" in units of 1 / `scale`; a dash where there is none. */
function withPlusMinus(measured: Measured | null | undefined, scale: number, digits: number): string {
  if (!measured) return '-';
  return `${(measured.value * scale).toFixed(digits)} ± ${(measured.plusMinus * scale).toFixed(digits)}`;
}

function list(title: string, lines: readonly string[]): string {
  return lines.length === 0 ? '' : [title, ...lines.map((line) => `  ${line}`), ''].join('\n');
}
