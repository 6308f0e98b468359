import { useEffect, useRef, useState } from 'react';
import type { Clip } from '../../engine/review/review.ts';
import { frameStartUs } from '../../engine/time/frames.ts';
import { mediaToLiftingUs } from '../../engine/time/moment.ts';
import { clock, toHundredth } from '../base/figures.ts';
import { read } from '../bridge/read.ts';
import { ClipPicture, createClipPlayer } from '../player/ClipPicture.tsx';
import type { Player, PlayerOptions, PlayerView } from '../player/player.ts';
import { repFrames } from '../player/repFrames.ts';
import { type ClipTables, tablesState } from '../state/clipState.ts';
import { sayCompare } from '../words/sayCompare.ts';

/** One side of the comparison: a clip that can be played, and the rep that is laid beside the other. */
export type Side = { readonly clip: Clip; readonly tables: ClipTables; readonly rep: number };

/** Loads a clip of a session with its times; null when it can't be shown or has no reps marked. */
export async function loadSide(sessionId: string, clipId: string, rep: number | null): Promise<Side | null> {
  const answer = await read('review.get', { sessionId });
  const clip = answer?.review.entries.flatMap((entry) => entry.clips).find((one) => one.id === clipId);
  const tables = await tablesState.getState().load(clipId);
  const [first] = clip?.reps ?? [];
  if (clip === undefined || tables === null || first === undefined) return null;
  const wanted = clip.reps.some(({ index }) => index === rep) ? rep : null;
  return { clip, tables, rep: wanted ?? first.index };
}

type ComparePaneProps = {
  readonly side: Side;
  readonly place: 'left' | 'right';
  /** Hands over the player while the pane has one. */
  readonly onPlayer: (player: Player | null) => void;
  readonly onView: (view: PlayerView) => void;
  readonly onPlaying: PlayerOptions['onPlaying'];
  readonly onRep: (rep: number) => void;
};

function sayTrouble(readout: HTMLElement | null): void {
  if (readout !== null) readout.textContent = sayCompare('notShown');
}

/** One clip of the two, with its own player, at the start of its rep. */
export function ComparePane({ side, place, onPlayer, onView, onPlaying, onRep }: ComparePaneProps) {
  const { clip, tables, rep } = side;
  const name = sayCompare(place);
  const video = useRef<HTMLVideoElement>(null);
  const canvas = useRef<HTMLCanvasElement>(null);
  const readout = useRef<HTMLParagraphElement>(null);
  const [loaded, setLoaded] = useState(false);
  const told = useRef({ onPlayer, onView, onPlaying });
  told.current = { onPlayer, onView, onPlaying };
  useEffect(() => {
    if (!loaded || video.current === null || canvas.current === null) return;
    const first = repFrames(clip.reps, rep, tables.table)?.first ?? 0;
    const player = createClipPlayer({
      clipId: clip.id,
      video: video.current,
      canvas: canvas.current,
      playback: tables.playback,
      onView: (view) => {
        canvas.current?.toggleAttribute('hidden', view.picture !== 'canvas');
        const us = frameStartUs(tables.table, view.frame);
        const since = mediaToLiftingUs(us - frameStartUs(tables.table, first), clip.realTimeFactor);
        if (readout.current !== null) {
          readout.current.textContent = sayCompare('readout', {
            frame: view.frame,
            time: clock(us),
            seconds: toHundredth(since / 1_000_000),
            rep,
          });
          readout.current.setAttribute('data-frame', String(view.frame));
          readout.current.setAttribute('data-settled', String(view.settled));
        }
        told.current.onView(view);
      },
      onPlaying: (playing) => told.current.onPlaying(playing),
      onTrouble: () => sayTrouble(readout.current),
    });
    told.current.onPlayer(player);
    player.seekTo(first);
    return () => {
      told.current.onPlayer(null);
      told.current.onPlaying('no');
      player.dispose();
    };
  }, [loaded, clip, tables, rep]);
  return (
    <section className="compare-pane" aria-label={name}>
      <div className="stage">
        <div className="stage-picture">
          <ClipPicture
            clip={clip}
            video={video}
            canvas={canvas}
            onLoaded={() => setLoaded(true)}
            onTrouble={() => sayTrouble(readout.current)}
          />
        </div>
      </div>
      <div className="compare-foot">
        <fieldset aria-label={sayCompare('repOf', { side: name })}>
          {clip.reps.map(({ index }) => (
            <button
              key={index}
              type="button"
              className="chip"
              aria-current={index === rep}
              onClick={() => onRep(index)}
            >
              {index}
            </button>
          ))}
        </fieldset>
        <p ref={readout} className="figure" data-testid={`${place}-readout`} />
      </div>
    </section>
  );
}
