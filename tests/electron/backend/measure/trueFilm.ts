import path from 'node:path';
import { recordingOf } from '../../../../electron/backend/measure/measurementOfClip.ts';
import { probeClip } from '../../../../electron/backend/media/probe/probeClip.ts';
import { findMediaTools } from '../../../../electron/backend/media/tools/mediaTools.ts';
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

/** Looks at a clip for disc and joints, and measures it with nothing known but the exercise. */
export async function measureTrueFilm(clip: TrueClip): Promise<MeasuredTrueClip> {
  const tools = await findMediaTools();
  const probe = await probeClip(tools, clip.file);
  const parts = await recordFile(tools, clip.file, probe, ['disc', 'joints']);
  return measureRecording(clip, probe, recordingOf(parts));
}
