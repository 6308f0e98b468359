import type { KeyboardEvent } from 'react';
import type { ClipMedia } from '../../../electron/contract/clips.ts';
import type { Clip } from '../../../engine/review/review.ts';
import { sayFraming } from '../../words/sayFraming.ts';
import { leaveFraming, saveOpenCrop, showCrop } from '../commands/framing.ts';
import { useReview } from '../commands/ReviewDeskProvider.tsx';
import { arrowSteps, asSeen } from '../model/arrows.ts';
import { framingOf, movedCrop, sizedCrop } from '../model/shownFraming.ts';
import { framingState } from '../state/framingState.ts';

type CropMarkProps = { readonly clip: Clip; readonly media: ClipMedia; readonly unit: number };

/** While the picture is framed: the part that stays, what is cut off shaded; by arrows it moves, with Alt it grows and shrinks. */
export function CropMark({ clip, media, unit }: CropMarkProps) {
  const context = useReview();
  const { framing, open } = framingState();
  const { crop, mirrored } = framingOf(clip);
  const shown = open ?? crop;
  if (framing === 'off' || shown === null) return null;
  const { leftPx, topPx, widthPx, heightPx } = shown;
  const onKeyDown = (event: KeyboardEvent): void => {
    const arrow = arrowSteps[event.key];
    if (event.key === 'Escape') leaveFraming(context);
    else if (arrow === undefined || event.ctrlKey || event.metaKey) return;
    else {
      const step = Math.max(1, Math.round(Math.max(media.width, media.height) / (event.shiftKey ? 20 : 160)));
      const by = { x: arrow.x * step, y: arrow.y * step };
      showCrop(event.altKey ? sizedCrop(shown, by, media) : movedCrop(shown, asSeen(by, mirrored), media));
    }
    event.preventDefault();
    event.stopPropagation();
  };
  const whole = `M0 0H${media.width}V${media.height}H0Z`;
  return (
    <g className="crop-mark" data-testid="crop-mark">
      <path
        className="crop-shade"
        fillRule="evenodd"
        d={`${whole}M${leftPx} ${topPx}h${widthPx}v${heightPx}h${-widthPx}Z`}
      />
      {/* biome-ignore lint/a11y/useSemanticElements: a shape of a picture can't be an HTML button. */}
      <g
        role="button"
        tabIndex={0}
        aria-label={sayFraming('cropped')}
        data-crop=""
        onKeyDown={onKeyDown}
        onKeyUp={() => void saveOpenCrop(context)}
        onBlur={() => void saveOpenCrop(context)}
      >
        <rect
          className="crop-rim"
          x={leftPx}
          y={topPx}
          width={widthPx}
          height={heightPx}
          fillOpacity={0}
          strokeWidth={2 * unit}
        />
      </g>
    </g>
  );
}
