import type { KeptCover } from '../../../electron/contract/covers.ts';
import { boxAt } from '../../../engine/covers/boxAt.ts';
import type { Box, CoverLook } from '../../../engine/covers/cover.ts';
import { mutate } from '../../bridge/mutate.ts';
import { reviewState } from '../../state/reviewState.ts';
import { coverState, stopCovering } from '../state/coverState.ts';
import { stopDrawing } from '../state/drawingState.ts';
import { playhead } from '../state/playhead.ts';
import { stopSettingUp } from '../state/setUpState.ts';
import { currentPlayer } from './activePlayer.ts';
import { here } from './here.ts';
import { keysBackOnCard } from './keysBackOnCard.ts';
import { goToFrame } from './moveActs.ts';

/** The covers of the clip on the stage. */
export function coversHere(): readonly KeptCover[] {
  const { data, clipId } = reviewState.getState();
  return data?.covers.filter((kept) => kept.clipId === clipId) ?? [];
}

/** Begins to cover, with the focus on the tools. */
export function startCovering(): void {
  if (here()?.tables == null) return;
  currentPlayer()?.pause();
  stopDrawing();
  stopSettingUp();
  coverState.setState({ covering: 'on', focusNext: 'tools' });
}

/** Ends covering, and puts the keys back on the scorecard. */
export function leaveCovering(): void {
  stopCovering();
  keysBackOnCard();
}

export const selectCover = (selectedId: string | null): void => coverState.setState({ selectedId });

/** Where a box is at the frame on screen: where it is being moved to, else where the library has it. */
export function boxOnScreen({ coverId, cover }: KeptCover): Box | null {
  const { open } = coverState.getState();
  const { frame } = playhead.getState();
  if (open?.coverId === coverId && open.frame === frame) return open.box;
  return cover.kind === 'box' ? boxAt(cover, frame) : null;
}

/** Puts a box somewhere else on screen; it is saved when the key or the pointer is let go. */
export function showMoved(coverId: string, box: Box): void {
  const { open } = coverState.getState();
  const { frame } = playhead.getState();
  if (open !== null && (open.coverId !== coverId || open.frame !== frame)) void saveMovedCover();
  coverState.setState({ open: { coverId, frame, box } });
}

/** Saves where a box was moved to, at its frame; it shows there until the library's own does. */
export async function saveMovedCover(): Promise<void> {
  const { open } = coverState.getState();
  if (open === null || open.coverId === null) return;
  const { coverId, frame, box } = open;
  const cover = coversHere().find((kept) => kept.coverId === coverId)?.cover;
  const before = cover?.kind === 'box' ? boxAt(cover, frame) : null;
  if (before !== null && JSON.stringify(before) !== JSON.stringify(box)) {
    await mutate('covers.place', { coverId, frame, box });
    await reviewState.getState().refresh();
  }
  if (coverState.getState().open === open) coverState.setState({ open: null });
}

async function add(cover: { readonly kind: 'head' } | { readonly kind: 'box'; readonly box: Box }): Promise<void> {
  const clipId = here()?.clip.id;
  if (clipId === undefined) return;
  currentPlayer()?.pause();
  const { open } = coverState.getState();
  const { frame } = playhead.getState();
  const asked = cover.kind === 'head' ? cover : { kind: cover.kind, place: { frame, box: cover.box } };
  const added = await mutate('covers.add', { clipId, cover: asked });
  if (added !== null) await reviewState.getState().refresh();
  coverState.setState((state) => ({
    // Another box may have been begun meanwhile.
    open: state.open === open ? null : state.open,
    ...(added !== null && { selectedId: added.coverId, focusNext: cover.kind === 'box' ? 'cover' : null }),
  }));
}

/** Covers a box from the first frame to the last, with its place at the frame on screen. */
export const addBox = (box: Box): Promise<void> => add({ kind: 'box', box });

/** Covers the lifter's head, wherever the joints have it. */
export const addHead = (): Promise<void> => add({ kind: 'head' });

export async function changeLook(coverId: string, look: CoverLook): Promise<void> {
  await mutate('covers.update', { coverId, change: { look } });
}

/** Covers from the frame on screen, or until it; where the edges would cross, the other one goes to the clip's end. */
export async function coverFromHere(edge: 'first' | 'last', { coverId, cover }: KeptCover): Promise<void> {
  const table = here()?.tables?.table;
  if (table === undefined) return;
  const { frame } = playhead.getState();
  const change =
    edge === 'first'
      ? { firstFrame: frame, lastFrame: frame > cover.lastFrame ? table.ticks.length - 1 : cover.lastFrame }
      : { firstFrame: frame < cover.firstFrame ? 0 : cover.firstFrame, lastFrame: frame };
  await mutate('covers.update', { coverId, change });
}

/** Covers the whole clip again. */
export async function coverWhole(coverId: string): Promise<void> {
  const table = here()?.tables?.table;
  if (table === undefined) return;
  await mutate('covers.update', { coverId, change: { firstFrame: 0, lastFrame: table.ticks.length - 1 } });
}

/** Forgets where a box is at the frame on screen. */
export async function forgetPlaceHere(coverId: string): Promise<void> {
  await mutate('covers.removePlace', { coverId, frame: playhead.getState().frame });
}

export async function removeCover(coverId: string): Promise<void> {
  coverState.setState({ selectedId: null, open: null, focusNext: 'tools' });
  await mutate('covers.remove', { coverId });
}

/** Selects a cover and goes to where it begins, unless it shows already. */
export function visitCover({ coverId, clipId, cover }: KeptCover): void {
  const { frame } = playhead.getState();
  const shows = frame >= cover.firstFrame && frame <= cover.lastFrame;
  coverState.setState({ selectedId: coverId, focusNext: cover.kind === 'box' ? 'cover' : null });
  if (!shows) goToFrame(clipId, cover.firstFrame);
}
