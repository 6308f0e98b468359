import type { KeptCover } from '../../../electron/contract/covers.ts';
import { type Box, boxAt, type CoverLook } from '../../../engine/covers/cover.ts';
import { mutate } from '../../bridge/mutate.ts';
import type { Command } from '../../commands/command.ts';
import { named } from '../../commands/named.ts';
import { reviewState } from '../../state/reviewState.ts';
import { stopFraming } from '../state/framingState.ts';
import { coverState, stopCovering, stopDrawing, stopSettingUp } from '../state/pictureTools.ts';
import { goToFrame } from './moving.ts';
import { isReadable, type ReviewContext } from './reviewContext.ts';

/** The covers of the clip on the stage. */
export const coversOnStage = ({ data, stage }: ReviewContext): readonly KeptCover[] =>
  data?.covers.filter((kept) => kept.clipId === stage?.clip.id) ?? [];

/** Ends covering, and gives the keys back to the scorecard. */
export function leaveCovering({ focus }: ReviewContext): void {
  stopCovering();
  focus.backOnCard();
}

export const selectCover = (selectedId: string | null): void => coverState.setState({ selectedId });

/** Where a box is at the frame on screen: where it is being moved to, else where the library has it. */
export function boxOnScreen({ frame }: ReviewContext, { coverId, cover }: KeptCover): Box | null {
  const { open } = coverState.getState();
  if (open?.coverId === coverId && open.frame === frame) return open.box;
  return cover.kind === 'box' ? boxAt(cover, frame) : null;
}

/** Puts a box somewhere else on screen; it is saved when the key or the pointer is let go. */
export function showMovedBox(context: ReviewContext, coverId: string, box: Box): void {
  const { frame } = context;
  const { open } = coverState.getState();
  if (open !== null && (open.coverId !== coverId || open.frame !== frame)) void saveMovedCover(context);
  coverState.setState({ open: { coverId, frame, box } });
}

/** Saves where a box was moved to, at its frame; it shows there until the library's own does. */
export async function saveMovedCover(context: ReviewContext): Promise<void> {
  const { open } = coverState.getState();
  if (open === null || open.coverId === null) return;
  const { coverId, frame, box } = open;
  const cover = coversOnStage(context).find((kept) => kept.coverId === coverId)?.cover;
  const before = cover?.kind === 'box' ? boxAt(cover, frame) : null;
  if (before !== null && JSON.stringify(before) !== JSON.stringify(box)) {
    await mutate('covers.place', { coverId, frame, box });
    await reviewState.getState().refresh();
  }
  if (coverState.getState().open === open) coverState.setState({ open: null });
}

type NewCover = { readonly kind: 'head' } | { readonly kind: 'box'; readonly box: Box };

async function add({ stage, player, frame }: ReviewContext, cover: NewCover): Promise<void> {
  if (stage === null) return;
  player?.pause();
  const { open } = coverState.getState();
  const asked = cover.kind === 'head' ? cover : { kind: cover.kind, place: { frame, box: cover.box } };
  const added = await mutate('covers.add', { clipId: stage.clip.id, cover: asked });
  if (added !== null) await reviewState.getState().refresh();
  coverState.setState((state) => ({
    // Another box may have been begun meanwhile.
    open: state.open === open ? null : state.open,
    ...(added !== null && { selectedId: added.coverId, focusNext: cover.kind === 'box' ? 'cover' : null }),
  }));
}

/** Covers a box from the first frame to the last, placed as it is at the frame on screen. */
export const addBox = (context: ReviewContext, box: Box): Promise<void> => add(context, { kind: 'box', box });

/** Covers the lifter's head, following the joints. */
export const addHead = (context: ReviewContext): Promise<void> => add(context, { kind: 'head' });

export async function changeLook(coverId: string, look: CoverLook): Promise<void> {
  await mutate('covers.update', { coverId, change: { look } });
}

/** Covers from the frame on screen, or until it; where the edges would cross, the other one goes to the clip's end. */
export async function coverFromHere(
  { stage, frame }: ReviewContext,
  edge: 'first' | 'last',
  { coverId, cover }: KeptCover,
): Promise<void> {
  const table = stage?.tables?.table;
  if (table === undefined) return;
  const change =
    edge === 'first'
      ? { firstFrame: frame, lastFrame: frame > cover.lastFrame ? table.ticks.length - 1 : cover.lastFrame }
      : { firstFrame: frame < cover.firstFrame ? 0 : cover.firstFrame, lastFrame: frame };
  await mutate('covers.update', { coverId, change });
}

/** Covers the whole clip again. */
export async function coverWhole({ stage }: ReviewContext, coverId: string): Promise<void> {
  const table = stage?.tables?.table;
  if (table === undefined) return;
  await mutate('covers.update', { coverId, change: { firstFrame: 0, lastFrame: table.ticks.length - 1 } });
}

/** Forgets where a box is at the frame on screen. */
export async function forgetBoxHere({ frame }: ReviewContext, coverId: string): Promise<void> {
  await mutate('covers.removePlace', { coverId, frame });
}

export async function removeCover(coverId: string): Promise<void> {
  coverState.setState({ selectedId: null, open: null, focusNext: 'tools' });
  await mutate('covers.remove', { coverId });
}

/** Selects a cover and goes to where it begins, unless it shows already. */
export function visitCover(context: ReviewContext, { coverId, clipId, cover }: KeptCover): void {
  const { frame } = context;
  const shows = frame >= cover.firstFrame && frame <= cover.lastFrame;
  coverState.setState({ selectedId: coverId, focusNext: cover.kind === 'box' ? 'cover' : null });
  if (!shows) goToFrame(context, clipId, cover.firstFrame);
}

/** Begins to cover, with the focus on the tools. */
export const cover: Command<ReviewContext> = {
  ...named('cover'),
  group: 'picture',
  keys: ['Shift+B'],
  readOnly: 'refused',
  when: isReadable,
  run: ({ player }) => {
    player?.pause();
    stopFraming();
    stopDrawing();
    stopSettingUp();
    coverState.setState({ covering: 'on', focusNext: 'tools' });
  },
};
