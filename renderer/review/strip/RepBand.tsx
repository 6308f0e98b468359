import { memo, useRef } from 'react';
import { toldFrame } from '../../../engine/framing/toldTime.ts';
import type { Clip, Rep } from '../../../engine/review/review.ts';
import { frameOfMoment } from '../../../engine/time/frames.ts';
import type { FrameTable } from '../../../engine/time/frameTable.ts';
import { mutate } from '../../bridge/mutate.ts';
import { keyWords } from '../../commands/keys.ts';
import { keysState } from '../../commands/keysState.ts';
import { clipClock } from '../../player/clipClock.ts';
import { repFrames } from '../../player/repFrames.ts';
import { cursorState } from '../../state/cursorState.ts';
import { reviewState } from '../../state/reviewState.ts';
import { sayStrip } from '../../words/sayStrip.ts';
import { markEnd, markStart, markStretchedEnd } from '../commands/markingReps.ts';
import { useReview } from '../commands/ReviewDeskProvider.tsx';
import { inWindow, type StripWindow, shareOfFrame } from '../model/stripWindow.ts';

type RepBandProps = {
  readonly clip: Clip;
  readonly table: FrameTable;
  readonly window: StripWindow;
  readonly frameAt: (clientX: number) => number;
};

const percentOf = (share: number): string => `${share * 100}%`;
const edges = ['start', 'stretchedEnd', 'end'] as const;

/** Reps are new objects after every read of the session; the same moments draw the same band. */
const looksTheSame = (one: RepBandProps, other: RepBandProps): boolean =>
  one.table === other.table &&
  one.window === other.window &&
  one.clip.id === other.clip.id &&
  JSON.stringify([one.clip.reps, one.clip.section]) === JSON.stringify([other.clip.reps, other.clip.section]);

export const RepBand = memo(BandOfClip, looksTheSame);

function NoReps() {
  const chosen = keysState((state) => state.chosen);
  return (
    <span className="rep-band-hint">
      {sayStrip('noReps', {
        start: keyWords(chosen, markStart),
        stretched: keyWords(chosen, markStretchedEnd),
        end: keyWords(chosen, markEnd),
      })}
    </span>
  );
}

/** The reps of a clip as blocks, each divided at its stretched end; edges can be moved, an open end fades out. */
function BandOfClip({ clip, table, window, frameAt }: RepBandProps) {
  const column = cursorState((state) => state.column);
  const positionOf = (frame: number): number => inWindow(window, shareOfFrame(table, frame));
  const isShown = (rep: Rep): boolean => {
    const frames = repFrames(clip.reps, rep.index, table);
    return frames !== null && positionOf(frames.first) <= 1 && positionOf(frames.last) >= 0;
  };
  const shown = clip.reps.filter(isShown);
  return (
    <div className="rep-band">
      {clip.reps.length === 0 && <NoReps />}
      {shown.map((rep) => {
        const frames = repFrames(clip.reps, rep.index, table);
        if (frames === null) return null;
        const [from, to] = [positionOf(frames.first), positionOf(frames.last)];
        const stretchedEnd = rep.stretchedEnd === undefined ? null : positionOf(frameOfMoment(rep.stretchedEnd, table));
        return (
          <div
            key={rep.index}
            className="rep-block"
            aria-hidden="true"
            data-rep-block={rep.index}
            data-open={rep.end === undefined}
            data-current={column?.clipId === clip.id && column.rep === rep.index}
            style={{ left: percentOf(from), width: percentOf(Math.max(0, to - from)) }}
          >
            {stretchedEnd !== null && to > from && (
              <span className="first-phase" style={{ width: percentOf((stretchedEnd - from) / (to - from)) }} />
            )}
            <span className="rep-number">{rep.index}</span>
          </div>
        );
      })}
      {shown.flatMap((rep) =>
        edges.flatMap((edge) => {
          const moment = rep[edge];
          if (moment === undefined) return [];
          const frame = frameOfMoment(moment, table);
          const position = positionOf(frame);
          if (position < 0 || position > 1) return [];
          return [
            <RepEdge
              key={`${rep.index}-${edge}`}
              clip={clip}
              rep={rep.index}
              edge={edge}
              set={rep.measured === undefined ? 'plain' : rep.measured.includes(edge) ? 'measured' : 'byHand'}
              frame={frame}
              table={table}
              position={position}
              frameAt={frameAt}
            />,
          ];
        }),
      )}
    </div>
  );
}

type RepEdgeProps = {
  readonly clip: Clip;
  readonly rep: number;
  readonly edge: 'start' | 'stretchedEnd' | 'end';
  readonly frame: number;
  /** Who set it; `plain` where nothing of the rep was measured, so that there is nothing to tell apart. */
  readonly set: 'plain' | 'measured' | 'byHand';
  readonly table: FrameTable;
  /** Where it is along the strip, 0-1. */
  readonly position: number;
  /** The frame under a pointer. */
  readonly frameAt: (clientX: number) => number;
};

/** An edge of a rep: dragged, or moved by the arrow keys a frame at a time; the picture goes with it. */
function RepEdge({ clip, rep, edge, frame, set, table, position, frameAt }: RepEdgeProps) {
  const context = useReview();
  const dragged = useRef<number | null>(null);
  // Where keys have moved it to already; the clip as it is read comes after.
  const pendingFrame = useRef<number | null>(null);
  const move = async (to: number): Promise<void> => {
    if (to === (pendingFrame.current ?? frame)) return;
    pendingFrame.current = to;
    context.player?.seekTo(to);
    if ((await mutate('reps.moveEdge', { clipId: clip.id, rep, edge, frame: to })) !== null)
      await reviewState.getState().refresh();
    if (pendingFrame.current === to) pendingFrame.current = null;
  };
  return (
    <div
      className={`rep-edge rep-edge-${edge}`}
      role="slider"
      tabIndex={0}
      aria-label={sayStrip('edge', { edge, rep })}
      aria-valuemin={0}
      aria-valuemax={table.ticks.length - 1}
      aria-valuenow={frame}
      aria-valuetext={sayStrip('edgeAt', { frame: toldFrame(clip, frame), time: clipClock(clip, table, frame), set })}
      data-set={set}
      style={{ left: `${position * 100}%` }}
      onPointerDown={(event) => {
        event.stopPropagation();
        event.currentTarget.setPointerCapture(event.pointerId);
        context.player?.pause();
        dragged.current = frame;
      }}
      onPointerMove={(event) => {
        if (dragged.current === null) return;
        dragged.current = frameAt(event.clientX);
        context.player?.seekTo(dragged.current);
        event.currentTarget.setAttribute('data-dragged', String(dragged.current));
      }}
      onPointerUp={(event) => {
        event.currentTarget.removeAttribute('data-dragged');
        if (dragged.current !== null) void move(dragged.current);
        dragged.current = null;
      }}
      onKeyDown={(event) => {
        if (event.shiftKey || event.ctrlKey || event.metaKey) return;
        const steps: Readonly<Record<string, number>> = { ArrowLeft: -1, ArrowRight: 1, PageUp: -10, PageDown: 10 };
        const by = steps[event.key];
        if (by === undefined) return;
        event.preventDefault();
        event.stopPropagation();
        void move(Math.min(Math.max(0, (pendingFrame.current ?? frame) + by), table.ticks.length - 1));
      }}
    >
      <span className="rep-edge-line" />
    </div>
  );
}
