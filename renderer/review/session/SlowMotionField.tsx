import type { Clip } from '../../../engine/review/review.ts';
import { NumberField } from '../../base/NumberField.tsx';
import { mutate } from '../../bridge/mutate.ts';

/** How many times slower the clip plays than the lift was: 1 for usual footage. */
export function SlowMotionField({ clip }: { readonly clip: Clip }) {
  return (
    <NumberField
      label="Slow motion ×"
      title="Capture rate divided by playback rate: 8 for 240 frames a second stored as 30"
      shown={String(clip.realTimeFactor)}
      accepts={(value) => value >= 0.01 && value <= 100}
      onSave={(realTimeFactor) => {
        if (realTimeFactor !== clip.realTimeFactor) {
          void mutate('clips.update', { clipId: clip.id, change: { realTimeFactor } });
        }
      }}
    />
  );
}
