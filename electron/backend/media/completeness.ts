import type { ProblemError } from '../../contract/reply.ts';
import { beginsWithIsoBox, endsBeforeItsBoxes } from './isoBoxes.ts';
import type { Packet } from './packets.ts';
import { refuseClip } from './refuse.ts';

const copyAgain = 'copy it again from where it was filmed';

/**
 * Refuses a file whose data ends before its index does. Fewer frames than stated alone proves nothing, since an edit
 * list leaves frames out: the file itself must end too early, or the demuxer must say that it did.
 */
export async function checkComplete(found: {
  readonly file: string;
  readonly sizeBytes: number;
  readonly packets: readonly Packet[];
  /** Frame count of the index as ffprobe writes it; '' when the container has none. */
  readonly statedFrames: string;
  readonly complaints: string;
}): Promise<void> {
  const { file, sizeBytes, packets, statedFrames } = found;
  const stated = /^[1-9]\d*$/.test(statedFrames) ? Number(statedFrames) : null;
  const endsEarly = await endsBeforeItsBoxes(file, sizeBytes);
  // Builds before 6.0 do not mark a frame that was read in part: it ends where the file does.
  const whole = packets.filter(
    ({ damaged, endByte }) => !damaged && !(endsEarly && endByte !== null && endByte >= sizeBytes),
  ).length;
  const saidSo = /partial file|File ended prematurely/i.test(found.complaints);
  const fewer = stated !== null && whole < stated;
  if (saidSo || (endsEarly && (fewer || stated === null))) {
    const counted = fewer
      ? `only ${whole} of the ${stated} frames that its index names can be read`
      : 'its data ends too early';
    throw refuseClip(file, `is cut short: ${counted}`, copyAgain);
  }
  if (packets.length === 0) throw refuseClip(file, 'holds no frames', copyAgain);
}

/** The refusal of a file that ffprobe cannot read: cut short or damaged where it begins like a video. */
export async function refuseUnreadable(file: string, complaint: string): Promise<ProblemError> {
  const cause = new Error(complaint);
  return (await beginsWithIsoBox(file))
    ? refuseClip(file, 'is cut short or damaged: the index of its frames cannot be read', copyAgain, cause)
    : refuseClip(file, 'is not a video, whatever its name says', 'choose a video file', cause);
}
