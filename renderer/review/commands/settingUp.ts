import type { PointPx } from '../../../engine/recording/recording.ts';
import type { Click, DiscBox, SetUp } from '../../../engine/recording/setUp.ts';
import { mutate } from '../../bridge/mutate.ts';
import type { Command } from '../../commands/command.ts';
import { named } from '../../commands/named.ts';
import { measuresState } from '../../state/clipState.ts';
import { stopFraming } from '../state/framingState.ts';
import {
  pointsWanted,
  type SetUpTool,
  setUpState,
  stopCovering,
  stopDrawing,
  stopSettingUp,
} from '../state/pictureTools.ts';
import { isReadable, type ReviewContext } from './reviewContext.ts';

/** Ends the set-up, and gives the keys back to the scorecard. */
export function leaveSettingUp({ focus }: ReviewContext): void {
  stopSettingUp();
  focus.backOnCard();
}

export const chooseSetUpTool = (tool: SetUpTool): void =>
  setUpState.setState({ tool, points: [], radiusPx: null, focusNext: null });

/** Drops points that are not set yet; without any, ends the set-up. */
export function stepBackInSetUp(context: ReviewContext): void {
  if (setUpState.getState().points.length > 0) {
    setUpState.setState({ points: [], radiusPx: null, focusNext: 'tools' });
  } else leaveSettingUp(context);
}

type Change = Partial<Omit<SetUp, 'clicks'>>;

/** Changes what is known of how the clip on the stage was filmed. */
export async function changeSetUp(change: Change): Promise<void> {
  const { clipId } = measuresState.getState();
  if (clipId === null) return;
  if ((await mutate('measures.setUp', { clipId, change })) !== null) await measuresState.getState().refresh();
}

/** Forgets the clicks of one kind; what they followed is recorded again without them. */
export async function clearClicks(what: Click['what']): Promise<void> {
  const { clipId } = measuresState.getState();
  if (clipId !== null) await mutate('measures.clearClicks', { clipId, what });
}

/** Replaces the entry of the same frame, keeps the others. */
function withFrame<T extends { readonly frame: number }>(known: readonly T[], fresh: T): T[] {
  return [...known.filter(({ frame }) => frame !== fresh.frame), fresh].sort((a, b) => a.frame - b.frame);
}

/** Saves the points placed with the chosen tool; with too few, nothing happens. */
export async function setPoints({ player }: ReviewContext): Promise<void> {
  const { clipId, measures } = measuresState.getState();
  const { tool, points, radiusPx, lengthM } = setUpState.getState();
  const [first, second, third] = points;
  if (clipId === null || player === null || first === undefined || points.length < pointsWanted[tool]) return;
  const frame = player.frame();
  setUpState.setState({ points: [], radiusPx: null, focusNext: 'tools' });
  if (tool === 'disc' || tool === 'point' || tool === 'lifter') {
    const drawnOut = tool === 'disc' && radiusPx !== null ? { radiusPx } : {};
    await mutate('measures.click', { clipId, click: { frame, what: tool, at: first, ...drawnOut } });
    return;
  }
  if (second === undefined) return;
  if (tool === 'discBox') {
    const box = boxBetween(first, second);
    if (box !== null)
      await mutate('measures.click', { clipId, click: { frame, what: 'disc', at: middleOf(box), box } });
  } else if (tool === 'length') await changeSetUp({ knownLength: { from: first, to: second, lengthM } });
  else if (tool === 'plumb') await changeSetUp({ plumb: uprightThrough(first, second) });
  else if (tool === 'depth') {
    const known = measures?.setUp.depthClicks ?? [];
    await changeSetUp({ depthClicks: withFrame(known, { frame, hipCrease: first, kneeTop: second }) });
  } else if (third !== undefined) {
    const known = measures?.setUp.backClicks ?? [];
    await changeSetUp({ backClicks: withFrame(known, { frame, points: [first, second, third] }) });
  }
}

/** A box narrower or lower than this was not meant as one. */
const leastBoxPx = 4;

function boxBetween(one: PointPx, other: PointPx): DiscBox | null {
  const box = {
    leftPx: Math.min(one.xPx, other.xPx),
    topPx: Math.min(one.yPx, other.yPx),
    rightPx: Math.max(one.xPx, other.xPx),
    bottomPx: Math.max(one.yPx, other.yPx),
  };
  return box.rightPx - box.leftPx < leastBoxPx || box.bottomPx - box.topPx < leastBoxPx ? null : box;
}

const middleOf = ({ leftPx, topPx, rightPx, bottomPx }: DiscBox): PointPx => ({
  xPx: (leftPx + rightPx) / 2,
  yPx: (topPx + bottomPx) / 2,
});

const uprightThrough = (one: PointPx, other: PointPx): NonNullable<SetUp['plumb']> =>
  one.yPx <= other.yPx ? { top: one, bottom: other } : { top: other, bottom: one };

/** Takes out the tools of the measuring set-up, and puts the focus on them. */
export const setUp: Command<ReviewContext> = {
  ...named('setUp'),
  group: 'measuring',
  keys: ['I'],
  readOnly: 'refused',
  when: isReadable,
  run: ({ player }) => {
    player?.pause();
    stopFraming();
    stopDrawing();
    stopCovering();
    setUpState.setState({ settingUp: 'on', focusNext: 'tools' });
  },
};
