import { Maximize, ZoomIn, ZoomOut } from 'lucide-react';
import { plain } from '../../base/figures.ts';
import { closer, further, wholePicture } from '../commands/looking.ts';
import { ReviewButton } from '../commands/ReviewDeskProvider.tsx';
import { zoomState } from '../state/zoomState.ts';

/** Closer, further away, and the whole picture again. */
export function ZoomBar() {
  const scale = zoomState((state) => state.zoom.scale);
  return (
    <span className="zoom-bar">
      <ReviewButton command={closer} shows="icon">
        <ZoomIn aria-hidden="true" />
      </ReviewButton>
      <ReviewButton command={further} shows="icon">
        <ZoomOut aria-hidden="true" />
      </ReviewButton>
      <ReviewButton command={wholePicture} shows="icon">
        <Maximize aria-hidden="true" />
      </ReviewButton>
      <output className="figure" data-testid="zoom">
        {plain(Math.round(scale * 10) / 10)} ×
      </output>
    </span>
  );
}
