import { mkdtempSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import path from 'node:path';
import { afterAll, describe, expect, it } from 'vitest';
import { findMediaTools } from '../../../../../electron/backend/media/tools/mediaTools.ts';
import { encodeJpegs } from '../../../../../electron/backend/media/write/encodeJpegs.ts';
import { ffmpeg } from '../clips.ts';

const folder = mkdtempSync(path.join(tmpdir(), 'rackside-jpegs-'));
afterAll(() => rmSync(folder, { recursive: true }));

const size = { width: 32, height: 32 };
const flat = (luma: number, blueDifference: number, redDifference: number) =>
  Uint8Array.from({ length: 1536 }, (_, at) => (at < 1024 ? luma : at < 1280 ? blueDifference : redDifference));

/** Codes of full red, green and blue in limited range (ITU-R BT.601, BT.709). */
const known = [
  ['white in BT.709', 'bt709', [235, 128, 128], [255, 255, 255]],
  ['black in BT.601', 'smpte170m', [16, 128, 128], [0, 0, 0]],
  ['red in BT.709', 'bt709', [63, 102, 240], [255, 0, 0]],
  ['red in BT.601', 'smpte170m', [81, 90, 240], [255, 0, 0]],
  ['green in BT.709', 'bt709', [173, 42, 26], [0, 255, 0]],
  ['blue in BT.601', 'smpte170m', [41, 240, 110], [0, 0, 255]],
] as const;

describe('pictures as JPEG', () => {
  it.each(known)('%s', async (name, space, [luma, blueDifference, redDifference], rgb) => {
    async function* frames() {
      yield flat(luma, blueDifference, redDifference);
    }
    const colours = { space, primaries: null, transfer: null };
    const [jpeg] = await encodeJpegs(await findMediaTools(), { size, colours, frames: frames() });
    const file = path.join(folder, `${name}.jpg`);
    writeFileSync(file, jpeg ?? new Uint8Array());
    const decoded = await ffmpeg('-i', file, '-vf', 'scale=1:1:flags=area', '-f', 'rawvideo', '-pix_fmt', 'rgb24', '-');
    rgb.forEach((value, channel) => {
      expect(Math.abs((decoded[channel] ?? 0) - value)).toBeLessThanOrEqual(5);
    });
  });
});
