import { frameEndUs, frameStartUs } from '../../../../engine/time/frames.ts';
import type { FrameTable } from '../../../../engine/time/frameTable.ts';
import type { PictureSize } from '../probe/streams.ts';

/** Elements of Matroska (RFC 9559) that a stream of raw pictures needs. */
const ids = {
  header: 0x1a45dfa3,
  docType: 0x4282,
  segment: 0x18538067,
  info: 0x1549a966,
  timestampScale: 0x2ad7b1,
  tracks: 0x1654ae6b,
  track: 0xae,
  trackNumber: 0xd7,
  trackUid: 0x73c5,
  trackType: 0x83,
  codec: 0x86,
  video: 0xe0,
  width: 0xb0,
  height: 0xba,
  fourCc: 0x2eb524,
  cluster: 0x1f43b675,
  timestamp: 0xe7,
  blockGroup: 0xa0,
  block: 0xa1,
  blockDuration: 0x9b,
} as const;

const unknownLength = Buffer.from([0x01, 0xff, 0xff, 0xff, 0xff, 0xff, 0xff, 0xff]);
/** Track 1, at the time of its cluster, without flags (RFC 9559, section 10.1). */
const blockHead = Buffer.from([0x81, 0, 0, 0]);
const microsecondNs = 1_000;

/**
 * Raw pictures as a stream that tells when each appears and for how long, which raw bytes can't: as many as the table has frames, in
 * its order, `yuv420p`, the first at 0, in whole microseconds. What was read of one may be used again once the next is asked for.
 */
export async function* timedFrames(
  frames: AsyncIterable<Uint8Array>,
  { width, height }: PictureSize,
  table: FrameTable,
): AsyncGenerator<Uint8Array, void, void> {
  yield opening({ width, height });
  const zeroUs = frameStartUs(table, 0);
  let frame = 0;
  for await (const bytes of frames) {
    const [startUs, endUs] = [frameStartUs(table, frame), frameEndUs(table, frame)];
    const length = number(ids.blockDuration, endUs - startUs);
    const blockLength = blockHead.length + bytes.length;
    const block = Buffer.concat([idOf(ids.block), lengthOf(blockLength), blockHead]);
    const group = Buffer.concat([idOf(ids.blockGroup), lengthOf(length.length + block.length + bytes.length), length]);
    const at = number(ids.timestamp, startUs - zeroUs);
    const inside = at.length + group.length + block.length + bytes.length;
    yield Buffer.concat([idOf(ids.cluster), lengthOf(inside), at, group, block]);
    yield bytes;
    frame += 1;
  }
}

function opening({ width, height }: PictureSize): Buffer {
  const video = [number(ids.width, width), number(ids.height, height), element(ids.fourCc, Buffer.from('I420'))];
  const track = [
    ...[number(ids.trackNumber, 1), number(ids.trackUid, 1), number(ids.trackType, 1)],
    ...[element(ids.codec, Buffer.from('V_UNCOMPRESSED')), element(ids.video, Buffer.concat(video))],
  ];
  return Buffer.concat([
    element(ids.header, element(ids.docType, Buffer.from('matroska'))),
    ...[idOf(ids.segment), unknownLength],
    element(ids.info, number(ids.timestampScale, microsecondNs)),
    element(ids.tracks, element(ids.track, Buffer.concat(track))),
  ]);
}

/** Bytes of a whole number, the highest first, as few as it takes. */
function bytesOf(value: number): Buffer {
  const hex = value.toString(16);
  return Buffer.from(hex.length % 2 === 0 ? hex : `0${hex}`, 'hex');
}

const idOf = (id: number): Buffer => bytesOf(id);

/** Eight bytes, of which the first says that there are eight (RFC 8794, section 4). */
function lengthOf(bytes: number): Buffer {
  const length = Buffer.alloc(8);
  length.writeBigUInt64BE(BigInt(bytes));
  length[0] = 0x01;
  return length;
}

const element = (id: number, data: Buffer): Buffer => Buffer.concat([idOf(id), lengthOf(data.length), data]);
const number = (id: number, value: number): Buffer => element(id, bytesOf(value));
