import { mkdtempSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import path from 'node:path';
import { afterAll, describe, expect, it } from 'vitest';
import type { ClipToShow, PictureNote } from '../../../../../../electron/backend/handover/render/picture.ts';
import { lifterCrop } from '../../../../../../electron/backend/handover/render/pictures/lifterCrop.ts';
import { pictureWords, renderStills } from '../../../../../../electron/backend/handover/render/pictures/stills.ts';
import { findMediaTools } from '../../../../../../electron/backend/media/tools/mediaTools.ts';
import { ffmpeg, findClip } from '../../../media/clips.ts';
import {
  distanceToPath,
  measuredClip,
  noteAt,
  pictureAt,
  plainClip,
  rangeWithin,
  rgbOf,
  truthOf,
} from '../../shownClip.ts';

const folder = mkdtempSync(path.join(tmpdir(), 'rackside-stills-'));
afterAll(() => rmSync(folder, { recursive: true }));

async function stillsOf(clip: ClipToShow, notes: readonly PictureNote[], longestSidePx?: number) {
  const sizing = longestSidePx === undefined ? {} : { longestSidePx };
  const stills = await renderStills(await findMediaTools(), clip, notes, { words: pictureWords('en'), ...sizing });
  return stills.map(({ note, size, jpeg }, place) => {
    const file = path.join(folder, `${path.basename(clip.file)} ${longestSidePx ?? 'full'} ${place}.jpg`);
    writeFileSync(file, jpeg);
    return { note, size, jpeg, file };
  });
}

/** The markers of a JPEG's segments up to its picture data (ITU-T T.81, B.1.1). */
function markersOf(jpeg: Uint8Array): number[] {
  const markers: number[] = [];
  let at = 2;
  while (jpeg[at] === 0xff && jpeg[at + 1] !== 0xda) {
    markers.push(jpeg[at + 1] ?? 0);
    at += 2 + 256 * (jpeg[at + 2] ?? 0) + (jpeg[at + 3] ?? 0);
  }
  return markers;
}

describe('the path of the load in a still', () => {
  const truth = truthOf('squat-side');
  const [rep] = truth.reps;
  const inRep = truth.pts.flatMap((atS, frame) =>
    rep && atS >= rep.phases_s.eccentric[0] && atS <= rep.phases_s.concentric[1] ? [frame] : [],
  );

  it.each([undefined, 640])('lies where the disc was, within two pixels, at %s', async (longestSidePx) => {
    const clip = await measuredClip('squat-side');
    const [still] = await stillsOf(clip, [noteAt(80)], longestSidePx);
    if (still === undefined) throw new Error('no still');
    const rgb = await rgbOf(still.file);
    const scale = still.size.width / clip.shown.width;
    for (const frame of inRep) {
      const [x = 0, y = 0] = truth.disc_centre_px[frame] ?? [];
      expect(distanceToPath(rgb, still.size, { xPx: x * scale, yPx: y * scale })).toBeLessThanOrEqual(2);
    }
  });

  it('is not in the footage itself', async () => {
    const clip = await measuredClip('squat-side');
    const rgb = await pictureAt(clip.file, 80);
    const found = inRep.map((frame) => {
      const [xPx = 0, yPx = 0] = truth.disc_centre_px[frame] ?? [];
      return distanceToPath(rgb, clip.shown, { xPx, yPx });
    });
    expect(found.filter((distance) => distance <= 2)).toEqual([]);
  });

  it('moves with a camera that moved', async () => {
    const plain = await measuredClip('squat-side');
    // Laid over the first frame, frame n lies n/10 pixels further right: the background has moved to the left.
    const laid = plain.table.ticks.map((_, frame) => ({ shiftXPx: frame / 10, shiftYPx: 0, turnDeg: 0, scale: 1 }));
    const camera = { moves: true, removable: true, frames: laid, uprights: [] };
    const [still] = await stillsOf({ ...plain, camera }, [noteAt(80)]);
    if (still === undefined) throw new Error('no still');
    const rgb = await rgbOf(still.file);
    for (const frame of inRep) {
      const [x = 0, y = 0] = truth.disc_centre_px[frame] ?? [];
      expect(distanceToPath(rgb, still.size, { xPx: x + (frame - 80) / 10, yPx: y })).toBeLessThanOrEqual(2);
    }
  });
});

describe('a still that is cut to the lifter', () => {
  it('is no larger than asked for, and has the path where the disc was in that part of the picture', async () => {
    const clip = await measuredClip('squat-side');
    const crop = lifterCrop(clip, [80]);
    const stills = await renderStills(await findMediaTools(), clip, [noteAt(80)], {
      ...{ words: pictureWords('en'), framing: 'lifter', longestSidePx: 400 },
    });
    const [still] = stills;
    if (still === undefined || crop === null) throw new Error('no still');
    expect(Math.max(still.size.width, still.size.height)).toBeLessThanOrEqual(404);
    const file = path.join(folder, 'cut.jpg');
    writeFileSync(file, still.jpeg);
    const rgb = await rgbOf(file);
    const scale = still.size.width / (crop.right - crop.left);
    const [x = 0, y = 0] = truthOf('squat-side').disc_centre_px[80] ?? [];
    const at = { xPx: (x - crop.left) * scale, yPx: (y - crop.top) * scale };
    expect(distanceToPath(rgb, still.size, at)).toBeLessThanOrEqual(4);
  });
});

describe('the stills of a clip', () => {
  it('are those of their remarks’ frames, in the remarks’ order, also when there are hundreds', async () => {
    const file = path.join(folder, 'ramp.mp4');
    // Brightens by half a step a frame: 20 at the start.
    const source = `color=black:s=64x64:r=30:d=15,geq=lum='20+N/2.5':cb=128:cr=128`;
    await ffmpeg('-f', 'lavfi', '-i', source, '-c:v', 'libx264', '-qp', '4', '-pix_fmt', 'yuv420p', file);
    const clip = await plainClip(file);
    const frames = [449, ...Array.from({ length: 445 }, (_, frame) => frame), 7, 7];
    const notes = frames.map((frame) => noteAt(frame, { heading: '', words: '' }));
    const stills = await stillsOf(clip, notes);
    expect(stills.map(({ note }) => note.frame)).toEqual(frames);
    for (const place of [0, 1, 2, 200, 402, 445, 446, 447]) {
      const still = stills[place];
      const frame = frames[place];
      if (still === undefined || frame === undefined) throw new Error('no still');
      // The plate has a corner of its own; the picture's middle is bare.
      const [grey] = await ffmpeg(
        '-i',
        still.file,
        '-vf',
        'crop=20:6:40:4,scale=1:1:flags=area,format=gray',
        '-f',
        'rawvideo',
        '-',
      );
      expect(Math.abs((grey ?? 0) - ((20 + frame / 2.5 - 16) * 255) / 219)).toBeLessThan(2.5);
    }
  });

  it('stand upright and fit the side asked for', async () => {
    const clip = await plainClip(findClip('press-portrait'));
    const [still] = await stillsOf(clip, [noteAt(30)], 400);
    expect(still?.size).toEqual({ width: 224, height: 400 });
    if (still === undefined) throw new Error('no still');
    expect((await rgbOf(still.file)).length).toBe(224 * 400 * 3);
  });

  it('are as light as the footage, also where a phone filmed in full range', async () => {
    const file = path.join(folder, 'full range.mp4');
    const source = [
      '-f',
      'lavfi',
      '-i',
      'color=white:s=128x128:r=30:d=1',
      '-pix_fmt',
      'yuvj420p',
      '-color_range',
      'pc',
    ];
    await ffmpeg(...source, '-c:v', 'libx264', '-qp', '4', file);
    const [still] = await stillsOf(await plainClip(file), [noteAt(3)]);
    if (still === undefined) throw new Error('no still');
    expect((await rgbOf(still.file, 'crop=40:20:40:4,scale=1:1:flags=area'))[0]).toBeGreaterThan(251);
  });

  it('carry no metadata: nothing but tables, frame and the format’s own header', async () => {
    const [still] = await stillsOf(await measuredClip('squat-side'), [noteAt(80)]);
    const markers = markersOf(still?.jpeg ?? new Uint8Array());
    // APP0 is the JFIF header; APP1 and up would hold Exif, GPS or profiles, COM a comment.
    expect(markers).toContain(0xe0);
    expect(markers.filter((marker) => (marker > 0xe0 && marker <= 0xef) || marker === 0xfe)).toEqual([]);
  });

  it('show a drawing at its own frames only', async () => {
    const clip: ClipToShow = {
      ...(await plainClip(findClip('squat-side'))),
      drawings: [
        {
          ...{ id: 'line', shape: 'line', from: { seconds: 50 / 30 }, to: { seconds: 60 / 30 } },
          points: [
            { x: 620, y: 400 },
            { x: 800, y: 400 },
          ],
        },
      ],
    };
    const stills = await stillsOf(clip, [noteAt(49), noteAt(50), noteAt(60), noteAt(61)]);
    const light = await Promise.all(
      stills.map(
        async ({ file }) => (await rgbOf(file, 'crop=100:2:660:399,scale=1:1:flags=area,format=gray'))[0] ?? 0,
      ),
    );
    const [before = 0, first = 0, last = 0, after = 0] = light;
    expect(Math.min(first, last)).toBeGreaterThan(Math.max(before, after) + 60);
  });
});

describe('a cover', () => {
  const box = { leftPx: 421, topPx: 51, widthPx: 60, heightPx: 50 };
  // JPEG rings over the edge by half a block of colour.
  const inside = { left: 430, top: 60, right: 472, bottom: 92 };

  it.each(['filled', 'mosaic'] as const)('that is %s hides what is beneath it', async (look) => {
    const clip = await plainClip(findClip('squat-side'));
    const covered = { ...clip, covers: [{ firstFrame: 0, lastFrame: 100, look, places: [{ frame: 0, box }] }] };
    const [bare] = await stillsOf(clip, [noteAt(10)]);
    const [still] = await stillsOf(covered, [noteAt(10)]);
    if (bare === undefined || still === undefined) throw new Error('no still');
    const rgb = await rgbOf(still.file);
    // Stills of a clip share a name, so the bare one is written again.
    writeFileSync(bare.file, bare.jpeg);
    expect(rangeWithin(await rgbOf(bare.file), clip.shown.width, inside)).toBeGreaterThan(60);
    if (look === 'filled') {
      expect(rangeWithin(rgb, clip.shown.width, inside)).toBeLessThan(10);
      return;
    }
    // A square of 16 pixels from the box's even corner is of one shade, but for JPEG's own noise.
    const square = { left: 422, top: 52, right: 434, bottom: 64 };
    expect(rangeWithin(rgb, clip.shown.width, square)).toBeLessThan(20);
  });
});

describe('cancelling', () => {
  it('ends the work', async () => {
    const clip = await measuredClip('squat-side');
    const stop = new AbortController();
    const work = renderStills(await findMediaTools(), clip, [noteAt(80), noteAt(400)], {
      ...{ words: pictureWords('en'), signal: stop.signal },
      onProgress: () => stop.abort(),
    });
    await expect(work).rejects.toMatchObject({ problem: { code: 'cancelled' } });
  });
});
