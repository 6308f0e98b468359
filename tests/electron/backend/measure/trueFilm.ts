import path from 'node:path';
import { recordingOf } from '../../../../electron/backend/measure/measurementOfClip.ts';
import { type ClipProbe, probeClip } from '../../../../electron/backend/media/probe/probeClip.ts';
import { findMediaTools } from '../../../../electron/backend/media/tools/mediaTools.ts';
import type { Recording } from '../../../../engine/recording/recording.ts';
import { type MeasuredTrueClip, measureRecording } from '../../../bench/truth/measureTrueClip.ts';
import { recordFile } from '../../../bench/truth/recordFile.ts';
import { type TrueClip, trueClipsIn } from '../../../bench/truth/trueClips.ts';

const footage = path.resolve(import.meta.dirname, '../../../footage');
const all = trueClipsIn([footage, path.join(footage, 'real'), path.resolve(footage, '../../seeds/footage')]);

/** The clip of this name, with its truth. */
export function trueClip(name: string): TrueClip {
  const clip = all.find((one) => one.name === name);
  if (!clip) throw new Error(`there is no clip ${name}`);
  return clip;
}

/** A file in which no rep is done, as a clip of this exercise. */
export const clipWithoutReps = (file: string, exercise: string): TrueClip => ({
  ...{ name: path.basename(file), file, exercise, kind: 'filmed', view: '' },
  reps: [],
});

/** Looks at a clip for disc and joints, and measures it with nothing known but the exercise. */
export async function measureTrueFilm(clip: TrueClip): Promise<MeasuredTrueClip> {
  const { probe, recording } = await recordFilm(clip.file);
  return measureRecording(clip, probe, recording);
}

/** What is seen in a clip of disc and joints. */
export async function recordFilm(file: string): Promise<{ probe: ClipProbe; recording: Recording }> {
  const tools = await findMediaTools();
  const probe = await probeClip(tools, file);
  return { probe, recording: recordingOf(await recordFile(tools, file, probe, ['disc', 'joints'])) };
}
