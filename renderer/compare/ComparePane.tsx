import { FlipHorizontal } from 'lucide-react';
import { type PointerEvent, type ReactNode, useEffect, useRef, useState } from 'react';
import { asFilmed } from '../../engine/framing/framing.ts';
import { toldFrame } from '../../engine/framing/toldTime.ts';
import { frameStartUs } from '../../engine/time/frames.ts';
import { mediaToLiftingUs } from '../../engine/time/moment.ts';
import { toHundredth } from '../base/figures.ts';
import { ClipPicture, createClipPlayer } from '../player/ClipPicture.tsx';
import { clipClock } from '../player/clipClock.ts';
import { FramedPicture } from '../player/FramedPicture.tsx';
import type { Player, PlayerOptions, PlayerView } from '../player/player.ts';
import { repFrames } from '../player/repFrames.ts';
import { speakSoon } from '../state/spokenState.ts';
import { sayCompare } from '../words/sayCompare.ts';
import { compareDesk, mirror, type Place, panAt, zoomAt } from './compareDesk.ts';
import { transformOf } from './paneZoom.ts';
import { Caption, RepFlags, RepMeasures } from './SideFacts.tsx';
import { framesOfSide, type Side } from './side.ts';

type ComparePaneProps = {
  readonly side: Side;
  readonly place: Place;
  /** The frame that a clip is opened at. */
  readonly opensAt: () => number;
  /** Hands over the player while the pane has one. */
  readonly onPlayer: (player: Player | null) => void;
  readonly onView: (view: PlayerView) => void;
  readonly onPlaying: PlayerOptions['onPlaying'];
  readonly onRep: (rep: number) => void;
  /** A moment of this clip was chosen. */
  readonly onGo: (frame: number) => void;
};

function sayTrouble(readout: HTMLElement | null): void {
  if (readout !== null) readout.textContent = sayCompare('notShown');
}

/** One clip of the two, with its own player; another rep is shown without opening the clip again. */
export function ComparePane(props: ComparePaneProps) {
  const { side, place, onRep, onGo } = props;
  const { clip, tables, rep } = side;
  const name = sayCompare(place);
  const video = useRef<HTMLVideoElement>(null);
  const canvas = useRef<HTMLCanvasElement>(null);
  const readout = useRef<HTMLParagraphElement>(null);
  const [loaded, setLoaded] = useState(false);
  const mirrored = compareDesk((state) => state.mirrored[place]);
  const framing = clip.framing ?? asFilmed;
  const latest = useRef(props);
  latest.current = props;
  useEffect(() => {
    if (!loaded || video.current === null || canvas.current === null) return;
    const player = createClipPlayer({
      clipId: clip.id,
      within: framesOfSide({ clip, tables }),
      video: video.current,
      canvas: canvas.current,
      playback: tables.playback,
      onView: (view) => {
        canvas.current?.toggleAttribute('hidden', view.picture !== 'canvas');
        if (readout.current !== null) write(readout.current, latest.current, view);
        latest.current.onView(view);
      },
      onPlaying: (playing) => latest.current.onPlaying(playing),
      onTrouble: () => sayTrouble(readout.current),
    });
    latest.current.onPlayer(player);
    player.seekTo(latest.current.opensAt());
    return () => {
      latest.current.onPlayer(null);
      latest.current.onPlaying('no');
      player.dispose();
    };
  }, [loaded, clip, tables]);
  return (
    <section className="compare-pane" aria-label={name}>
      <Caption side={side} />
      <ZoomedStage place={place}>
        <FramedPicture
          upright={side.picture}
          framing={{ ...framing, mirrored: framing.mirrored !== mirrored }}
          footage={
            <ClipPicture
              clip={clip}
              video={video}
              canvas={canvas}
              onLoaded={() => setLoaded(true)}
              onTrouble={() => sayTrouble(readout.current)}
            />
          }
        />
      </ZoomedStage>
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
        <button
          type="button"
          className="icon-button"
          aria-pressed={mirrored}
          aria-label={sayCompare('mirrorOf', { side: name })}
          title={sayCompare('mirrorOf', { side: name })}
          onClick={() => mirror(place)}
        >
          <FlipHorizontal aria-hidden="true" />
        </button>
        <p ref={readout} className="figure" data-testid={`${place}-readout`} />
      </div>
      <div className="compare-facts">
        <RepMeasures side={side} />
        <RepFlags side={side} onGo={onGo} />
      </div>
    </section>
  );
}

type Shown = Pick<ComparePaneProps, 'side' | 'place'>;

function write(readout: HTMLElement, { side, place }: Shown, { frame, settled }: PlayerView): void {
  const { clip, tables, rep } = side;
  const { table } = tables;
  const first = repFrames(clip.reps, rep, table)?.first ?? 0;
  const since = mediaToLiftingUs(frameStartUs(table, frame) - frameStartUs(table, first), clip.realTimeFactor);
  readout.textContent = sayCompare('readout', {
    ...{ frame: toldFrame(clip, frame), time: clipClock(clip, table, frame) },
    ...{ seconds: toHundredth(since / 1_000_000), rep },
  });
  if (settled) speakSoon(place, sayCompare('sideSaid', { side: sayCompare(place), words: readout.textContent }));
  readout.setAttribute('data-frame', String(frame));
  readout.setAttribute('data-settled', String(settled));
}

/** The stage of a pane: the wheel zooms at the pointer, dragging moves the picture. */
function ZoomedStage({ place, children }: { readonly place: Place; readonly children: ReactNode }) {
  const stage = useRef<HTMLDivElement>(null);
  const zoom = compareDesk((state) => state.zoom[place]);
  const last = useRef<{ readonly x: number; readonly y: number } | null>(null);
  useEffect(() => {
    const element = stage.current;
    if (element === null) return;
    const onWheel = (event: WheelEvent): void => {
      event.preventDefault();
      const box = element.getBoundingClientRect();
      const at = { x: (event.clientX - box.left) / box.width, y: (event.clientY - box.top) / box.height };
      zoomAt(place, 2 ** (-event.deltaY / 300), at);
    };
    element.addEventListener('wheel', onWheel, { passive: false });
    return () => element.removeEventListener('wheel', onWheel);
  }, [place]);
  const onMove = ({ clientX, clientY, currentTarget }: PointerEvent): void => {
    if (last.current === null) return;
    const { width, height } = currentTarget.getBoundingClientRect();
    panAt(place, { x: (clientX - last.current.x) / width, y: (clientY - last.current.y) / height });
    last.current = { x: clientX, y: clientY };
  };
  const end = (): void => {
    last.current = null;
  };
  return (
    <div
      ref={stage}
      className="stage"
      data-zoomed={zoom.scale > 1}
      onPointerDown={(event) => {
        last.current = { x: event.clientX, y: event.clientY };
        event.currentTarget.setPointerCapture(event.pointerId);
      }}
      onPointerMove={onMove}
      onPointerUp={end}
      onPointerCancel={end}
    >
      <div className="stage-picture" data-testid={`${place}-picture`} style={{ transform: transformOf(zoom) }}>
        {children}
      </div>
    </div>
  );
}
