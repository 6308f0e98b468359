import { memo } from 'react';
import type { Clip, Rep } from '../../../engine/review/review.ts';
import type { FrameTable } from '../../../engine/time/frameTable.ts';
import { keyWords } from '../../commands/keys.ts';
import { keysState } from '../../commands/keysState.ts';
import { frameOfMoment, repFrames } from '../../player/repAtFrame.ts';
import { cursorState } from '../../state/cursorState.ts';
import { markEnd, markLongEnd, markStart } from '../commands/markingReps.ts';
import { inWindow, type StripWindow, shareOfFrame } from '../model/stripWindow.ts';
import { RepEdge } from './RepEdge.tsx';

type RepBandProps = {
  readonly clip: Clip;
  readonly table: FrameTable;
  readonly window: StripWindow;
  readonly frameAt: (clientX: number) => number;
};

const percentOf = (share: number): string => `${share * 100}%`;
const edges = ['start', 'longEnd', 'end'] as const;

/** Reps are new objects after every read of the session; the same moments draw the same band. */
const looksTheSame = (one: RepBandProps, other: RepBandProps): boolean =>
  one.table === other.table &&
  one.window === other.window &&
  one.clip.id === other.clip.id &&
  JSON.stringify(one.clip.reps) === JSON.stringify(other.clip.reps);

export const RepBand = memo(BandOfClip, looksTheSame);

function NoReps() {
  const chosen = keysState((state) => state.chosen);
  return (
    <span className="rep-band-hint">
      No reps marked yet: {keyWords(chosen, markStart)} start, {keyWords(chosen, markLongEnd)} long end,{' '}
      {keyWords(chosen, markEnd)} end
    </span>
  );
}

/** The reps of a clip as blocks, each divided at its long end; edges can be moved, an open end fades out. */
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
        const longEnd = rep.longEnd === undefined ? null : positionOf(frameOfMoment(rep.longEnd, table));
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
            {longEnd !== null && to > from && (
              <span className="first-phase" style={{ width: percentOf((longEnd - from) / (to - from)) }} />
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
              clipId={clip.id}
              rep={rep.index}
              edge={edge}
              set={rep.measured === undefined ? 'plain' : rep.measured.includes(edge) ? 'measured' : 'by hand'}
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
