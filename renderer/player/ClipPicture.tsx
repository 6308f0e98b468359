import type { RefObject } from 'react';
import { clipAddress } from '../../electron/contract/addresses.ts';
import type { Clip } from '../../engine/review/review.ts';

type ClipPictureProps = {
  readonly clip: Clip;
  readonly video: RefObject<HTMLVideoElement | null>;
  readonly canvas: RefObject<HTMLCanvasElement | null>;
  readonly onLoaded: () => void;
  readonly onTrouble: () => void;
};

/** The video of a clip, and over it the canvas for frames that it can't show. */
export function ClipPicture({ clip, video, canvas, onLoaded, onTrouble }: ClipPictureProps) {
  return (
    <>
      <video
        ref={video}
        src={clipAddress(clip.id)}
        preload="auto"
        muted
        playsInline
        tabIndex={-1}
        aria-label={`Clip ${clip.name}`}
        onLoadedMetadata={onLoaded}
        onError={onTrouble}
      />
      <canvas ref={canvas} hidden />
    </>
  );
}
