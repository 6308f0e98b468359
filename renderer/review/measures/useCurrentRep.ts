import { useState } from 'react';
import type { RepMeasurement } from '../../../engine/motion/measurement.ts';
import type { FrameTable } from '../../../engine/time/frameTable.ts';
import { secondsOfFrame } from '../model/moments.ts';
import { usePlayhead } from '../state/playhead.ts';

/** The measured rep that is on screen; between reps the one before stays. Renders only when it changes. */
export function useCurrentRep(clipId: string, reps: readonly RepMeasurement[], table: FrameTable): number | null {
  const [current, setCurrent] = useState<number | null>(null);
  usePlayhead((now) => {
    if (now.clipId !== clipId) return;
    const seconds = secondsOfFrame(now.frame, table);
    const rep = reps.findLast(({ startS }) => startS <= seconds + 1e-3) ?? reps[0];
    if ((rep?.index ?? null) !== current) setCurrent(rep?.index ?? null);
  });
  return current;
}
