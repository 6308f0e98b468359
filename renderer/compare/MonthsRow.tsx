import { useEffect, useRef, useState } from 'react';
import { clipAddress, posterAddress } from '../../electron/contract/addresses.ts';
import { day } from '../base/figures.ts';
import { FramedPicture } from '../player/FramedPicture.tsx';
import { createStillPainter } from '../player/stillPicture.ts';
import { clipTimes } from '../player/videoLike.ts';
import { sayCompare } from '../words/sayCompare.ts';
import type { Place } from './compareDesk.ts';
import { newestOnly } from './newestOnly.ts';
import { type AlikeClip, frameInStep, loadSide, type Side } from './side.ts';

type MonthsRowProps = {
  readonly clips: readonly AlikeClip[];
  readonly left: Side;
  readonly rightId: string | null;
  /** The frame that the left clip rests on. */
  readonly frame: number;
  readonly onChoose: (place: Place, clip: AlikeClip) => void;
};

/** Clips of the lift over the months as small pictures at the phase of the left one; any two of them are compared. */
export function MonthsRow({ clips, left, rightId, frame, onChoose }: MonthsRowProps) {
  return (
    <ul className="months-row" aria-label={sayCompare('months')}>
      {clips.map((clip) => {
        const called = sayCompare('clip', { date: day(clip.date), name: clip.name });
        return (
          <li
            key={clip.clipId}
            data-place={clip.clipId === left.clip.id ? 'left' : clip.clipId === rightId ? 'right' : ''}
          >
            <SmallPicture clip={clip} left={left} frame={frame} />
            <span className="months-day">{day(clip.date)}</span>
            {(['left', 'right'] as const).map((place) => (
              <button
                key={place}
                type="button"
                className="chip"
                aria-current={clip.clipId === (place === 'left' ? left.clip.id : rightId)}
                aria-label={sayCompare('putOn', { clip: called, side: sayCompare(place) })}
                onClick={() => onChoose(place, clip)}
              >
                {sayCompare(place)}
              </button>
            ))}
          </li>
        );
      })}
    </ul>
  );
}

type SmallPictureProps = { readonly clip: AlikeClip; readonly left: Side; readonly frame: number };

const unknown = { width: 0, height: 0 };

/** One clip, decoded at the phase of the left one; by its poster where it has no reps to tell a phase by. */
function SmallPicture({ clip, left, frame }: SmallPictureProps) {
  const canvas = useRef<HTMLCanvasElement>(null);
  const [side, setSide] = useState<Side | null>(null);
  useEffect(() => {
    const loads = newestOnly(setSide);
    loads.ask(loadSide(clip.sessionId, clip.clipId, null));
    return loads.stop;
  }, [clip.sessionId, clip.clipId]);
  const painter = useRef<ReturnType<typeof createStillPainter> | null>(null);
  useEffect(() => {
    if (side === null || canvas.current === null) return;
    const made = createStillPainter(clipAddress(side.clip.id), canvas.current, clipTimes(side.tables.playback));
    painter.current = made;
    return () => {
      painter.current = null;
      made.dispose();
    };
  }, [side]);
  useEffect(() => {
    const at = side === null ? null : frameInStep(frame, left, side, 'phase');
    if (side === null || at === null) return;
    void painter.current?.draw(clipTimes(side.tables.playback).seekSeconds(at));
    canvas.current?.setAttribute('data-frame', String(at));
  }, [side, left, frame]);
  return (
    <span className="months-picture" aria-hidden="true">
      <span className="framed-place" hidden={side === null}>
        <FramedPicture
          upright={side?.picture ?? unknown}
          framing={side?.clip.framing}
          footage={<canvas ref={canvas} />}
        />
      </span>
      {side === null && <img src={posterAddress(clip.clipId)} alt="" draggable={false} />}
    </span>
  );
}
