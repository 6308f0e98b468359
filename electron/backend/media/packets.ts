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

/** Reads that list. */
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
