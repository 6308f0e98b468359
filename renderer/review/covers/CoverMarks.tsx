import { useState } from 'react';
import type { ClipMedia } from '../../../electron/contract/clips.ts';
import { boxAt } from '../../../engine/covers/cover.ts';
import { pictureScale } from '../model/pictureGeometry.ts';
import { coverState } from '../state/coverState.ts';
import { usePlayhead } from '../state/playerState.ts';
import { zoomState } from '../state/viewState.ts';
import { CoverMark } from './CoverMark.tsx';
import { CoverShape } from './CoverShape.tsx';
import { coverName } from './coverWords.ts';
import { useClipCovers } from './useClipCovers.ts';

/** What is covered at the frame on screen, over the picture and in its pixels; fainter where nobody is covering now. */
export function CoverMarks({ media }: { readonly media: ClipMedia }) {
  const { clipId } = media;
  const covers = useClipCovers(clipId);
  const { covering, selectedId, open } = coverState();
  const scale = zoomState(({ stage, zoom }) => pictureScale(stage, media) * zoom.scale);
  const [frame, setFrame] = useState(0);
  usePlayhead((now) => {
    if (covers.length > 0 && now.clipId === clipId && now.frame !== frame) setFrame(now.frame);
  });
  const unit = scale > 0 ? 1 / scale : 1;
  return (
    <>
      {covers.map(({ coverId, cover, placed }, index) => {
        const moved = open?.coverId === coverId && open.frame === frame ? open.box : null;
        const box = moved ?? (placed && boxAt(placed, frame));
        return (
          box !== null && (
            <CoverMark
              key={coverId}
              coverId={coverId}
              name={coverName(cover, index)}
              box={box}
              look={cover.look}
              unit={unit}
              picture={media}
              hold={covering === 'off' ? 'none' : cover.kind === 'head' ? 'look' : 'move'}
              selected={coverId === selectedId}
            />
          )
        );
      })}
      {open !== null && open.coverId === null && (
        <g className="cover-mark" data-covering="true" data-selected="true">
          <CoverShape id="new" box={open.box} look="filled" unit={unit} />
        </g>
      )}
    </>
  );
}
