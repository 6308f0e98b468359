import { useRef } from 'react';
import { frameStartUs } from '../../../engine/time/frames.ts';
import type { FrameTable } from '../../../engine/time/frameTable.ts';
import { formatClock } from '../../../engine/time/writtenTime.ts';
import { mutate } from '../../bridge/mutate.ts';
import { reviewState } from '../../state/reviewState.ts';
import { useReview } from '../commands/ReviewDeskProvider.tsx';

type RepEdgeProps = {
  readonly clipId: string;
  readonly rep: number;
  readonly edge: 'start' | 'longEnd' | 'end';
  readonly frame: number;
  /** Who set it; `plain` where nothing of the rep was measured, so that there is nothing to tell apart. */
  readonly set: 'plain' | 'measured' | 'by hand';
  readonly table: FrameTable;
  /** Where it is along the strip, 0-1. */
  readonly position: number;
  /** The frame under a pointer. */
  readonly frameAt: (clientX: number) => number;
};

const words = { start: 'Start', longEnd: 'Long end', end: 'End' } as const;

/** An edge of a rep: dragged, or moved by the arrow keys a frame at a time; the picture goes with it. */
export function RepEdge({ clipId, rep, edge, frame, set, table, position, frameAt }: RepEdgeProps) {
  const context = useReview();
  const dragged = useRef<number | null>(null);
  // Where keys have moved it to already; the clip as it is read comes after.
  const goal = useRef<number | null>(null);
  const move = async (to: number): Promise<void> => {
    if (to === (goal.current ?? frame)) return;
    goal.current = to;
    context.player?.seekTo(to);
    if ((await mutate('reps.moveEdge', { clipId, rep, edge, frame: to })) !== null)
      await reviewState.getState().refresh();
    if (goal.current === to) goal.current = null;
  };
  return (
    <div
      className={`rep-edge rep-edge-${edge}`}
      role="slider"
      tabIndex={0}
      aria-label={`${words[edge]} of rep ${rep}`}
      aria-valuemin={0}
      aria-valuemax={table.ticks.length - 1}
      aria-valuenow={frame}
      aria-valuetext={`frame ${frame}, ${formatClock(frameStartUs(table, frame))}${set === 'plain' ? '' : `, ${set}`}`}
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
        void move(Math.min(Math.max(0, (goal.current ?? frame) + by), table.ticks.length - 1));
      }}
    />
  );
}
