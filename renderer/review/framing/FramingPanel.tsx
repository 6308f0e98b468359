import { FlipHorizontal2, RotateCcw, RotateCw } from 'lucide-react';
import { useEffect, useRef, useState } from 'react';
import type { ClipMedia } from '../../../electron/contract/clips.ts';
import { asFilmed, type Crop, isAsFilmed } from '../../../engine/framing/framing.ts';
import type { Clip } from '../../../engine/review/review.ts';
import { clockUsAt } from '../../../engine/time/frames.ts';
import type { FrameTable } from '../../../engine/time/frameTable.ts';
import { clock } from '../../base/figures.ts';
import { MoveButtons } from '../../base/MoveButtons.tsx';
import { clipClock } from '../../player/clipClock.ts';
import { sayFraming } from '../../words/sayFraming.ts';
import {
  changeFraming,
  cutsOnStage,
  leaveFraming,
  mirror,
  partsAt,
  rangeOnStage,
  showWholeFootage,
  splitAt,
  trimEnd,
  trimStart,
  turnLeft,
  turnRight,
} from '../commands/framing.ts';
import { ReviewButton, useReview } from '../commands/ReviewDeskProvider.tsx';
import { asSeen } from '../model/arrows.ts';
import { framingOf, middleCrop, movedCrop, sizedCrop } from '../model/shownFraming.ts';
import { framingState } from '../state/framingState.ts';
import { usePlayhead } from '../state/playerState.ts';

type FramingPanelProps = { readonly clip: Clip; readonly media: ClipMedia; readonly table: FrameTable };

/** The panel for how the clip's picture is shown, and which of its footage; it replaces the card, so that the picture stays large. */
export function FramingPanel({ clip, media, table }: FramingPanelProps) {
  const context = useReview();
  const heading = useRef<HTMLHeadingElement>(null);
  const focusNext = framingState((state) => state.focusNext);
  useEffect(() => {
    if (focusNext !== 'tools') return;
    heading.current?.focus();
    framingState.setState({ focusNext: null });
  }, [focusNext]);
  const framing = framingOf(clip);
  return (
    <section className="framing-panel" aria-label={sayFraming('frame')}>
      <header>
        <h2 ref={heading} tabIndex={-1}>
          {sayFraming('frame')}
        </h2>
        <button type="button" onClick={() => leaveFraming(context)}>
          {sayFraming('done')}
        </button>
      </header>
      <p>{sayFraming('intro')}</p>
      <fieldset>
        <legend>{sayFraming('direction')}</legend>
        <div className="framing-row">
          <ReviewButton command={turnLeft} shows="words">
            <RotateCcw aria-hidden="true" />
          </ReviewButton>
          <ReviewButton command={turnRight} shows="words">
            <RotateCw aria-hidden="true" />
          </ReviewButton>
          <ReviewButton command={mirror} shows="words" pressed={framing.mirrored}>
            <FlipHorizontal2 aria-hidden="true" />
          </ReviewButton>
        </div>
      </fieldset>
      <fieldset>
        <legend>{sayFraming('crop')}</legend>
        <p className="soft framing-row">{sayFraming('cropHow')}</p>
        <div className="framing-row">
          {framing.crop === null ? (
            <button type="button" onClick={() => void changeFraming(context, { crop: middleCrop(media) })}>
              {sayFraming('cropMiddle')}
            </button>
          ) : (
            <button type="button" onClick={() => void changeFraming(context, { crop: null })}>
              {sayFraming('cropNone')}
            </button>
          )}
        </div>
        {framing.crop !== null && <MoveCrop crop={framing.crop} mirrored={framing.mirrored} media={media} />}
      </fieldset>
      <Brightness clip={clip} />
      <SectionFields clip={clip} table={table} />
      {!isAsFilmed(framing) && (
        <button type="button" onClick={() => void changeFraming(context, asFilmed)}>
          {sayFraming('reset')}
        </button>
      )}
    </section>
  );
}

type MoveCropProps = { readonly crop: Crop; readonly mirrored: boolean; readonly media: ClipMedia };

/** The part that stays, moved and sized by clicks. */
function MoveCrop({ crop, mirrored, media }: MoveCropProps) {
  const context = useReview();
  const put = (to: Crop): void => void changeFraming(context, { crop: to });
  return (
    <MoveButtons
      part={sayFraming('cropped')}
      picture={media}
      onMove={(by) => put(movedCrop(crop, asSeen(by, mirrored), media))}
      onSize={(by) => put(sizedCrop(crop, by, media))}
    />
  );
}

/** Steps of the slider: each an eighth of twice as bright. */
const stepsPerDouble = 8;
const stepOf = (brightness: number): number => Math.round(Math.log2(brightness) * stepsPerDouble);
const brightnessOf = (step: number): number => Math.round(1000 * 2 ** (step / stepsPerDouble)) / 1000;
const farthest = 2 * stepsPerDouble;

function Brightness({ clip }: { readonly clip: Clip }) {
  const context = useReview();
  const kept = framingOf(clip).brightness;
  const shown = framingState((state) => state.brightness) ?? kept;
  const keep = (): void => {
    const { brightness } = framingState.getState();
    if (brightness !== null && brightness !== kept) void changeFraming(context, { brightness });
  };
  return (
    <fieldset>
      <legend>{sayFraming('brightness')}</legend>
      <div className="framing-row">
        <input
          type="range"
          min={-farthest}
          max={farthest}
          value={stepOf(shown)}
          aria-label={sayFraming('brightness')}
          aria-valuetext={sayFraming('percent', { percent: Math.round(100 * shown) })}
          data-testid="brightness"
          onChange={(event) => framingState.setState({ brightness: brightnessOf(Number(event.target.value)) })}
          onPointerUp={keep}
          onKeyUp={keep}
          onBlur={keep}
        />
        <output className="figure">{sayFraming('percent', { percent: Math.round(100 * shown) })}</output>
        {kept !== 1 && (
          <button type="button" onClick={() => void changeFraming(context, { brightness: 1 })}>
            {sayFraming('asFilmed')}
          </button>
        )}
      </div>
    </fieldset>
  );
}

type SectionFieldsProps = { readonly clip: Clip; readonly table: FrameTable };

/** From where to where the clip goes, and where it is split into several. */
function SectionFields({ clip, table }: SectionFieldsProps) {
  const context = useReview();
  const [frame, setFrame] = useState(context.frame);
  usePlayhead((now) => {
    if (now.clipId === clip.id && now.frame !== frame) setFrame(now.frame);
  });
  const range = rangeOnStage(context);
  if (range === null) return null;
  const cuts = cutsOnStage(context);
  // What is cut is told by the footage's own clock, where it is cut by the clip's.
  const inFootage = (of: number): string => clock(clockUsAt(table, of));
  const at = (of: number): string => clipClock(clip, table, of);
  return (
    <fieldset>
      <legend>{sayFraming('section')}</legend>
      <p className="soft framing-row">
        {clip.section === undefined
          ? sayFraming('wholeShown')
          : sayFraming('sectionShown', { from: inFootage(range.firstFrame), to: inFootage(range.lastFrame) })}
      </p>
      <div className="framing-row">
        <ReviewButton command={trimStart} shows="words" />
        <ReviewButton command={trimEnd} shows="words" />
        {clip.section !== undefined && (
          <button type="button" onClick={() => void showWholeFootage(context)}>
            {sayFraming('wholeFootage')}
          </button>
        )}
      </div>
      <div className="framing-row">
        {cuts.length > 0 && (
          <button type="button" onClick={() => void splitAt(context, cuts)}>
            {sayFraming('splitSets', { count: cuts.length + 1, at: cuts.map(at) })}
          </button>
        )}
        <button type="button" disabled={partsAt(context, [frame]) < 2} onClick={() => void splitAt(context, [frame])}>
          {sayFraming('splitHere', { at: at(frame) })}
        </button>
      </div>
    </fieldset>
  );
}
