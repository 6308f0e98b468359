import { type ReactNode, type RefObject, useEffect, useMemo, useRef, useState } from 'react';
import { useShallow } from 'zustand/react/shallow';
import { posterAddress } from '../../../electron/contract/addresses.ts';
import type { ClipMedia } from '../../../electron/contract/clips.ts';
import { lookKey } from '../../../engine/framing/lookKey.ts';
import { clipsOfSet } from '../../../engine/review/camerasOfSet.ts';
import { entryOfClip } from '../../../engine/review/parts.ts';
import type { Clip } from '../../../engine/review/review.ts';
import { ClipPicture } from '../../player/ClipPicture.tsx';
import { FramedPicture } from '../../player/FramedPicture.tsx';
import type { ClipTables } from '../../state/clipState.ts';
import { type ReviewData, reviewState } from '../../state/reviewState.ts';
import { sayProblem } from '../../words/sayProblem.ts';
import { sayStage } from '../../words/sayStage.ts';
import type { Point } from '../model/pictureGeometry.ts';
import { shownFraming } from '../model/shownFraming.ts';
import { framingState } from '../state/framingState.ts';
import { type Playhead, playerState, playhead } from '../state/playerState.ts';
import { zoomState } from '../state/viewState.ts';
import { Ghost } from './Ghost.tsx';
import { OtherCamera } from './OtherCamera.tsx';
import { usePlayer } from './usePlayer.ts';

type StageProps = {
  readonly clip: Clip;
  readonly media: ClipMedia;
  readonly tables: ClipTables | null;
  /** What lies over the picture once its size and times are known. */
  readonly children: ReactNode;
};

/** The picture, dark around it; where the video can't show a frame, a decoded one lies over it. */
export function Stage({ clip, media, tables, children }: StageProps) {
  const video = useRef<HTMLVideoElement>(null);
  const canvas = useRef<HTMLCanvasElement>(null);
  const stage = useRef<HTMLDivElement>(null);
  const zoom = zoomState((state) => state.zoom);
  useZoom(stage);
  const framing = framingState(useShallow((now) => shownFraming(clip, now)));
  const [loaded, setLoaded] = useState(false);
  const trouble = playerState((state) => state.trouble);
  usePlayer({ clip, video, canvas, playback: loaded && tables !== null ? tables.playback : null });
  useDrawnOver(canvas);
  useEffect(() => {
    playerState.setState({ trouble: '' });
  }, []);

  const data = reviewState((state) => state.data);
  const other = useMemo(() => otherCameraIn(data, clip), [data, clip]);

  const why = media.trouble === null ? trouble : sayProblem({ message: media.trouble });
  if (!media.ready || media.trouble !== null) {
    return (
      <div className="stage" data-testid="stage">
        {media.hasPoster && <img className="stage-poster" src={posterAddress(clip.id, lookKey(clip))} alt="" />}
        <p className="stage-words">{why !== '' ? why : sayStage('stillRead')}</p>
      </div>
    );
  }
  return (
    <section
      ref={stage}
      className="stage"
      aria-label={sayStage('clip', { name: clip.name })}
      data-testid="stage"
      data-zoomed={zoom.scale > 1}
    >
      <div
        className="stage-picture"
        style={{ transform: `translate(${zoom.x}px, ${zoom.y}px) scale(${zoom.scale})` }}
        data-testid="stage-picture"
      >
        <FramedPicture
          upright={media}
          framing={framing}
          footage={
            <>
              <ClipPicture
                clip={clip}
                video={video}
                canvas={canvas}
                onLoaded={() => setLoaded(true)}
                onTrouble={() => playerState.setState({ trouble: sayStage('clipMissing') })}
              />
              {tables !== null && <Ghost clip={clip} tables={tables} />}
            </>
          }
        >
          {tables !== null && media.width > 0 && children}
        </FramedPicture>
      </div>
      {tables !== null && other !== null && <OtherCamera clip={clip} tables={tables} other={other} />}
      {why !== '' && <p className="stage-words">{why}</p>}
    </section>
  );
}

/** Shows the canvas with the frame that was drawn on it: a refresh later, the sound of a narration would run on beside the picture before. */
function useDrawnOver(canvas: RefObject<HTMLCanvasElement | null>): void {
  useEffect(() => {
    const show = ({ picture }: Playhead): void => {
      canvas.current?.toggleAttribute('hidden', picture !== 'canvas');
    };
    show(playhead.getState());
    return playhead.subscribe(show);
  });
}

/** Another clip that shows the set of this one, where its footage can be shown. */
function otherCameraIn(data: ReviewData | null, clip: Clip): { readonly clip: Clip; readonly media: ClipMedia } | null {
  const entry = data === null ? undefined : entryOfClip(data.review, clip.id);
  const cameras = entry === undefined ? [] : clipsOfSet(entry.clips, clip);
  const at = cameras.findIndex(({ id }) => id === clip.id);
  const other = cameras.length < 2 ? undefined : cameras[(at + 1) % cameras.length];
  const media = data?.media.find(({ clipId, ready }) => clipId === other?.id && ready);
  return other === undefined || media === undefined ? null : { clip: other, media };
}

const pointIn = (box: DOMRect, event: { readonly clientX: number; readonly clientY: number }): Point => ({
  x: event.clientX - box.left,
  y: event.clientY - box.top,
});

/** Zooms the stage with the wheel at the pointer, and pans it by dragging once it is zoomed. */
function useZoom(stage: RefObject<HTMLElement | null>): void {
  useEffect(() => {
    const element = stage.current;
    if (element === null) return;
    const measure = (): void =>
      zoomState.getState().setStage({ width: element.clientWidth, height: element.clientHeight });
    const sizes = new ResizeObserver(measure);
    sizes.observe(element);
    const onWheel = (event: WheelEvent): void => {
      event.preventDefault();
      zoomState.getState().zoomBy(2 ** (-event.deltaY / 300), pointIn(element.getBoundingClientRect(), event));
    };
    let last: Point | null = null;
    const onDown = (event: PointerEvent): void => {
      if (event.defaultPrevented || event.button > 1 || zoomState.getState().zoom.scale === 1) return;
      last = { x: event.clientX, y: event.clientY };
      element.setPointerCapture(event.pointerId);
    };
    const onMove = (event: PointerEvent): void => {
      if (last === null) return;
      zoomState.getState().pan({ x: event.clientX - last.x, y: event.clientY - last.y });
      last = { x: event.clientX, y: event.clientY };
    };
    const onUp = (): void => {
      last = null;
    };
    element.addEventListener('wheel', onWheel, { passive: false });
    element.addEventListener('pointerdown', onDown);
    element.addEventListener('pointermove', onMove);
    element.addEventListener('pointerup', onUp);
    element.addEventListener('pointercancel', onUp);
    return () => {
      sizes.disconnect();
      element.removeEventListener('wheel', onWheel);
      element.removeEventListener('pointerdown', onDown);
      element.removeEventListener('pointermove', onMove);
      element.removeEventListener('pointerup', onUp);
      element.removeEventListener('pointercancel', onUp);
    };
  }, [stage]);
}
