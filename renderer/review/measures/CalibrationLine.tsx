import type { SetMeasurement } from '../../../engine/motion/measurement.ts';
import { sayWarningToCoach } from '../../../engine/wording/sayMeasuring.ts';
import { decimal } from '../model/measureWords.ts';

const followed: Readonly<Record<SetMeasurement['follows'], string>> = {
  disc: 'the disc',
  point: 'the point that was clicked',
  joints: 'the joints',
  nothing: 'nothing that could be followed',
};

/** What the numbers rest on: scale, camera, what is followed, smoothing. */
export function calibrationFacts({ calibration, follows, track, facing }: SetMeasurement): readonly string[] {
  const lost = track.lost === 0 ? '' : `, lost in ${track.lost} of ${track.frames} frames`;
  const facts = [`Follows ${followed[follows]}${follows === 'nothing' ? '' : lost}`];
  if (calibration !== null) {
    const { metresPerPixel, relativeUncertainty, offAxisDeg, rollDeg, cutOffHz, from } = calibration;
    facts.push(
      `1 pixel = ${decimal(metresPerPixel * 1000, 2)} mm ± ${decimal(relativeUncertainty * 100, 1)} %, by the ${from === 'disc' ? 'disc' : 'known length'}`,
      offAxisDeg === null
        ? 'how square the camera stands is not known'
        : `camera ${decimal(offAxisDeg, 0)}° out of square`,
      ...(Math.abs(rollDeg) >= 0.05 ? [`roll of ${decimal(rollDeg, 1)}° taken out`] : []),
      `smoothed at ${decimal(cutOffHz, 1)} Hz`,
    );
  }
  if (facing !== null) facts.push(`faces ${facing}`);
  return facts;
}

/** Warnings to read before the numbers, then what the numbers rest on. */
export function CalibrationLine({ measurement }: { readonly measurement: SetMeasurement }) {
  const { warnings } = measurement;
  return (
    <div className="calibration">
      {warnings.length > 0 && (
        <ul className="measure-warnings" aria-label="Before you read the numbers">
          {warnings.map(sayWarningToCoach).map((sentence) => (
            <li key={sentence}>{sentence}</li>
          ))}
        </ul>
      )}
      <p className="soft" data-testid="calibration">
        {calibrationFacts(measurement).join(' · ')}
      </p>
    </div>
  );
}
