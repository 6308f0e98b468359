import { readFileSync } from 'node:fs';
import path from 'node:path';
import { describe, expect, it } from 'vitest';
import { trackDisc } from '../../../../electron/backend/measure/trackDisc.ts';
import { probeClip } from '../../../../electron/backend/media/probe/probeClip.ts';
import { findMediaTools } from '../../../../electron/backend/media/tools/mediaTools.ts';
import type { DiscRecording } from '../../../../engine/recording/recording.ts';
import { findClip } from '../media/clips.ts';

// Source of every expectation: the truth files written when the clips were made (tests/footage), and the times read by eye
// beside the filmed ones (tests/footage/real).

const footage = path.resolve(import.meta.dirname, '../../../footage');

type Truth = {
  readonly disc_centre_px: readonly (readonly [number, number])[];
  readonly disc_first_ellipse: { readonly semi: readonly [number, number] };
};

async function followed(file: string): Promise<DiscRecording> {
  const tools = await findMediaTools();
  const { table, shown } = await probeClip(tools, file);
  const { disc } = await trackDisc(tools, file, { table, shown, clicks: [] });
  if (!disc) throw new Error('no disc was found');
  return disc;
}

describe('a disc seen from beside its axis', () => {
  it.each(['squat-three-quarter', 'press-three-quarter-rear'])(
    '%s: seen in every frame but a few, its height to 0.6 px, its radius to a twentieth',
    async (name) => {
      const truth: Truth = JSON.parse(readFileSync(path.join(footage, `${name}.truth.json`), 'utf8'));
      const { frames, outline } = await followed(findClip(name));
      const off = frames.flatMap((sighting, frame) => {
        const centre = truth.disc_centre_px[frame];
        return sighting && centre ? [sighting.yPx - centre[1]] : [];
      });
      expect(off.length).toBeGreaterThan(0.97 * frames.length);
      const mean = off.reduce((sum, one) => sum + one, 0) / off.length;
      const beside = off.map((one) => Math.abs(one - mean)).sort((one, other) => one - other);
      expect(beside[Math.floor(0.95 * beside.length)]).toBeLessThan(0.6);
      const [radiusPx] = truth.disc_first_ellipse.semi;
      expect(Math.abs(outline.radiusPx / radiusPx - 1)).toBeLessThan(0.05);
      expect(outline.axisRatio).toBeLessThan(0.8);
    },
  );

  it.each([
    ['barbell-squat-rear34.mp4', [1.2, 3.35], [2.4]],
    ['barbell-deadlift-rear34.mp4', [2.6, 6.5], [0.9, 4.8]],
  ])('filmed %s: high when standing, low at the bottom', async (file, standingS, lowS) => {
    const { frames, evidence } = await followed(path.join(footage, 'real', file));
    const heightAt = (atS: number) => -(frames[Math.round(atS * 30)]?.yPx ?? Number.NaN);
    for (const high of standingS) for (const low of lowS) expect(heightAt(high) - heightAt(low)).toBeGreaterThan(60);
    expect(evidence?.travelRadii).toBeGreaterThan(1.5);
  });
});
