import type { FrameTable, TimeBase } from '../../../../engine/time/frameTable.ts';

/** One coded frame as ffprobe lists it, in file order. */
export type Packet = {
  /** Presentation time in ticks; null when the container states none. */
  readonly pts: number | null;
  readonly durationTicks: number | null;
  /** Byte after its last in the file; null when unknown. */
  readonly endByte: number | null;
  /** Kept for decoding only: an edit list leaves it out of the picture. */
  readonly discarded: boolean;
  /** Its data could not be read whole. */
  readonly damaged: boolean;
};

/** Options that make ffprobe list the packets of one stream. */
export function packetOptions(streamIndex: number): readonly string[] {
  return [
    '-select_streams',
    String(streamIndex),
    '-show_entries',
    'packet=pts,duration,size,pos,flags',
    '-of',
    'compact',
  ];
}

/** Reads the list that ffprobe printed under `packetOptions`. */
export function readPackets(listing: string): Packet[] {
  const packets: Packet[] = [];
  for (const line of listing.split('\n')) {
    if (!line.startsWith('packet|')) continue;
    const fields = new Map(line.split('|').map((field) => split(field.trim())));
    const position = whole(fields.get('pos'));
    const size = whole(fields.get('size'));
    const flags = fields.get('flags') ?? '';
    packets.push({
      pts: whole(fields.get('pts')),
      durationTicks: whole(fields.get('duration')),
      endByte: position === null || size === null ? null : position + size,
      discarded: flags.includes('D'),
      damaged: flags.includes('C'),
    });
  }
  return packets;
}

function split(field: string): [string, string] {
  const at = field.indexOf('=');
  return at < 0 ? [field, ''] : [field.slice(0, at), field.slice(at + 1)];
}

function whole(written: string | undefined): number | null {
  if (written === undefined || !/^-?\d+$/.test(written)) return null;
  const value = Number(written);
  return Number.isSafeInteger(value) ? value : null;
}

/**
 * The frame table of a stream from its packets: times sorted, exact, those the edit list drops left out, a time
 * that occurs twice kept once (only one of two such frames can be seen). Null when a frame has no time or none
 * is left. The last frame ends as its packet says, else as the stream says, else after the median spacing.
 */
export function buildFrameTable(
  packets: readonly Packet[],
  timeBase: TimeBase,
  streamEndTicks: number | null = null,
): FrameTable | null {
  const shown = packets.filter((packet) => !packet.discarded);
  const durations = new Map<number, number | null>();
  for (const { pts, durationTicks } of shown) {
    if (pts === null) return null;
    durations.set(pts, durationTicks);
  }
  const ticks = [...durations.keys()].sort((first, second) => first - second);
  const last = ticks.at(-1);
  if (last === undefined) return null;
  const stated = durations.get(last) ?? null;
  const lastsTicks =
    stated !== null && stated > 0 ? stated : (lastByStream(ticks, streamEndTicks) ?? medianSpacing(ticks));
  return { timeBase, ticks, endTicks: last + lastsTicks };
}

/** A stream that ends before its last frame, or much later, was trimmed: its end says nothing of that frame. */
function lastByStream(ticks: readonly number[], streamEndTicks: number | null): number | null {
  if (streamEndTicks === null) return null;
  const lastsTicks = streamEndTicks - (ticks.at(-1) ?? 0);
  const longest = spacingsOf(ticks).reduce((most, spacing) => Math.max(most, spacing), 0);
  return lastsTicks > 0 && lastsTicks <= 2 * longest ? lastsTicks : null;
}

function medianSpacing(ticks: readonly number[]): number {
  const spacings = spacingsOf(ticks).sort((first, second) => first - second);
  return spacings[Math.floor(spacings.length / 2)] ?? 1;
}

function spacingsOf(ticks: readonly number[]): number[] {
  return ticks.slice(1).map((tick, index) => tick - (ticks[index] ?? tick));
}
