import { useEffect, useRef, useState } from 'react';
import { clipAddress } from '../../electron/contract/addresses.ts';
import { formatClock, frameStartUs, mediaToLiftingUs } from '../../engine/time/index.ts';
import { everyRefresh, later } from '../parts/later.ts';
import { clipTimes, createPlayer, type Player, type PlayerView } from '../review/player/index.ts';
import { createStillPainter } from '../review/player/stillPicture.ts';
import { repFrames } from '../review/repAtFrame.ts';
import type { Side } from './sides.ts';

type ComparePaneProps = {
  readonly side: Side;
  readonly name: string;
  /** Hands over the player while the pane has one. */
  readonly onPlayer: (player: Player | null) => void;
  readonly onView: (view: PlayerView) => void;
  readonly onRep: (rep: number) => void;
};

/** One clip of the two, with its own player, at the start of its rep. */
export function ComparePane({ side, name, onPlayer, onView, onRep }: ComparePaneProps) {
  const { clip, tables, rep } = side;
  const video = useRef<HTMLVideoElement>(null);
  const canvas = useRef<HTMLCanvasElement>(null);
  const readout = useRef<HTMLParagraphElement>(null);
  const [loaded, setLoaded] = useState(false);
  const told = useRef({ onPlayer, onView });
  told.current = { onPlayer, onView };
  useEffect(() => {
    if (!loaded || video.current === null || canvas.current === null) return;
    const times = clipTimes(tables.playback);
    const painter = createStillPainter(clipAddress(clip.id), canvas.current, times);
    const first = repFrames(clip.reps, rep, tables.table)?.first ?? 0;
    const player = createPlayer({
      video: video.current,
      times,
      still: painter.draw,
      source: painter.source,
      later,
      now: () => performance.now(),
      everyRefresh,
      onView: (view) => {
        canvas.current?.toggleAttribute('hidden', view.picture !== 'canvas');
        const us = frameStartUs(tables.table, view.frame);
        const since = mediaToLiftingUs(us - frameStartUs(tables.table, first), clip.realTimeFactor);
        if (readout.current !== null) {
          readout.current.textContent = `frame ${view.frame}, ${formatClock(us)}; ${(since / 1_000_000).toFixed(2)} s into rep ${rep}`;
          readout.current.setAttribute('data-frame', String(view.frame));
          readout.current.setAttribute('data-settled', String(view.settled));
        }
        told.current.onView(view);
      },
      onPlaying: () => {},
      onTrouble: () => {
        if (readout.current !== null) readout.current.textContent = 'This frame can’t be shown.';
      },
    });
    told.current.onPlayer(player);
    player.seekTo(first);
    return () => {
      told.current.onPlayer(null);
      player.dispose();
      painter.dispose();
    };
  }, [loaded, clip, tables, rep]);
  return (
    <section className="compare-pane" aria-label={name}>
      <div className="stage">
        <div className="stage-picture">
          <video
            ref={video}
            src={clipAddress(clip.id)}
            preload="auto"
            muted
            playsInline
            tabIndex={-1}
            aria-label={`Clip ${clip.name}`}
            onLoadedMetadata={() => setLoaded(true)}
          />
          <canvas ref={canvas} hidden />
        </div>
      </div>
      <div className="compare-foot">
        <fieldset aria-label={`${name}: rep`}>
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
        <p ref={readout} className="figure" data-testid={`${name.toLowerCase()}-readout`} />
      </div>
    </section>
  );
}
