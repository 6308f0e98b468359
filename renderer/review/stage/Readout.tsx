import { useMemo, useRef } from 'react';
import { framesShown, holds } from '../../../engine/framing/section.ts';
import { footageFrame, toldFrame, toldFrameCount, toldUsOfFrame } from '../../../engine/framing/toldTime.ts';
import type { Clip } from '../../../engine/review/review.ts';
import { frameStartUs } from '../../../engine/time/frames.ts';
import type { FrameTable } from '../../../engine/time/frameTable.ts';
import { mediaToLiftingUs } from '../../../engine/time/moment.ts';
import { formatTimecode, parseTimecode, type TimecodeRate, timecodeRateOf } from '../../../engine/time/writtenTime.ts';
import { clock } from '../../base/figures.ts';
import { statusState } from '../../bridge/statusState.ts';
import { clipClock } from '../../player/clipClock.ts';
import { repAtFrame, repFrames } from '../../player/repFrames.ts';
import { speakSoon } from '../../state/spokenState.ts';
import { sayStage } from '../../words/sayStage.ts';
import { useReview } from '../commands/ReviewDeskProvider.tsx';
import { playerState, usePlayhead } from '../state/playerState.ts';

/** Frame number, time code, clip time and real time of the picture on screen. */
export function Readout({ clip, table }: { readonly clip: Clip; readonly table: FrameTable }) {
  const frame = useRef<HTMLElement>(null);
  const media = useRef<HTMLElement>(null);
  const lifting = useRef<HTMLElement>(null);
  const inRep = useRef<HTMLElement>(null);
  usePlayhead((now) => {
    if (now.clipId !== clip.id || now.frame >= table.ticks.length) return;
    const us = frameStartUs(table, now.frame);
    const clipUs = toldUsOfFrame(clip, table, now.frame);
    const rep = repAtFrame(clip.reps, now.frame, table);
    const start = rep === null ? null : repFrames(clip.reps, rep, table)?.first;
    write(frame.current, String(toldFrame(clip, now.frame)));
    write(media.current, clock(clipUs));
    write(lifting.current, clock(mediaToLiftingUs(clipUs, clip.realTimeFactor)));
    const sinceStart = start == null ? null : mediaToLiftingUs(us - frameStartUs(table, start), clip.realTimeFactor);
    write(
      inRep.current,
      sinceStart === null || rep === null ? sayStage('noRep') : sayStage('repTime', { rep, time: clock(sinceStart) }),
    );
    frame.current?.setAttribute('data-settled', String(now.settled));
    frame.current?.setAttribute('data-picture', now.picture);
  });
  const told = useRef<number | null>(null);
  const playing = playerState((state) => state.playing);
  usePlayhead((now) => {
    if (now.clipId !== clip.id || !now.settled || playing !== 'no' || now.frame >= table.ticks.length) return;
    const isFirst = told.current === null;
    if (told.current === now.frame) return;
    told.current = now.frame;
    // A slider says its own value.
    if (isFirst || document.activeElement?.getAttribute('role') === 'slider') return;
    const rep = repAtFrame(clip.reps, now.frame, table);
    const at = { frame: toldFrame(clip, now.frame), time: clipClock(clip, table, now.frame) };
    speakSoon('frame', rep === null ? sayStage('frameSaid', at) : sayStage('frameInRepSaid', { ...at, rep }));
  });
  const rate = useMemo(() => timecodeRateOf(table), [table]);
  return (
    <dl className="readout">
      <div>
        <dt>{sayStage('frame')}</dt>
        <dd ref={frame} data-testid="frame-number" />
        <dd className="of-frames">{sayStage('ofFrames', { count: toldFrameCount(clip, table) })}</dd>
      </div>
      {rate !== null && (
        <div>
          <dt>{sayStage('timeCode')}</dt>
          <dd>
            <TimecodeField clip={clip} table={table} rate={rate} />
          </dd>
        </div>
      )}
      <div>
        <dt>{sayStage('clipTime')}</dt>
        <dd ref={media} data-testid="media-time" />
      </div>
      <div data-same={clip.realTimeFactor === 1}>
        <dt>{sayStage('realTime')}</dt>
        <dd ref={lifting} data-testid="lifting-time" />
      </div>
      <div>
        <dt className="visually-hidden">{sayStage('inRep')}</dt>
        <dd ref={inRep} data-testid="rep-time" />
      </div>
    </dl>
  );
}

function write(element: HTMLElement | null, text: string): void {
  if (element !== null && element.textContent !== text) element.textContent = text;
}

type TimecodeFieldProps = { readonly clip: Clip; readonly table: FrameTable; readonly rate: TimecodeRate };

/** The SMPTE time code of the frame on screen, counted from the clip's first frame; one that is typed is gone to. */
function TimecodeField({ clip, table, rate }: TimecodeFieldProps) {
  const context = useReview();
  const field = useRef<HTMLInputElement>(null);
  const show = (frame: number): void => {
    const label = formatTimecode(toldFrame(clip, frame), rate);
    if (field.current !== null && field.current.value !== label) field.current.value = label;
  };
  usePlayhead((now) => {
    if (now.clipId === clip.id && document.activeElement !== field.current) show(now.frame);
  });
  const goTo = (label: string): void => {
    const { player } = context;
    const told = parseTimecode(label.trim(), rate);
    const frame = told === null ? null : footageFrame(clip, told);
    const range = framesShown(clip.section, table);
    if (frame === null || !holds(range, frame)) {
      const last = formatTimecode(toldFrame(clip, range.lastFrame), rate);
      statusState.getState().tell(sayStage('noTimeCode', { typed: label, last }));
      return;
    }
    player?.pause();
    player?.seekTo(frame);
    field.current?.blur();
  };
  return (
    <input
      ref={field}
      type="text"
      className="timecode"
      aria-label={sayStage('timeCode')}
      aria-description={sayStage('timeCodeHint')}
      data-testid="timecode"
      maxLength={11}
      spellCheck={false}
      autoComplete="off"
      onFocus={(event) => event.currentTarget.select()}
      onBlur={() => show(context.frame)}
      onKeyDown={(event) => {
        if (event.key === 'Enter') goTo(event.currentTarget.value);
        else if (event.key === 'Escape') event.currentTarget.blur();
        else return;
        event.preventDefault();
        event.stopPropagation();
      }}
    />
  );
}
