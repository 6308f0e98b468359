import { useRef } from 'react';
import { filmstripAddress } from '../../../electron/contract/addresses.ts';
import type { ClipMedia } from '../../../electron/contract/requests.ts';
import type { Clip, Flag } from '../../../engine/review/review.ts';
import type { FrameTable } from '../../../engine/time/frameTable.ts';
import { formatClock, frameStartUs } from '../../../engine/time/index.ts';
import { playerState } from '../../state/playerState.ts';
import { currentPlayer } from '../acts/heldPlayer.ts';
import { step } from '../acts/pictureActs.ts';
import { usePlayhead } from '../stage/usePlayhead.ts';
import { FlagMarks } from './FlagMarks.tsx';
import { RepBand } from './RepBand.tsx';
import { frameAtShare, shareOfFrame } from './stripScale.ts';

type StripProps = {
  readonly clip: Clip;
  readonly media: ClipMedia;
  readonly flags: readonly Flag[];
  readonly table: FrameTable;
};

const percentOf = (share: number): string => `${share * 100}%`;

/** The clip laid out in time: pictures, reps, flags, and where the picture on screen is. */
export function Strip({ clip, media, flags, table }: StripProps) {
  const track = useRef<HTMLDivElement>(null);
  const line = useRef<HTMLDivElement>(null);
  const range = playerState((state) => state.range);
  usePlayhead((now) => {
    if (now.clipId !== clip.id || now.frame >= table.ticks.length || line.current === null) return;
    line.current.style.left = percentOf(shareOfFrame(table, now.frame));
    track.current?.setAttribute('aria-valuenow', String(now.frame));
    track.current?.setAttribute('aria-valuetext', `frame ${now.frame}, ${formatClock(frameStartUs(table, now.frame))}`);
  });
  const seek = (event: React.PointerEvent): void => {
    const box = track.current?.getBoundingClientRect();
    if (box === undefined || box.width === 0) return;
    currentPlayer()?.seekTo(frameAtShare(table, (event.clientX - box.left) / box.width));
  };
  return (
    <div className="strip" data-testid="strip">
      <div
        ref={track}
        className="strip-track"
        role="slider"
        tabIndex={0}
        aria-label="Position in the clip"
        aria-valuemin={0}
        aria-valuemax={table.ticks.length - 1}
        aria-valuenow={0}
        onPointerDown={(event) => {
          event.currentTarget.setPointerCapture(event.pointerId);
          currentPlayer()?.pause();
          seek(event);
        }}
        onPointerMove={(event) => {
          if (event.currentTarget.hasPointerCapture(event.pointerId)) seek(event);
        }}
        onKeyDown={(event) => {
          if (event.shiftKey || event.ctrlKey || event.metaKey) return;
          if (event.key === 'ArrowLeft') step(-1, event);
          else if (event.key === 'ArrowRight') step(1, event);
          else if (event.key === 'Home') currentPlayer()?.seekTo(0);
          else if (event.key === 'End') currentPlayer()?.seekTo(table.ticks.length - 1);
          else return;
          event.preventDefault();
        }}
      >
        {media.filmstripPictures > 0 ? (
          <img className="filmstrip" src={filmstripAddress(clip.id)} alt="" draggable={false} />
        ) : (
          <div className="filmstrip" />
        )}
        <RepBand clip={clip} table={table} />
        {range?.clipId === clip.id && (
          <div
            className="strip-range"
            style={{
              left: percentOf(shareOfFrame(table, range.first)),
              width: percentOf(shareOfFrame(table, range.last) - shareOfFrame(table, range.first)),
            }}
          />
        )}
        <div ref={line} className="playhead" />
      </div>
      <FlagMarks flags={flags} table={table} />
    </div>
  );
}
