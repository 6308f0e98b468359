import type { ClipCover, CoverLook } from '../../../engine/covers/cover.ts';
import { frameStartUs } from '../../../engine/time/frames.ts';
import type { FrameTable } from '../../../engine/time/frameTable.ts';
import { formatClock } from '../../../engine/time/writtenTime.ts';

export const lookNames: Readonly<Record<CoverLook, string>> = { filled: 'Dark box', mosaic: 'Mosaic' };

/** What a cover is called in the list and to people who can't see it: "Cover 2: mosaic". */
export function coverName({ kind, look }: ClipCover, index: number): string {
  const what = kind === 'head' ? 'the lifter’s head, ' : '';
  return `Cover ${index + 1}: ${what}${lookNames[look].toLowerCase()}`;
}

/** How many places it has and when it covers: "2 places, from 0:01.200 until 0:04.000". */
export function coverSpan(cover: ClipCover, table: FrameTable): string {
  const clock = (frame: number) => formatClock(frameStartUs(table, frame));
  const places = cover.kind === 'head' ? 'by the joints' : counted(cover.places.length);
  const begins = cover.firstFrame > 0 ? `from ${clock(cover.firstFrame)}` : '';
  const ends = cover.lastFrame < table.ticks.length - 1 ? `until ${clock(cover.lastFrame)}` : '';
  const when = [begins, ends].filter((part) => part !== '').join(' ');
  return `${places}, ${when === '' ? 'whole clip' : when}`;
}

const counted = (places: number): string => (places === 1 ? '1 place' : `${places} places`);
