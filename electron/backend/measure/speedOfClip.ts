import { findKeptSpeed, keepSpeed } from '../store/clipSpeeds.ts';
import type { Library } from '../store/library.ts';
import type { ClipToMeasure } from './clipToMeasure.ts';
import { measuredFrom, measurementOfClip } from './measurementOfClip.ts';

/**
 * Mean concentric speed of a clip's fastest rep, in metres a second; null where none is measured in metres. Measured
 * once and kept in the library until the recording, the set-up or the reps' edges are others.
 */
export function fastestMpsOfClip(library: Library, asked: ClipToMeasure): number | null {
  const madeFrom = measuredFrom(library, asked);
  if (madeFrom === null) return null;
  const kept = findKeptSpeed(library.reading, asked.clip.id);
  if (kept?.madeFrom === madeFrom) return kept.fastestMps;
  const speeds = (measurementOfClip(library, asked)?.reps ?? []).flatMap(({ meanConcentricMps: speed }) =>
    speed !== null && speed.value > 0 ? [speed.value] : [],
  );
  const fastestMps = speeds.length === 0 ? null : Math.max(...speeds);
  keepSpeed(library.writing, asked.clip.id, { madeFrom, fastestMps });
  return fastestMps;
}
