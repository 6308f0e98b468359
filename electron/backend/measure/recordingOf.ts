import type { Recording } from '../../../engine/recording/recording.ts';
import type { Warning } from '../../../engine/recording/warnings.ts';
import type { RecordedParts } from '../store/recordings.ts';

/** The parts as one recording; what was not looked for is null, as is what was not found. */
export function recordingOf({ disc, point, joints }: RecordedParts): Recording {
  return {
    disc: disc?.found ?? null,
    point: point?.found ?? null,
    joints: joints?.found ?? null,
    warnings: distinct([disc, point, joints].flatMap((part) => part?.warnings ?? [])),
  };
}

/** Each warning once: disc and point both tell of a camera that moves. */
const distinct = (warnings: readonly Warning[]): Warning[] => [
  ...new Map(warnings.map((warning) => [JSON.stringify(warning), warning])).values(),
];
