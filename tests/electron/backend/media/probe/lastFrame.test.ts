import { readFile } from 'node:fs/promises';
import { describe, expect, it } from 'vitest';
import { probeClip } from '../../../../../electron/backend/media/probe/probeClip.ts';
import { findMediaTools } from '../../../../../electron/backend/media/tools/mediaTools.ts';
import { knownClips } from '../clips.ts';

/** Length of the only track as its media header says (ISO/IEC 14496-12, box `mdhd`, version 0), in seconds. */
async function statedLengthS(file: string): Promise<number> {
  const bytes = await readFile(file);
  const body = bytes.indexOf('mdhd', 0, 'latin1') + 'mdhd'.length;
  expect(bytes.readUInt8(body)).toBe(0);
  return bytes.readUInt32BE(body + 16) / bytes.readUInt32BE(body + 12);
}

describe.each(knownClips())('the last frame of $name', ({ path, truth }) => {
  it('goes one frame later at a constant rate, at the stated end of the track at a variable one', async () => {
    const { table } = await probeClip(await findMediaTools(), path);
    const endS = (table.endTicks * table.timeBase.numerator) / table.timeBase.denominator;
    const { vfr, nominal_fps: fps } = truth.video;
    const expectedS = vfr ? await statedLengthS(path) : (truth.pts.at(-1) ?? 0) + 1 / fps;
    expect(endS).toBeCloseTo(expectedS, 5);
  });
});
