import { frameStartUs } from '../time/frames.ts';
import type { FrameTable } from '../time/frameTable.ts';
import { clockZeroUs, framesShown, type Section } from './section.ts';

/**
 * How moments of a clip are told to people: its clock and the count of its frames begin with what it shows of its footage. Whatever is
 * kept, sent and compared has the footage's own frames and times; this is the way from the one to the other.
 */
type Told = { readonly section?: Section | undefined };

/** A media time of the footage by the clip's clock, in microseconds; what lies before the section is told as its start. */
export const toldUs = ({ section }: Told, us: number, timeBase: FrameTable['timeBase'] | undefined): number =>
  section ? Math.max(0, us - clockZeroUs(section, timeBase)) : us;

/** When a frame of the footage appears by the clip's clock, in microseconds. */
export const toldUsOfFrame = (clip: Told, table: FrameTable, frame: number): number =>
  toldUs(clip, frameStartUs(table, frame), table.timeBase);

/** Seconds since the footage's first frame, as measures have them, by the clip's clock; in microseconds. */
export const toldUsOfSeconds = (clip: Told, table: FrameTable, seconds: number): number =>
  toldUs(clip, frameStartUs(table, 0) + Math.round(seconds * 1_000_000), table.timeBase);

/** The number of a frame as it is told: the section's first frame is 0. */
export const toldFrame = ({ section }: Told, frame: number): number =>
  section ? Math.max(0, frame - section.from.frame) : frame;

/** The frame of the footage that a told number names. */
export const footageFrame = ({ section }: Told, told: number): number => told + (section?.from.frame ?? 0);

/** How many frames the clip has, as it is told. */
export function toldFrameCount({ section }: Told, table: FrameTable): number {
  const { firstFrame, lastFrame } = framesShown(section, table);
  return table.ticks.length === 0 ? 0 : lastFrame - firstFrame + 1;
}
