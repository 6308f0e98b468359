import type { Result } from '../../contract/requests.ts';
import { clipToMeasure } from '../measure/clipToMeasure.ts';
import { fastestMpsOfClip } from '../measure/speedOfClip.ts';
import { listLoadedClips } from '../store/clipSpeeds.ts';
import { findTrainee } from '../store/trainees.ts';
import type { Handler } from './handler.ts';

/** How fast a trainee moved which load, set by set; other requests are answered between two clips that must be measured. */
export const getTraineeSpeeds: Handler<'trainees.speeds'> = async (context, { traineeId }) => {
  const library = context.library();
  findTrainee(library.reading, traineeId);
  const sets: Result<'trainees.speeds'> = [];
  for (const set of listLoadedClips(library.reading, traineeId)) {
    const fastestMps = fastestMpsOfClip(library, clipToMeasure(context, library.reading, set.clipId));
    if (fastestMps !== null) sets.push({ ...set, fastestMps });
    await new Promise(setImmediate);
  }
  return sets;
};
