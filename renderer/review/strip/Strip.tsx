import { useEffect, useMemo, useRef } from 'react';
import { filmstripAddress } from '../../../electron/contract/addresses.ts';
import type { ClipMedia } from '../../../electron/contract/clips.ts';
import { lookKey } from '../../../engine/framing/lookKey.ts';
import { framesShown } from '../../../engine/framing/section.ts';
import { toldFrame } from '../../../engine/framing/toldTime.ts';
import type { Suggestion } from '../../../engine/motion/suggestion.ts';
import type { Clip, Flag } from '../../../engine/review/review.ts';
import type { FrameTable } from '../../../engine/time/frameTable.ts';
import { clipClock } from '../../player/clipClock.ts';
import { measuresState } from '../../state/clipState.ts';
import { sayStrip } from '../../words/sayStrip.ts';
import { useReview } from '../commands/ReviewDeskProvider.tsx';
import {
  frameAtShare,
  inWindow,
  type StripWindow,
  shareAt,
  shareOfFrame,
  windowOfFrames,
} from '../model/stripWindow.ts';
import { framingState } from '../state/framingState.ts';
import { playerState, usePlayhead } from '../state/playerState.ts';
import { stripState, useLayer } from '../state/viewState.ts';
import { CurvesLane } from './CurvesLane.tsx';
import { FlagMarks } from './FlagMarks.tsx';
import { RepBand } from './RepBand.tsx';

type StripProps = {
  readonly clip: Clip;
  readonly media: ClipMedia;
  readonly flags: readonly Flag[];
  readonly table: FrameTable;
};

const noSuggestions: readonly Suggestion[] = [];

const percentOf = (share: number): string => `${share * 100}%`;

/** The clip laid out in time: pictures, reps, flags, and where the picture on screen is; zoomed where that helps. */
export function Strip({ clip, media, flags, table }: StripProps) {
  const context = useReview();
  const track = useRef<HTMLDivElement>(null);
  const line = useRef<HTMLDivElement>(null);
  const followed = useRef(-1);
  const range = playerState((state) => state.range);
  const window = stripState((state) => state.window);
  const measures = measuresState((state) => (state.clipId === clip.id ? state.measures : null));
  const showsCurves = useLayer('curves');
  const measurement = measures?.measurement ?? null;
  const { firstFrame, lastFrame } = framesShown(clip.section, table);
  const shown = useMemo(() => windowOfFrames(table, { firstFrame, lastFrame }), [table, firstFrame, lastFrame]);
  useEffect(() => stripState.getState().showWithin(shown), [shown]);
  const look = useSettledLook(clip);
  const bounds = stripState((state) => state.bounds);
  usePlayhead((now) => {
    if (now.clipId !== clip.id || now.frame >= table.ticks.length || line.current === null) return;
    const share = shareOfFrame(table, now.frame);
    // Only a playhead that moves takes the window along: looking elsewhere must stay possible.
    if (followed.current !== now.frame) stripState.getState().follow(share);
    followed.current = now.frame;
    line.current.style.left = percentOf(inWindow(stripState.getState().window, share));
    track.current?.setAttribute('aria-valuenow', String(now.frame));
    track.current?.setAttribute(
      'aria-valuetext',
      sayStrip('frameAt', { frame: toldFrame(clip, now.frame), time: clipClock(clip, table, now.frame) }),
    );
  });
  const positionOf = (clientX: number): number => {
    const box = track.current?.getBoundingClientRect();
    return box === undefined || box.width === 0 ? 0 : (clientX - box.left) / box.width;
  };
  const frameAt = (clientX: number): number =>
    frameAtShare(table, shareAt(stripState.getState().window, positionOf(clientX)));

  // React listens to the wheel passively, and then the page would scroll along.
  useEffect(() => {
    const element = track.current;
    if (element === null) return;
    const onWheel = (event: WheelEvent): void => {
      event.preventDefault();
      const box = element.getBoundingClientRect();
      if (event.shiftKey || Math.abs(event.deltaX) > Math.abs(event.deltaY)) {
        stripState.getState().pan((event.deltaX || event.deltaY) / box.width);
      } else stripState.getState().zoom(2 ** (-event.deltaY / 300), (event.clientX - box.left) / box.width);
    };
    element.addEventListener('wheel', onWheel, { passive: false });
    return () => element.removeEventListener('wheel', onWheel);
  }, []);

  const length = window.to - window.from;
  const isZoomed = length < bounds.to - bounds.from - 1e-9;
  return (
    <div className="strip" data-testid="strip" data-zoomed={isZoomed}>
      {isZoomed && <Overview media={media} look={look} shown={shown} window={window} />}
      <div
        ref={track}
        className="strip-track"
        role="slider"
        tabIndex={0}
        aria-label={sayStrip('position')}
        aria-valuemin={firstFrame}
        aria-valuemax={lastFrame}
        aria-valuenow={firstFrame}
        onPointerDown={(event) => {
          event.currentTarget.setPointerCapture(event.pointerId);
          context.player?.pause();
          context.player?.seekTo(frameAt(event.clientX));
        }}
        onPointerMove={(event) => {
          if (event.currentTarget.hasPointerCapture(event.pointerId)) {
            context.player?.seekTo(frameAt(event.clientX));
          }
        }}
        onKeyDown={(event) => {
          if (event.shiftKey || event.ctrlKey || event.metaKey) return;
          const press = event.repeat ? 'held' : 'pressed';
          if (event.key === 'ArrowLeft') context.player?.step(-1, press);
          else if (event.key === 'ArrowRight') context.player?.step(1, press);
          else if (event.key === 'Home') context.player?.seekTo(firstFrame);
          else if (event.key === 'End') context.player?.seekTo(lastFrame);
          else return;
          event.preventDefault();
        }}
      >
        <div className="filmstrip-window">
          {media.filmstripPictures > 0 ? (
            <img
              className="filmstrip"
              src={filmstripAddress(clip.id, look)}
              alt=""
              draggable={false}
              style={{
                width: percentOf((shown.to - shown.from) / length),
                marginInlineStart: percentOf((shown.from - window.from) / length),
              }}
            />
          ) : (
            <div className="filmstrip" />
          )}
        </div>
        <div ref={line} className="playhead" />
        {range?.clipId === clip.id && (
          <div
            className="strip-range"
            style={{
              left: percentOf(inWindow(window, shareOfFrame(table, range.first))),
              width: percentOf((shareOfFrame(table, range.last) - shareOfFrame(table, range.first)) / length),
            }}
          />
        )}
      </div>
      <RepBand clip={clip} table={table} window={window} frameAt={frameAt} />
      {showsCurves && measurement !== null && measurement.follows !== 'nothing' && (
        <CurvesLane clip={clip} measurement={measurement} table={table} window={window} frameAt={frameAt} />
      )}
      <FlagMarks
        clip={clip}
        frameAt={frameAt}
        flags={flags}
        suggestions={measures?.suggestions ?? noSuggestions}
        table={table}
        window={window}
      />
    </div>
  );
}

/** How the clip's picture is framed; while that is being changed, as it was before: each change would make the filmstrip anew. */
function useSettledLook(clip: Clip): string {
  const isFraming = framingState((state) => state.framing === 'on');
  const settled = useRef({ clipId: clip.id, look: lookKey(clip) });
  if (!isFraming || settled.current.clipId !== clip.id) settled.current = { clipId: clip.id, look: lookKey(clip) };
  return settled.current.look;
}

type OverviewProps = {
  readonly media: ClipMedia;
  readonly look: string;
  /** What the clip shows of its footage. */
  readonly shown: StripWindow;
  readonly window: StripWindow;
};

/** The whole clip, small, with the part that the strip shows; a click or a drag moves that part. */
function Overview({ media, look, shown, window }: OverviewProps) {
  const length = window.to - window.from;
  const whole = shown.to - shown.from;
  const show = (event: React.PointerEvent): void => {
    const box = event.currentTarget.getBoundingClientRect();
    const middle = shareAt(shown, (event.clientX - box.left) / box.width);
    stripState.getState().pan((middle - length / 2 - stripState.getState().window.from) / length);
  };
  return (
    <div
      className="overview"
      data-testid="overview"
      aria-hidden="true"
      onPointerDown={(event) => {
        event.currentTarget.setPointerCapture(event.pointerId);
        show(event);
      }}
      onPointerMove={(event) => {
        if (event.currentTarget.hasPointerCapture(event.pointerId)) show(event);
      }}
    >
      {media.filmstripPictures > 0 && <img src={filmstripAddress(media.clipId, look)} alt="" draggable={false} />}
      <div
        className="overview-window"
        style={{ left: percentOf(inWindow(shown, window.from)), width: percentOf(length / whole) }}
      />
    </div>
  );
}
