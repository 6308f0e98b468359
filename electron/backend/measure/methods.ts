import type { RecordingPart } from '../store/recordings.ts';
import { jointMethod } from './joints/jointMethod.ts';

/**
 * How each part is recorded now. A name changes whenever the same footage would give other places; what another method
 * recorded is recorded again when it is asked for.
 */
export const currentMethods = {
  disc: 'rims-2',
  point: 'looks-2',
  joints: jointMethod,
} as const satisfies Readonly<Record<RecordingPart, string>>;
