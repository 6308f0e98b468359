import { describe, expect, it } from 'vitest';
import { boxAt } from '../../../engine/covers/cover.ts';
import { headCover } from '../../../engine/covers/headCover.ts';
import { type Body, jointNames, type Sighting } from '../../../engine/recording/recording.ts';

describe('a cover that follows the head', () => {
  /** A body whose head is at a place; shoulders and hips 100 pixels apart. */
  const bodyWith = (head: { readonly x: number; readonly y: number } | null): Body =>
    jointNames.map((name): Sighting => {
      if (/Shoulder/.test(name)) return { xPx: 300, yPx: 200, confidence: 0.9 };
      if (/Hip/.test(name)) return { xPx: 300, yPx: 300, confidence: 0.9 };
      if (!/nose|Eye|Ear/.test(name)) return { xPx: 0, yPx: 0, confidence: 0.1 };
      return { xPx: head?.x ?? 0, yPx: head?.y ?? 0, confidence: head ? 0.8 : 0.1 };
    });
  const joints = (heads: readonly ({ readonly x: number; readonly y: number } | null)[]) => ({
    ...{ method: 'made up', everyFrames: 1 },
    frames: heads.map(bodyWith),
  });

  it('has the head in its middle, wide enough for it, and moves on where it is hidden', () => {
    const cover = headCover(joints([{ x: 300, y: 150 }, null, { x: 320, y: 170 }]), {
      ...{ firstFrame: 0, lastFrame: 2, look: 'filled' },
    });
    if (cover === null) throw new Error('no cover');
    const middles = [0, 1, 2].map((frame) => {
      const at = boxAt(cover, frame);
      return at && [at.leftPx + at.widthPx / 2, at.topPx + at.heightPx / 2];
    });
    expect(middles).toEqual([
      [300, 150],
      [310, 160],
      [320, 170],
    ]);
    // A head is some 45 pixels high beside a trunk of 100.
    expect(cover.places[0]?.box.widthPx).toBeGreaterThan(60);
  });

  it('is not there when no head is seen', () => {
    expect(headCover(joints([null, null]), { firstFrame: 0, lastFrame: 1, look: 'filled' })).toBeNull();
  });
});
