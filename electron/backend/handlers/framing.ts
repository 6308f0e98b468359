import { type Framing, type TurnDeg, turnedBy } from '../../../engine/framing/framing.ts';
import { turnedCrop } from '../../../engine/framing/picturePlaces.ts';
import { drawnOf } from '../../../engine/review/drawings/drawing.ts';
import { type Turning, turnedCover, turnedDrawn, turnedSetUp } from '../../../engine/review/turnedPlaces.ts';
import { ProblemError } from '../../contract/reply.ts';
import type { PictureSize } from '../media/probe/streams.ts';
import type { Changes } from '../store/changes.ts';
import { type ClipHome, type ClipRow, findClip } from '../store/clips.ts';
import type { Reading } from '../store/connection.ts';
import { coverColumns, coverOf, listCovers } from '../store/covers.ts';
import { drawingOf, drawnColumns, listDrawings } from '../store/drawings.ts';
import { findFootage } from '../store/footage.ts';
import { framingColumns, framingOf, uprightOf } from '../store/framing.ts';
import { findSetUp, setUpRow } from '../store/measuring.ts';
import { narrationOfClip } from '../store/narrations.ts';
import { actOnSession } from './acts.ts';
import type { Handler } from './handler.ts';

/** Changes how the picture is shown. A turn takes everything along that was placed on the picture, in the same act. */
export const frameClip: Handler<'clips.frame'> = (context, { clipId, change }) => {
  const { reading } = context.library();
  const clip = findClip(reading, clipId);
  const before = framingOf(clip);
  const size = pictureOf(reading, clip);
  const by = turnedBy(change.turnDeg ?? before.turnDeg, back(before.turnDeg));
  if (by !== 0) assertNotNarrated(reading, clip);
  const kept = before.crop && turnedCrop(before.crop, size, by);
  const after: Framing = {
    turnDeg: change.turnDeg ?? before.turnDeg,
    mirrored: change.mirrored ?? before.mirrored,
    crop: change.crop === undefined ? kept : change.crop,
    brightness: change.brightness ?? before.brightness,
  };
  assertInPicture(after, by === 90 || by === 270 ? { width: size.height, height: size.width } : size);
  return actOnSession(context, clip.session_id, (changes) => {
    changes.update('clip', { id: clipId }, framingColumns(after));
    if (by !== 0) turnPlaces(changes, clipId, { size, by });
    return { name: { id: 'clipFramed', values: { clip: clip.name, how: howOf(change) } }, value: {} };
  });
};

/** A narration tells its own frames and places, and no undo takes it along. Throws `conflict` for a clip that has one. */
export function assertNotNarrated(reading: Reading, clip: ClipRow): void {
  if (narrationOfClip(reading, clip.id)) throw new ProblemError('conflict', 'narratedAsItIs', { clip: clip.name });
}

/** The turn that takes a turn back. */
const back = (turnDeg: TurnDeg): TurnDeg => (({ 0: 0, 90: 270, 180: 180, 270: 90 }) as const)[turnDeg];

const howOf = ({ turnDeg, mirrored, crop, brightness }: Partial<Framing>): string => {
  const told = [turnDeg, mirrored, crop, brightness].filter((one) => one !== undefined).length;
  if (told !== 1) return 'several';
  if (turnDeg !== undefined) return 'turned';
  if (mirrored !== undefined) return 'mirrored';
  return crop === undefined ? 'brightness' : 'crop';
};

function pictureOf(reading: Reading, clip: ClipHome): PictureSize {
  const footage = clip.footage_id === null ? undefined : findFootage(reading, clip.footage_id);
  if (footage) return uprightOf(footage, clip);
  throw new ProblemError('conflict', 'nothingToFrame', { clip: clip.name });
}

function assertInPicture({ crop }: Framing, { width, height }: PictureSize): void {
  if (crop === null || (crop.leftPx + crop.widthPx <= width && crop.topPx + crop.heightPx <= height)) return;
  throw new ProblemError('bad-request', 'cropOutside');
}

function turnPlaces(changes: Changes, clipId: string, turning: Turning): void {
  for (const row of listDrawings(changes.reading, clipId)) {
    changes.update('drawing', { id: row.id }, drawnColumns(turnedDrawn(drawnOf(drawingOf(row)), turning)));
  }
  for (const row of listCovers(changes.reading, clipId)) {
    changes.update('cover', { id: row.id }, coverColumns(turnedCover(coverOf(row), turning)));
  }
  const setUp = findSetUp(changes.reading, clipId);
  if (setUp) changes.update('clip_set_up', { clip_id: clipId }, setUpRow(clipId, turnedSetUp(setUp, turning)));
}
