import { cutsBetween, partsOf } from '../../../engine/framing/cuts.ts';
import { type Crop, type Framing, turnedBy } from '../../../engine/framing/framing.ts';
import { type FrameRange, framesShown, holds } from '../../../engine/framing/section.ts';
import type { CommandId } from '../../../engine/wording/english/desk/commands.ts';
import { mutate } from '../../bridge/mutate.ts';
import type { Command } from '../../commands/command.ts';
import { named } from '../../commands/named.ts';
import { repFrames } from '../../player/repFrames.ts';
import { reviewState } from '../../state/reviewState.ts';
import { framingOf } from '../model/shownFraming.ts';
import { framingState, stopFraming } from '../state/framingState.ts';
import { stopCovering, stopDrawing, stopSettingUp } from '../state/pictureTools.ts';
import { isReadable, type ReviewContext } from './reviewContext.ts';

/** Ends framing, and gives the keys back to the scorecard. */
export function leaveFraming({ focus }: ReviewContext): void {
  stopFraming();
  focus.backOnCard();
}

/** Changes how the picture on the stage is shown; what was being drawn or slid shows until it is kept. */
export async function changeFraming({ stage }: ReviewContext, change: Partial<Framing>): Promise<void> {
  if (stage === null) return;
  const sent = framingState.getState();
  const done = await mutate('clips.frame', { clipId: stage.clip.id, change });
  if (done !== null) await reviewState.getState().refresh();
  // What was drawn or moved on meanwhile is still to be saved.
  framingState.setState(({ open, brightness }) => ({
    open: open === sent.open ? null : open,
    brightness: brightness === sent.brightness ? null : brightness,
  }));
}

/** Saves the part that is being drawn or moved. */
export async function saveOpenCrop(context: ReviewContext): Promise<void> {
  const { open } = framingState.getState();
  if (open !== null) await changeFraming(context, { crop: open });
}

export const showCrop = (open: Crop): void => framingState.setState({ open });

/** The frames that the clip on the stage shows; null without one. */
export function rangeOnStage({ stage }: ReviewContext): FrameRange | null {
  return stage === null || stage.tables === null ? null : framesShown(stage.clip.section, stage.tables.table);
}

/** Lets the clip begin or end at the frame on screen. */
async function trimHere(context: ReviewContext, edge: 'firstFrame' | 'lastFrame'): Promise<void> {
  const { stage, player, frame } = context;
  const range = rangeOnStage(context);
  if (stage === null || range === null) return;
  player?.pause();
  const done = await mutate('clips.trim', { clipId: stage.clip.id, section: { ...range, [edge]: frame } });
  if (done !== null) await reviewState.getState().refresh();
}

/** Shows all of the footage again. */
export async function showWholeFootage({ stage }: ReviewContext): Promise<void> {
  if (stage === null) return;
  await mutate('clips.trim', { clipId: stage.clip.id, section: null });
}

/** Where the clip on the stage can be split between its sets: the first frame of each part but the first. */
export function cutsOnStage(context: ReviewContext): readonly number[] {
  const { stage } = context;
  const range = rangeOnStage(context);
  if (stage === null || stage.tables === null || range === null) return [];
  const { table } = stage.tables;
  const reps = stage.clip.reps.flatMap(({ index }) => {
    const frames = repFrames(stage.clip.reps, index, table);
    return frames === null ? [] : [{ firstFrame: frames.first, lastFrame: frames.last }];
  });
  return cutsBetween(reps, table).filter((cut) => cut > range.firstFrame && holds(range, cut));
}

/** Splits the clip at some frames, each the first of a part. */
export async function splitAt({ stage }: ReviewContext, cuts: readonly number[]): Promise<void> {
  if (stage === null || cuts.length === 0) return;
  stopFraming();
  const done = await mutate('clips.split', { clipId: stage.clip.id, cuts: [...cuts] });
  if (done !== null) await reviewState.getState().refresh();
}

/** How many clips it would become. */
export function partsAt(context: ReviewContext, cuts: readonly number[]): number {
  const range = rangeOnStage(context);
  return range === null ? 1 : partsOf(range, cuts).length;
}

type FramingCommand = Command<ReviewContext>;
const shared = { group: 'picture', readOnly: 'refused', when: isReadable } as const;

/** Takes out what turns, cuts and brightens the picture, with the focus on it. */
export const frame: FramingCommand = {
  ...shared,
  ...named('frame'),
  keys: ['Shift+K'],
  run: ({ player }) => {
    player?.pause();
    stopDrawing();
    stopSettingUp();
    stopCovering();
    framingState.setState({ framing: 'on', focusNext: 'tools' });
  },
};

const turn = (id: CommandId, by: 90 | 270): FramingCommand => ({
  ...shared,
  ...named(id),
  keys: [],
  run: async (context) => {
    if (context.stage === null) return;
    await changeFraming(context, { turnDeg: turnedBy(framingOf(context.stage.clip).turnDeg, by) });
  },
});

export const turnRight = turn('turnRight', 90);
export const turnLeft = turn('turnLeft', 270);

export const mirror: FramingCommand = {
  ...shared,
  ...named('mirror'),
  keys: [],
  run: async (context) => {
    if (context.stage === null) return;
    await changeFraming(context, { mirrored: !framingOf(context.stage.clip).mirrored });
  },
};

const trim = (id: CommandId, edge: 'firstFrame' | 'lastFrame'): FramingCommand => ({
  ...shared,
  ...named(id),
  keys: [],
  run: (context) => trimHere(context, edge),
});

export const trimStart = trim('trimStart', 'firstFrame');
export const trimEnd = trim('trimEnd', 'lastFrame');

/** Between its sets where it has several, else at the frame on screen. */
export const splitClip: FramingCommand = {
  ...shared,
  ...named('splitClip'),
  keys: [],
  run: async (context) => {
    const cuts = cutsOnStage(context);
    context.player?.pause();
    await splitAt(context, cuts.length > 0 ? cuts : [context.frame]);
  },
};

/** Turning, mirroring, cutting out, brightening; cutting footage to what matters. */
export const framingCommands: readonly FramingCommand[] = [
  frame,
  turnRight,
  turnLeft,
  mirror,
  trimStart,
  trimEnd,
  splitClip,
];
