import { framesShown } from '../../../engine/framing/section.ts';
import type { Clip } from '../../../engine/review/review.ts';
import type { FrameTable } from '../../../engine/time/frameTable.ts';
import { allOf, available, type Command, unavailable } from '../../commands/command.ts';
import { named } from '../../commands/named.ts';
import type { Loop } from '../../player/player.ts';
import { canPlay } from '../../player/playingCommands.ts';
import { repAtFrame, repFrames } from '../../player/repFrames.ts';
import { sayReasons } from '../../words/sayReasons.ts';
import { playerState } from '../state/playerState.ts';
import { isReadable, type ReviewContext } from './reviewContext.ts';

/** The frames that a clip shows. */
function wholeOf({ section }: Clip, table: FrameTable): Loop {
  const { firstFrame, lastFrame } = framesShown(section, table);
  return { first: firstFrame, last: lastFrame };
}

/** Frames of the cursor's rep, else of the rep on screen; of the whole clip where there is none. */
function repLoop({ stage, cursor: { column } }: ReviewContext, frame: number): Loop | null {
  if (stage === null || stage.tables === null) return null;
  const { table } = stage.tables;
  const chosen = column?.clipId === stage.clip.id && column.rep !== 'set' ? column.rep : null;
  const rep = chosen ?? repAtFrame(stage.clip.reps, frame, table);
  const frames = rep === null ? null : repFrames(stage.clip.reps, rep, table);
  return frames ?? wholeOf(stage.clip, table);
}

/** Gives the player the frames to repeat: of the rep, or of the marked range. */
export function applyLoop(context: ReviewContext): void {
  const { player, stage, playback } = context;
  if (player === null || stage === null) return;
  const { loops, range } = playback;
  if (loops === 'nothing') player.setLoop(null);
  else if (loops === 'rep') player.setLoop(repLoop(context, player.frame()));
  else player.setLoop(range?.clipId === stage.clip.id ? range : null);
}

function toggle(context: ReviewContext, what: 'rep' | 'range'): void {
  playerState.setState(({ loops }) => ({ loops: loops === what ? 'nothing' : what }));
  applyLoop(context);
}

/** Marks where the section to look at begins or ends; the other edge moves along where they would cross. */
function markRange(context: ReviewContext, edge: 'first' | 'last'): void {
  const { player, stage, playback } = context;
  if (player === null || stage === null || stage.tables === null) return;
  const frame = player.frame();
  const { range } = playback;
  const own = range?.clipId === stage.clip.id ? range : wholeOf(stage.clip, stage.tables.table);
  const next =
    edge === 'first'
      ? { first: frame, last: Math.max(frame, own.last) }
      : { first: Math.min(frame, own.first), last: frame };
  playerState.setState({ range: { clipId: stage.clip.id, ...next }, loops: 'range' });
  applyLoop(context);
}

type Repeating = Command<ReviewContext>;
const canMarkRange = (context: ReviewContext) => allOf(isReadable(context), canPlay(context));
const shared = { group: 'picture', readOnly: 'allowed', when: canMarkRange } as const;

export const repeatRep: Repeating = {
  ...shared,
  ...named('loop'),
  keys: ['R'],
  when: isReadable,
  run: (context) => toggle(context, 'rep'),
};

const rangeFirst: Repeating = {
  ...shared,
  ...named('rangeFirst'),
  keys: ['A'],
  run: (context) => markRange(context, 'first'),
};

const rangeLast: Repeating = {
  ...shared,
  ...named('rangeLast'),
  keys: ['B'],
  run: (context) => markRange(context, 'last'),
};

const repeatRange: Repeating = {
  ...shared,
  ...named('loopRange'),
  keys: ['Shift+R'],
  when: ({ playback: { loops, range } }) =>
    loops !== 'range' && range === null ? unavailable(sayReasons('noSection')) : available,
  run: (context) => toggle(context, 'range'),
};

/** Repeating a rep or a section. */
export const repeatingCommands: readonly Repeating[] = [repeatRep, rangeFirst, rangeLast, repeatRange];
