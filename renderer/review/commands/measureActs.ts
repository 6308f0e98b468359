import { mutate } from '../../bridge/mutate.ts';
import { statusState } from '../../bridge/statusState.ts';
import { reviewState } from '../../state/reviewState.ts';
import { frameAtSeconds } from '../model/moments.ts';
import { clearBeside, panelState } from '../state/panelState.ts';
import { currentPlayer } from './activePlayer.ts';
import { here } from './here.ts';
import { goToFrame } from './moveActs.ts';

/** Clips of the session that can be measured: those that can be shown. */
const clipsToMeasure = (): readonly string[] =>
  reviewState.getState().data?.media.flatMap(({ clipId, ready }) => (ready ? [clipId] : [])) ?? [];

async function start(clipIds: readonly string[], again: 'again' | 'once'): Promise<void> {
  if (clipIds.length === 0) {
    statusState.getState().tell('No clip is ready to be measured yet; try again when they have been read.');
    return;
  }
  await mutate('measures.start', { clipIds: [...clipIds], again: again === 'again' });
}

const clipHere = (): readonly string[] => {
  const now = here();
  return now === null ? [] : clipsToMeasure().filter((clipId) => clipId === now.clip.id);
};

/** Measures the clip on the stage, unless that was done. */
export const measureClip = (): Promise<void> => start(clipHere(), 'once');

/** Measures the clip on the stage anew. */
export const measureClipAgain = (): Promise<void> => start(clipHere(), 'again');

/** Puts all clips of the session in line; those that were measured already take no time. */
export const measureSession = (): Promise<void> => start(clipsToMeasure(), 'once');

/** Shows what was measured in place of the card, or the card again. */
export function togglePanel(): void {
  const { panel, show } = panelState.getState();
  clearBeside();
  show(panel === 'card' ? 'measures' : 'card');
}

/** Makes the measured reps the clip's; edges that a person set stay. */
export async function takeReps(): Promise<void> {
  const now = here();
  if (now !== null) await mutate('measures.takeReps', { clipId: now.clip.id });
}

/** Shows the frame of media seconds of the clip on the stage. */
export function goToSeconds(seconds: number): void {
  const now = here();
  if (now === null || now.tables === null) return;
  currentPlayer()?.pause();
  goToFrame(now.clip.id, frameAtSeconds(seconds, now.tables.table));
}
