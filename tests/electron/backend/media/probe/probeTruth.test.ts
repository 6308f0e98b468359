import { describe, expect, it } from 'vitest';
import { probeClip } from '../../../../../electron/backend/media/probe/probeClip.ts';
import { findMediaTools } from '../../../../../electron/backend/media/tools/mediaTools.ts';
import { ticksToUs } from '../../../../../engine/time/moment.ts';
import { knownClips } from '../clips.ts';

// Source of the expectations: the truth files written when the clips were made, times read back from the files then.
describe.each(knownClips())('what is read of $name', ({ path, truth }) => {
  it('has the true frames, times, size and rotation', async () => {
    const probe = await probeClip(await findMediaTools(), path);
    const { facts, table } = probe;

    expect(facts.frames).toBe(truth.video.frames);
    expect(table.ticks.map((ticks) => ticksToUs(ticks, table.timeBase))).toEqual(
      truth.pts.map((seconds) => Math.round(seconds * 1_000_000)),
    );
    expect([facts.width, facts.height]).toEqual(truth.video.coded_size);
    expect([probe.shown.width, probe.shown.height]).toEqual(truth.video.display_size);
    expect(facts.rotationDeg).toBe(truth.video.display_rotation_cw_deg);
    expect(facts.codec).toBe(truth.video.codec);
    expect(`${facts.timeBase.numerator}/${facts.timeBase.denominator}`).toBe(truth.video.time_base);
    expect(probe.constantRate).toBe(!truth.video.vfr);
    if (!truth.video.vfr) expect(probe.meanFps).toBeCloseTo(truth.video.nominal_fps, 9);
  });
});
