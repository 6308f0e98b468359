import { step } from '../../../engine/wording/sayJob.ts';
import type { NewJob } from '../context/context.ts';
import type { ClipHome } from '../store/clips.ts';

/** The job that measures a clip. */
export function measuringOf(clip: ClipHome, how: { readonly joints: boolean; readonly again: boolean }): NewJob {
  return {
    kind: 'measure',
    title: step('measure', { clip: clip.name }),
    sessionId: clip.session_id,
    clipId: clip.id,
    task: { do: 'measure', clipId: clip.id, ...how },
  };
}
