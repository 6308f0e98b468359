import { create } from 'zustand';
import type { Narration } from '../../../electron/contract/narrations.ts';
import type { Drawn } from '../../../engine/review/drawings/drawing.ts';
import { read } from '../../bridge/read.ts';

export type NarrationPhase = 'idle' | 'asking' | 'recording' | 'paused' | 'keeping' | 'listening';

type NarrationState = {
  /** Whether the bar is out. */
  readonly narrating: 'on' | 'off';
  readonly phase: NarrationPhase;
  /** The clip that the rest is about. */
  readonly clipId: string | null;
  /** What was said over it before; null where nothing was. */
  readonly narration: Narration | null;
  /** How much was said or heard by now, in microseconds. */
  readonly elapsedUs: number;
  /** Whether it is asked if the narration is to be deleted. */
  readonly deleting: 'asked' | 'no';
  /** What is drawn over the picture while a narration is heard; null = what the clip has. */
  readonly drawn: readonly Drawn[] | null;
};

const quiet = { phase: 'idle', elapsedUs: 0, deleting: 'no', drawn: null } as const;

/** Speaking over the clip on the stage, and listening to what was said. */
export const narrationState = create<NarrationState>()(() => ({
  ...{ ...quiet, narrating: 'off', clipId: null, narration: null },
}));

/** Nothing is recorded or heard any more; the bar stays as it is. */
export const stopNarrating = (): void => narrationState.setState(quiet);

/** Reads what was said over a clip. */
export async function readNarration(clipId: string): Promise<void> {
  if (narrationState.getState().clipId !== clipId) narrationState.setState({ ...quiet, clipId, narration: null });
  const narration = await read('narrations.get', { clipId });
  if (narrationState.getState().clipId === clipId) narrationState.setState({ narration });
}
