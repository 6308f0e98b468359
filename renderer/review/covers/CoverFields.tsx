import { useId, useState } from 'react';
import { type Box, coverLooks } from '../../../engine/covers/cover.ts';
import type { FrameRange } from '../../../engine/framing/section.ts';
import { MoveButtons } from '../../base/MoveButtons.tsx';
import { sayCovers } from '../../words/sayCovers.ts';
import {
  boxOnScreen,
  changeLook,
  coverFromHere,
  coverWhole,
  forgetBoxHere,
  saveMovedCover,
  showMovedBox,
} from '../commands/covering.ts';
import { useReview } from '../commands/ReviewDeskProvider.tsx';
import { asSeen } from '../model/arrows.ts';
import type { Size } from '../model/pictureGeometry.ts';
import { usePlayhead } from '../state/playerState.ts';
import type { ClipCoverShown } from './clipCovers.ts';
import { movedBox, sizedBox } from './coverBoxes.ts';

type CoverFieldsProps = {
  readonly kept: ClipCoverShown;
  readonly name: string;
  readonly shown: FrameRange;
  readonly picture: Size;
};

/** How the selected cover looks, from when until when it covers, and its place at the frame on screen. */
export function CoverFields({ kept, name, shown, picture }: CoverFieldsProps) {
  const context = useReview();
  const { coverId, clipId, cover } = kept;
  const group = useId();
  const [frame, setFrame] = useState(0);
  usePlayhead((now) => {
    if (now.clipId === clipId && now.frame !== frame) setFrame(now.frame);
  });
  const isWhole = cover.firstFrame <= shown.firstFrame && cover.lastFrame >= shown.lastFrame;
  return (
    <section className="cover-fields" aria-label={name}>
      <fieldset className="draw-tools" aria-label={sayCovers('look')}>
        {coverLooks.map((look) => (
          <label key={look}>
            <input
              type="radio"
              name={group}
              value={look}
              checked={cover.look === look}
              onChange={() => void changeLook(coverId, look)}
            />
            {sayCovers(look)}
          </label>
        ))}
      </fieldset>
      <div className="cover-buttons">
        <button type="button" onClick={() => void coverFromHere(context, 'first', kept)}>
          {sayCovers('fromHere')}
        </button>
        <button type="button" onClick={() => void coverFromHere(context, 'last', kept)}>
          {sayCovers('untilHere')}
        </button>
        <button type="button" disabled={isWhole} onClick={() => void coverWhole(context, coverId)}>
          {sayCovers('wholeClip')}
        </button>
      </div>
      {cover.kind === 'box' && <PlaceHere kept={kept} frame={frame} name={name} picture={picture} />}
    </section>
  );
}

type PlaceHereProps = {
  readonly kept: ClipCoverShown;
  readonly frame: number;
  readonly name: string;
  readonly picture: Size;
};

/** Whether the box was put where it is at this frame, or moves through. */
function PlaceHere({ kept, frame, name, picture }: PlaceHereProps) {
  const context = useReview();
  const { coverId, cover } = kept;
  if (cover.kind !== 'box') return null;
  const covers = frame >= cover.firstFrame && frame <= cover.lastFrame;
  const placed = cover.places.some((place) => place.frame === frame);
  const words = placed ? 'placedHere' : covers ? 'notPlacedHere' : 'notCovering';
  const box = covers ? boxOnScreen(context, kept) : null;
  const put = (to: Box): void => {
    showMovedBox(context, coverId, to);
    void saveMovedCover(context);
  };
  const mirrored = context.stage?.clip.framing?.mirrored === true;
  return (
    <div className="cover-buttons">
      <p className="soft">{sayCovers(words)}</p>
      {box !== null && (
        <MoveButtons
          part={name}
          picture={picture}
          onMove={(by) => put(movedBox(box, asSeen(by, mirrored), picture))}
          onSize={(by) => put(sizedBox(box, by, picture))}
        />
      )}
      {placed && cover.places.length > 1 && (
        <button type="button" onClick={() => void forgetBoxHere(context, coverId)}>
          {sayCovers('removePlace')}
        </button>
      )}
    </div>
  );
}
