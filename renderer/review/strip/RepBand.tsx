import type { Clip } from '../../../engine/review/review.ts';
import type { FrameTable } from '../../../engine/time/frameTable.ts';
import { cursorState } from '../../state/cursorState.ts';
import { frameOfMoment, repFrames } from '../repAtFrame.ts';
import { shareOfFrame } from './stripScale.ts';

const percentOf = (share: number): string => `${share * 100}%`;

/** The reps of a clip as blocks, each with a notch at its long end; an open one fades out. */
export function RepBand({ clip, table }: { readonly clip: Clip; readonly table: FrameTable }) {
  const column = cursorState((state) => state.column);
  return (
    <div className="rep-band" aria-hidden="true">
      {clip.reps.length === 0 && <span className="rep-band-hint">No reps marked yet: S start, L long end, E end</span>}
      {clip.reps.map((rep) => {
        const frames = repFrames(clip.reps, rep.index, table);
        if (frames === null) return null;
        const from = shareOfFrame(table, frames.first);
        const to = shareOfFrame(table, frames.last);
        return (
          <div
            key={rep.index}
            className="rep-block"
            data-rep-block={rep.index}
            data-open={rep.end === undefined}
            data-current={column?.clipId === clip.id && column.rep === rep.index}
            style={{ left: percentOf(from), width: percentOf(Math.max(0, to - from)) }}
          >
            {rep.index}
          </div>
        );
      })}
      {clip.reps.map((rep) =>
        rep.longEnd === undefined ? null : (
          <div
            key={rep.index}
            className="long-end"
            style={{ left: percentOf(shareOfFrame(table, frameOfMoment(rep.longEnd, table))) }}
          />
        ),
      )}
    </div>
  );
}
