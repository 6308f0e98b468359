import { Maximize, ZoomIn, ZoomOut } from 'lucide-react';
import { plain } from '../../base/figures.ts';
import { zoomStep } from '../model/pictureGeometry.ts';
import { zoomState } from '../state/zoomState.ts';

/** Closer, further away, and the whole picture again. */
export function ZoomBar({ disabled }: { readonly disabled?: true }) {
  const scale = zoomState((state) => state.zoom.scale);
  const { zoomBy, fit } = zoomState.getState();
  return (
    <span className="zoom-bar">
      <button type="button" aria-label="Closer" disabled={disabled} onClick={() => zoomBy(zoomStep)}>
        <ZoomIn aria-hidden="true" />
      </button>
      <button type="button" aria-label="Further away" disabled={disabled} onClick={() => zoomBy(1 / zoomStep)}>
        <ZoomOut aria-hidden="true" />
      </button>
      <button type="button" aria-label="Whole picture" disabled={disabled || scale === 1} onClick={fit}>
        <Maximize aria-hidden="true" />
      </button>
      <output className="figure" data-testid="zoom">
        {plain(Math.round(scale * 10) / 10)} ×
      </output>
    </span>
  );
}
