import { type Drawing, type Drawn, type Point, showsAt } from '../../../engine/review/drawings/drawing.ts';
import { distanceToDrawnPx } from '../../../engine/review/drawings/geometry.ts';
import { mutate } from '../../bridge/mutate.ts';
import type { Command } from '../../commands/command.ts';
import { named } from '../../commands/named.ts';
import { reviewState } from '../../state/reviewState.ts';
import { stopFraming } from '../state/framingState.ts';
import { type DrawTool, drawingState, stopCovering, stopDrawing, stopSettingUp } from '../state/pictureTools.ts';
import { goToFrame } from './moving.ts';
import { isReadable, type ReviewContext } from './reviewContext.ts';

/** The drawings of the clip on the stage. */
export const drawingsOnStage = ({ stage }: ReviewContext): readonly Drawing[] => stage?.clip.drawings ?? [];

export const chooseTool = (tool: DrawTool): void => drawingState.setState({ tool, open: null, writing: null });

export const selectDrawing = (selectedId: string | null): void => drawingState.setState({ selectedId });

/** Ends drawing, and gives the keys back to the scorecard. */
export function leaveDrawing({ focus }: ReviewContext): void {
  stopDrawing();
  focus.backOnCard();
}

/** Adds a shape at the frame on screen, and selects it. */
export async function addDrawn({ stage, player }: ReviewContext, drawn: Drawn): Promise<void> {
  if (stage === null || player === null) return;
  player.pause();
  const { open } = drawingState.getState();
  const added = await mutate('drawings.add', { clipId: stage.clip.id, drawn, frame: player.frame() });
  if (added !== null) await reviewState.getState().refresh();
  drawingState.setState((state) => ({
    // Another shape may have been begun meanwhile.
    open: state.open === open ? null : state.open,
    writing: null,
    ...(added !== null && { selectedId: added.drawingId, focusNext: 'drawing' }),
  }));
}

/** Drops a half-drawn shape; without one, ends drawing. */
export function stepBackInDrawing(context: ReviewContext): void {
  if (drawingState.getState().open?.drawingId === null) drawingState.setState({ open: null });
  else leaveDrawing(context);
}

/** Saves the shape a drawing was moved into; it shows there until the library's own does. */
export async function saveMovedDrawing(context: ReviewContext): Promise<void> {
  const { open } = drawingState.getState();
  if (open === null || open.drawingId === null) return;
  const { drawingId, drawn } = open;
  const known = drawingsOnStage(context).find(({ id }) => id === drawingId);
  if (known === undefined || JSON.stringify(known.points) === JSON.stringify(drawn.points)) {
    drawingState.setState({ open: null });
    return;
  }
  await mutate('drawings.update', { drawingId, change: { drawn } });
  await reviewState.getState().refresh();
  if (drawingState.getState().open === open) drawingState.setState({ open: null });
}

export async function changeTimes(
  drawingId: string,
  change: { readonly firstFrame: number } | { readonly lastFrame: number },
): Promise<void> {
  await mutate('drawings.update', { drawingId, change });
}

export async function removeDrawing(drawingId: string): Promise<void> {
  drawingState.setState({ selectedId: null, open: null, focusNext: 'tools' });
  await mutate('drawings.remove', { drawingId });
}

/** Opens the words of a text for writing. */
export function writeWords(drawing: Drawing): void {
  if (drawing.shape !== 'text') return;
  drawingState.setState({ writing: { drawingId: drawing.id, at: drawing.points[0], words: drawing.text } });
}

/** Saves the words that were written; empty ones are dropped. */
export async function saveWords(context: ReviewContext, words: string): Promise<void> {
  const { writing } = drawingState.getState();
  if (writing === null) return;
  const text = words.trim();
  const { drawingId, at } = writing;
  const drawn: Drawn = { shape: 'text', points: [at], text };
  if (text === '') drawingState.setState({ writing: null, focusNext: 'tools' });
  else if (drawingId === null) await addDrawn(context, drawn);
  else {
    await mutate('drawings.update', { drawingId, change: { drawn } });
    drawingState.setState({ writing: null, selectedId: drawingId, focusNext: 'drawing' });
  }
}

/** Selects a drawing and goes to the first frame that shows it, unless it shows already. */
export function visitDrawing(context: ReviewContext, drawing: Drawing): void {
  const { stage, frame } = context;
  if (stage === null || stage.tables === null) return;
  selectDrawing(drawing.id);
  drawingState.setState({ drawing: 'on', tool: 'select', focusNext: 'drawing' });
  const shows = showsAt(drawing, frame, stage.tables.table);
  if (!shows && 'frame' in drawing.from) goToFrame(context, stage.clip.id, drawing.from.frame);
}

/** The drawing on screen that is nearest to a point, within a distance; the newest of equals. */
export function drawingAt(context: ReviewContext, point: Point, withinPx: number): Drawing | null {
  const tables = context.stage?.tables;
  if (tables == null) return null;
  let found: { readonly drawing: Drawing; readonly away: number } | null = null;
  for (const drawing of drawingsOnStage(context)) {
    if (!showsAt(drawing, context.frame, tables.table)) continue;
    const away = distanceToDrawnPx(point, drawing);
    if (away <= withinPx && away <= (found?.away ?? withinPx)) found = { drawing, away };
  }
  return found?.drawing ?? null;
}

/** Takes out the drawing tools, and puts the focus on them. */
export const draw: Command<ReviewContext> = {
  ...named('draw'),
  group: 'picture',
  keys: ['D'],
  readOnly: 'refused',
  when: isReadable,
  run: ({ player }) => {
    player?.pause();
    stopFraming();
    stopSettingUp();
    stopCovering();
    drawingState.setState({ drawing: 'on', focusNext: 'tools' });
  },
};
