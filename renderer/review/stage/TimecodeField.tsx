import { useRef } from 'react';
import type { FrameTable } from '../../../engine/time/frameTable.ts';
import { formatTimecode, parseTimecode, type TimecodeRate } from '../../../engine/time/timecode.ts';
import { statusState } from '../../bridge/statusState.ts';
import { useReview } from '../commands/ReviewDeskProvider.tsx';
import { usePlayhead } from '../state/playerState.ts';

type TimecodeFieldProps = { readonly clipId: string; readonly table: FrameTable; readonly rate: TimecodeRate };

/** The SMPTE time code of the frame on screen, counted from the clip's first frame; one that is typed is gone to. */
export function TimecodeField({ clipId, table, rate }: TimecodeFieldProps) {
  const context = useReview();
  const field = useRef<HTMLInputElement>(null);
  const show = (frame: number): void => {
    const label = formatTimecode(frame, rate);
    if (field.current !== null && field.current.value !== label) field.current.value = label;
  };
  usePlayhead((now) => {
    if (now.clipId === clipId && document.activeElement !== field.current) show(now.frame);
  });
  const goTo = (label: string): void => {
    const { player } = context;
    const frame = parseTimecode(label.trim(), rate);
    if (frame === null || frame >= table.ticks.length) {
      const last = formatTimecode(table.ticks.length - 1, rate);
      statusState.getState().tell(`No frame of this clip has the time code “${label}”; the last one is ${last}.`);
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
      aria-label="Time code"
      aria-description="Type a time code and press Enter to go there"
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
