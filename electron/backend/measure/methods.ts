import type { RecordingPart } from '../store/recordings.ts';

/**
 * How each part is recorded now. A name changes whenever the same footage would give other places; what another method
 * recorded is recorded again when it is asked for.
 */
export const currentMethods = {
  disc: 'rings-1',
  point: 'looks-1',
  joints: 'movenet-thunder/1',
} as const satisfies Readonly<Record<RecordingPart, string>>;
