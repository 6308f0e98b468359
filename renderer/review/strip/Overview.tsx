import { filmstripAddress } from '../../../electron/contract/addresses.ts';
import type { ClipMedia } from '../../../electron/contract/clips.ts';
import type { StripWindow } from '../model/stripWindow.ts';
import { stripState } from '../state/viewState.ts';

type OverviewProps = { readonly media: ClipMedia; readonly window: StripWindow };

/** The whole clip, small, with the part that the strip shows; a click or a drag moves that part. */
export function Overview({ media, window }: OverviewProps) {
  const length = window.to - window.from;
  const show = (event: React.PointerEvent): void => {
    const box = event.currentTarget.getBoundingClientRect();
    const middle = (event.clientX - box.left) / box.width;
    stripState.getState().pan((middle - length / 2 - stripState.getState().window.from) / length);
  };
  return (
    <div
      className="overview"
      data-testid="overview"
      aria-hidden="true"
      onPointerDown={(event) => {
        event.currentTarget.setPointerCapture(event.pointerId);
        show(event);
      }}
      onPointerMove={(event) => {
        if (event.currentTarget.hasPointerCapture(event.pointerId)) show(event);
      }}
    >
      {media.filmstripPictures > 0 && <img src={filmstripAddress(media.clipId)} alt="" draggable={false} />}
      <div className="overview-window" style={{ left: `${window.from * 100}%`, width: `${length * 100}%` }} />
    </div>
  );
}
