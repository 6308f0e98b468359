import type { FrameRange } from '../../../../engine/framing/section.ts';
import { clockUsAt, frameAtUs, frameStartUs } from '../../../../engine/time/frames.ts';
import type { FrameTable } from '../../../../engine/time/frameTable.ts';
import type { Shot } from '../render/clips/timeline.ts';
import type { PictureNote } from '../render/picture.ts';
import type { PlayedClip } from './playedReview.ts';

/**
 * The times of a made clip, told by what its pictures show: it has a card in front, goes slowly or stands still. `table` holds its own
 * frames, one for each of its pictures; `notes` its remarks by their flags' ids.
 */
export function annotatedTime(
  shots: readonly Shot[],
  {
    table,
    footage,
    range,
    notes,
  }: {
    readonly table: FrameTable;
    readonly footage: FrameTable;
    readonly range: FrameRange;
    readonly notes: ReadonlyMap<string, PictureNote>;
  },
): Pick<PlayedClip, 'timeOf' | 'remarks' | 'clockUs'> {
  const last = Math.min(shots.length, table.ticks.length) - 1;
  const pictures = shots.slice(0, last + 1);
  const startOf = (picture: number) => frameStartUs(table, picture < 0 ? last : picture);
  const shows = (note: PictureNote) => (shot: Shot) => shot.kind === 'picture' && shot.notes.includes(note);
  return {
    timeOf: (us) => {
      const frame = frameAtUs(footage, Math.round(us));
      return startOf(pictures.findIndex((shot) => shot.kind === 'picture' && shot.frame >= frame));
    },
    remarks: new Map(
      [...notes].flatMap(([flagId, note]) => {
        const picture = pictures.findIndex(shows(note));
        return picture < 0 ? [] : [[flagId, startOf(picture)] as const];
      }),
    ),
    clockUs: pictures.map((shot) =>
      shot.kind === 'card' ? 0 : clockUsAt(footage, shot.frame) - clockUsAt(footage, range.firstFrame),
    ),
  };
}
