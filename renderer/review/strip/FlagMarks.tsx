import { memo, useRef, useState } from 'react';
import type { Suggestion } from '../../../engine/motion/suggestion.ts';
import { entryOfClip } from '../../../engine/review/parts.ts';
import type { Clip, Flag } from '../../../engine/review/review.ts';
import type { Severity } from '../../../engine/rubric/rubric.ts';
import { criterionName } from '../../../engine/sheet/flagRows.ts';
import { frameOfMoment } from '../../../engine/time/frames.ts';
import type { FrameTable } from '../../../engine/time/frameTable.ts';
import { Strokes } from '../../base/Strokes.tsx';
import { clipClock } from '../../player/clipClock.ts';
import { catalogueState } from '../../state/catalogueState.ts';
import { reviewState } from '../../state/reviewState.ts';
import { saySeverity } from '../../words/saySeverity.ts';
import { sayStrip } from '../../words/sayStrip.ts';
import { moveFlag, visitFlag } from '../commands/flagging.ts';
import { useReview } from '../commands/ReviewDeskProvider.tsx';
import { visitSuggestion } from '../commands/suggestions.ts';
import { repsWords } from '../model/columns.ts';
import { frameAtSeconds } from '../model/moments.ts';
import { inWindow, type StripWindow, shareOfFrame } from '../model/stripWindow.ts';

/** Widths of the strokes with a margin, as shares of the narrowest strip. */
const width: Readonly<Record<Severity | 'note', number>> = {
  note: 0.034,
  keep: 0.034,
  prefer: 0.025,
  adjust: 0.034,
  correct: 0.043,
  stop: 0.055,
};
/** Less than the 24 px that a pointer has for each: there is no room for more, and the scorecard leads to every flag too. */
const laneRem = 1.125;

type FlagMarksProps = {
  readonly clip: Clip;
  readonly flags: readonly Flag[];
  /** What measuring proposes; shown as marks with a broken outline. */
  readonly suggestions: readonly Suggestion[];
  readonly table: FrameTable;
  readonly window: StripWindow;
  /** The frame under a pointer. */
  readonly frameAt: (clientX: number) => number;
};

/** Notes and cues are not drawn here, so typing them must not redraw hundreds of marks. */
function looksTheSame(one: FlagMarksProps, other: FlagMarksProps): boolean {
  return (
    one.clip.id === other.clip.id &&
    one.table === other.table &&
    one.window === other.window &&
    JSON.stringify(one.suggestions) === JSON.stringify(other.suggestions) &&
    one.flags.length === other.flags.length &&
    one.flags.every((flag, index) => {
      const before = other.flags[index];
      return (
        before !== undefined &&
        flag.id === before.id &&
        flag.severity === before.severity &&
        flag.criterion === before.criterion &&
        JSON.stringify([flag.at, flag.reps]) === JSON.stringify([before.at, before.reps])
      );
    })
  );
}

export const FlagMarks = memo(MarksOfClip, looksTheSame);

type Named = {
  readonly severity: Severity | null;
  readonly criterion: string;
  readonly reps: 'set' | readonly number[];
};

type Mark = {
  readonly key: string;
  readonly kind: 'flag' | 'suggestion';
  readonly severity: Severity | null;
  readonly position: number;
  /** "Go to flag: adjust, depth, rep 2, 0:07.133": two marks are never called the same. */
  readonly label: string;
  readonly visit: () => void;
  /** What a mark that is dragged to a frame does; null where it stays. */
  readonly moveTo: ((frame: number) => void) | null;
};

/** The flags of a clip at their moments, and those proposed; a click goes there, and a flag can be dragged to another moment. */
function MarksOfClip({ clip, flags, suggestions, table, window, frameAt }: FlagMarksProps) {
  const context = useReview();
  const positionOf = (frame: number): number => inWindow(window, shareOfFrame(table, frame));
  const data = reviewState((state) => state.data);
  const catalogue = catalogueState((state) => state.catalogue);
  const labelOf = (kind: 'goToFlag' | 'goToSuggestion', what: Named, frame: number): string => {
    const exercise = data === null ? undefined : entryOfClip(data.review, clip.id)?.exercise;
    return sayStrip(kind, {
      severity: saySeverity(what.severity ?? 'note'),
      criterion:
        catalogue === null || exercise === undefined
          ? what.criterion
          : criterionName(catalogue, what.criterion, exercise),
      reps: repsWords(what.reps),
      time: clipClock(clip, table, frame),
    });
  };
  const all: readonly Mark[] = [
    ...flags.map(
      (flag): Mark => ({
        key: flag.id,
        kind: 'flag',
        severity: flag.severity,
        position: positionOf(frameOfMoment(flag.at, table)),
        label: labelOf('goToFlag', flag, frameOfMoment(flag.at, table)),
        visit: () => visitFlag(context, flag),
        moveTo: context.readOnly ? null : (frame) => void moveFlag(context, flag, frame),
      }),
    ),
    ...suggestions.map(
      (suggestion): Mark => ({
        key: `suggestion ${suggestion.id}`,
        kind: 'suggestion',
        severity: suggestion.severity,
        position: positionOf(frameAtSeconds(suggestion.atS, table)),
        label: labelOf('goToSuggestion', suggestion, frameAtSeconds(suggestion.atS, table)),
        visit: () => visitSuggestion(context, suggestion),
        moveTo: null,
      }),
    ),
  ];
  const marks = all.filter(({ position }) => position >= 0 && position <= 1);
  const lanes = flagLanes(marks.map(({ position, severity }) => ({ position, width: width[severity ?? 'note'] })));
  return (
    <div className="strip-flags" style={{ height: `${laneRem * (Math.max(0, ...lanes) + 1) + 0.25}rem` }}>
      {marks.map((mark, index) => (
        <StripFlag
          key={mark.key}
          mark={mark}
          lane={lanes[index] ?? 0}
          frameAt={frameAt}
          positionOf={(frame) => Math.min(1, Math.max(0, positionOf(frame)))}
        />
      ))}
    </div>
  );
}

type StripFlagProps = {
  readonly mark: Mark;
  readonly lane: number;
  readonly frameAt: (clientX: number) => number;
  readonly positionOf: (frame: number) => number;
};

/** How far a pointer goes before it drags: a hand that clicks trembles. */
const tremblePx = 4;

/** One mark: a click goes to its moment; dragged along, the picture goes with it, and the flag stays where it is let go. */
function StripFlag({ mark, lane, frameAt, positionOf }: StripFlagProps) {
  const context = useReview();
  const [draggedTo, setDraggedTo] = useState<number | null>(null);
  const pressedAt = useRef<number | null>(null);
  const dragged = useRef<number | null>(null);
  const hasDragged = useRef(false);
  const { severity, moveTo } = mark;
  const stop = (): void => {
    pressedAt.current = null;
    dragged.current = null;
    setDraggedTo(null);
  };
  return (
    <button
      type="button"
      tabIndex={-1}
      className="strip-flag"
      data-kind={mark.kind}
      data-flag-mark={mark.key}
      data-dragged={draggedTo ?? undefined}
      title={moveTo === null ? undefined : sayStrip('dragFlag')}
      style={{
        left: `${(draggedTo === null ? mark.position : positionOf(draggedTo)) * 100}%`,
        top: `${lane * laneRem}rem`,
      }}
      aria-label={mark.label}
      onPointerDown={(event) => {
        event.stopPropagation();
        if (moveTo === null) return;
        event.currentTarget.setPointerCapture(event.pointerId);
        pressedAt.current = event.clientX;
      }}
      onPointerMove={(event) => {
        const from = pressedAt.current;
        if (from === null || (dragged.current === null && Math.abs(event.clientX - from) < tremblePx)) return;
        if (dragged.current === null) context.player?.pause();
        dragged.current = frameAt(event.clientX);
        setDraggedTo(dragged.current);
        context.player?.seekTo(dragged.current);
      }}
      onPointerUp={() => {
        const frame = dragged.current;
        hasDragged.current = frame !== null;
        stop();
        if (frame !== null) moveTo?.(frame);
      }}
      onPointerCancel={stop}
      onClick={() => {
        // The click that ends a drag goes nowhere: the picture is there already.
        if (!hasDragged.current) mark.visit();
        hasDragged.current = false;
      }}
    >
      <Strokes severity={severity} named="elsewhere" />
    </button>
  );
}

/** A mark along the strip: its middle and its width, as shares of the strip's length. */
type StripMark = { readonly position: number; readonly width: number };

/** The most lanes a strip has room for; more marks than that at one position share the last. */
const mostLanes = 3;

const clears = (mark: StripMark, last: StripMark): boolean =>
  mark.position - last.position >= (mark.width + last.width) / 2;

/** Gives each mark the first lane with room, so that neighbouring strokes never run together. */
export function flagLanes(marks: readonly StripMark[]): readonly number[] {
  const lastInLane: StripMark[] = [];
  const lanes = marks.map(() => 0);
  const inOrder = marks.map((mark, index) => ({ mark, index })).sort((a, b) => a.mark.position - b.mark.position);
  for (const { mark, index } of inOrder) {
    const free = lastInLane.findIndex((last) => clears(mark, last));
    const lane = Math.min(free === -1 ? lastInLane.length : free, mostLanes - 1);
    lastInLane[lane] = mark;
    lanes[index] = lane;
  }
  return lanes;
}
