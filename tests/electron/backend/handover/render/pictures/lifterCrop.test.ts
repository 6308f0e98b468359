import { describe, expect, it } from 'vitest';
import type { ClipToShow } from '../../../../../../electron/backend/handover/render/picture.ts';
import { lifterCrop } from '../../../../../../electron/backend/handover/render/pictures/lifterCrop.ts';
import { findClip } from '../../../media/clips.ts';
import { measuredClip, plainClip, truthOf } from '../../shownClip.ts';

const squat = await plainClip(findClip('squat-side'));
const measured = await measuredClip('squat-side');

/** A lifter 300 pixels from shoulder to ankle, upright. */
const standing = (x: number, top: number): NonNullable<ReturnType<NonNullable<ClipToShow['body']>>> => ({
  ...{ shoulder: { x, y: top }, hip: { x, y: top + 110 }, knee: { x, y: top + 210 }, ankle: { x, y: top + 300 } },
  ...{ kneeDeg: 0, trunkLeanDeg: 0 },
});

describe('the part of the picture that a still shows', () => {
  it('holds the joints with room for head and feet, and leaves the rest of the gym out', () => {
    const clip = { ...squat, shown: { width: 1920, height: 1080 }, body: () => standing(400, 400) };
    const crop = lifterCrop(clip, [10]);
    if (crop === null) throw new Error('no crop');
    // A head and hands on a bar rise over the shoulder by at least a third of what is between shoulder and ankle.
    expect(crop.top).toBeLessThanOrEqual(300);
    expect(crop.bottom).toBeGreaterThanOrEqual(740);
    expect(crop.left).toBeLessThan(320);
    expect(crop.right).toBeGreaterThan(480);
    expect(crop.right - crop.left).toBeLessThan(960);
  });

  it('stays inside the picture, whole pixels of which there are, for a lifter at its edge', () => {
    for (const [x, top] of [
      [5, 2],
      [1915, 775],
    ] as const) {
      const crop = lifterCrop({ ...squat, shown: { width: 1920, height: 1080 }, body: () => standing(x, top) }, [10]);
      if (crop === null) throw new Error('no crop');
      expect(Math.min(crop.left, crop.top)).toBeGreaterThanOrEqual(0);
      expect(crop.right).toBeLessThanOrEqual(1920);
      expect(crop.bottom).toBeLessThanOrEqual(1080);
      const shape = (crop.right - crop.left) / (crop.bottom - crop.top);
      expect(shape).toBeGreaterThanOrEqual(0.74);
      expect(shape).toBeLessThanOrEqual(1.34);
    }
  });

  it('holds the whole path of the load where it was followed, and the joints that are known of that clip', () => {
    const crop = lifterCrop(measured, [80]);
    if (crop === null) throw new Error('no crop');
    const truth = truthOf('squat-side');
    const [rep] = truth.reps;
    const inRep = truth.pts.flatMap((atS, frame) =>
      rep && atS >= rep.phases_s.eccentric[0] && atS <= rep.phases_s.concentric[1] ? [frame] : [],
    );
    for (const frame of inRep) {
      const [x = Number.NaN, y = Number.NaN] = truth.disc_centre_px[frame] ?? [];
      expect(x).toBeGreaterThan(crop.left);
      expect(x).toBeLessThan(crop.right);
      expect(y).toBeGreaterThan(crop.top);
      expect(y).toBeLessThan(crop.bottom);
    }
    expect(crop.right - crop.left).toBeLessThan(0.8 * measured.shown.width);
  });

  it('is the whole picture where nothing says who lifts, and where a crop would leave out next to nothing', () => {
    expect(lifterCrop(squat, [10])).toBeNull();
    const near = { ...squat, shown: { width: 400, height: 500 }, body: () => standing(200, 100) };
    expect(lifterCrop(near, [10])).toBeNull();
  });

  it('holds what the coach has drawn at the frame', () => {
    const points = [
      { x: 1500, y: 500 },
      { x: 1600, y: 500 },
    ] as const;
    const line = { id: 'line', shape: 'line' as const, from: { seconds: 0 }, to: { seconds: 1 }, points: [...points] };
    const clip: ClipToShow = {
      ...{ ...squat, shown: { width: 1920, height: 1080 }, body: () => standing(1200, 400) },
      drawings: [{ ...line, points: [points[0], points[1]] }],
    };
    const [shown, later] = [lifterCrop(clip, [10]), lifterCrop(clip, [60])];
    expect(shown?.right).toBeGreaterThan(1600);
    expect(later?.right).toBeLessThan(1600);
  });
});
