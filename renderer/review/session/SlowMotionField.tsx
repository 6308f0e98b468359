import { useEffect, useState } from 'react';
import type { Clip } from '../../../engine/review/review.ts';
import { act } from '../../bridge/act.ts';

/** How many times slower the clip plays than the lift was: 1 for usual footage. Saved on leaving the field. */
export function SlowMotionField({ clip }: { readonly clip: Clip }) {
  const [text, setText] = useState(String(clip.realTimeFactor));
  useEffect(() => {
    setText(String(clip.realTimeFactor));
  }, [clip.realTimeFactor]);
  const save = (): void => {
    const realTimeFactor = Number(text);
    if (realTimeFactor === clip.realTimeFactor) return;
    if (realTimeFactor >= 0.01 && realTimeFactor <= 100) {
      void act('clips.update', { clipId: clip.id, change: { realTimeFactor } });
    } else setText(String(clip.realTimeFactor));
  };
  return (
    <label
      className="field-inline"
      title="Capture rate divided by playback rate: 8 for 240 frames a second stored as 30"
    >
      <span>Slow motion ×</span>
      <input
        className="narrow"
        type="text"
        inputMode="decimal"
        value={text}
        onChange={(event) => setText(event.target.value)}
        onBlur={save}
        onKeyDown={(event) => {
          if (event.key === 'Enter') event.currentTarget.blur();
        }}
      />
    </label>
  );
}
