import { type ReactNode, useEffect, useRef, useState } from 'react';
import { posterAddress } from '../../../electron/contract/addresses.ts';
import type { ClipMedia } from '../../../electron/contract/clips.ts';
import type { Clip } from '../../../engine/review/review.ts';
import { ClipPicture } from '../../player/ClipPicture.tsx';
import type { ClipTables } from '../../state/tablesState.ts';
import { playerState, usePlayhead } from '../state/playerState.ts';
import { zoomState } from '../state/viewState.ts';
import { Ghost } from './Ghost.tsx';
import { usePlayer } from './usePlayer.ts';
import { useZoom } from './useZoom.ts';

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
  const [loaded, setLoaded] = useState(false);
  const trouble = playerState((state) => state.trouble);
  usePlayer({ clip, video, canvas, playback: loaded && tables !== null ? tables.playback : null });
  usePlayhead(({ picture }) => canvas.current?.toggleAttribute('hidden', picture !== 'canvas'));
  useEffect(() => {
    playerState.setState({ trouble: '' });
  }, []);

  const why = media.trouble !== '' ? media.trouble : trouble;
  if (!media.ready || media.trouble !== '') {
    return (
      <div className="stage" data-testid="stage">
        {media.hasPoster && <img className="stage-poster" src={posterAddress(clip.id)} alt="" />}
        <p className="stage-words">{why !== '' ? why : 'This clip is still being read; it plays when that is done.'}</p>
      </div>
    );
  }
  return (
    <div ref={stage} className="stage" data-testid="stage" data-zoomed={zoom.scale > 1}>
      <div
        className="stage-picture"
        style={{ transform: `translate(${zoom.x}px, ${zoom.y}px) scale(${zoom.scale})` }}
        data-testid="stage-picture"
      >
        <ClipPicture
          clip={clip}
          video={video}
          canvas={canvas}
          onLoaded={() => setLoaded(true)}
          onTrouble={() =>
            playerState.setState({ trouble: 'The clip can’t be shown: its file may be missing or damaged.' })
          }
        />
        {tables !== null && <Ghost clip={clip} tables={tables} />}
        {tables !== null && media.width > 0 && children}
      </div>
      {why !== '' && <p className="stage-words">{why}</p>}
    </div>
  );
}
