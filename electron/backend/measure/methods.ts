import type { RecordingPart } from '../store/recordings.ts';
import { jointMethod } from './joints/jointReader.ts';
import { discMethod } from './trackDisc.ts';
import { pointMethod } from './trackPoint.ts';

/** How each part is recorded now; what another method recorded is recorded again when it is asked for. */
export const currentMethods: Readonly<Record<RecordingPart, string>> = {
  disc: discMethod,
  point: pointMethod,
  joints: jointMethod,
};
