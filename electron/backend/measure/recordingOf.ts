import type { Recording } from '../../../engine/recording/recording.ts';
import type { RecordedParts } from '../store/recordings.ts';

/** The parts as one recording; what was not looked for is null, as is what was not found. */
export function recordingOf({ disc, point, joints }: RecordedParts): Recording {
  return {
    disc: disc?.found ?? null,
    point: point?.found ?? null,
    joints: joints?.found ?? null,
    warnings: [...new Set([disc, point, joints].flatMap((part) => part?.warnings ?? []))],
  };
}
