import { readFileSync } from 'node:fs';
import path from 'node:path';
import { expect, it } from 'vitest';
import { ffmpeg } from '../media/clips.ts';
import { appFolder, ask, jobEnd, newLibrary, sessionWithClips, squatFile, temporaryFolder } from '../workbench.ts';

type Truth = {
  readonly video: { readonly display_size: readonly [number, number] };
  /** Where the disc's middle is in each upright frame, in pixels. */
  readonly disc_centre_px: readonly (readonly [number, number])[];
  readonly reps: readonly { readonly rom_m: number }[];
};
const truth: Truth = JSON.parse(readFileSync(path.join(appFolder, 'tests/footage/squat-side.truth.json'), 'utf8'));

/** The lowest point of the first rep, at 2.4 s of thirty frames a second. */
const bottom = 72;

it('is measured upright once it is turned, and what was drawn on it stays at the same place of the picture', async () => {
  // The camera lay on its side: what is up in the room is at the left of the picture.
  const lying = path.join(temporaryFolder(), 'lying.mp4');
  await ffmpeg(
    ...['-i', squatFile, '-t', '5', '-vf', 'transpose=cclock', '-an'],
    ...['-c:v', 'libx264', '-preset', 'ultrafast', '-crf', '12', lying],
  );
  const backend = await newLibrary();
  const { sessionId, clipId } = await sessionWithClips(backend, [lying]);
  const [width] = truth.video.display_size;
  const [x = 0, y = 0] = truth.disc_centre_px[bottom] ?? [];
  const inLying = (of: { readonly x: number; readonly y: number }) => ({ x: of.y, y: width - of.x });
  await ask(backend, 'drawings.add', {
    ...{ clipId, frame: bottom },
    drawn: { shape: 'circle', points: [inLying({ x, y }), inLying({ x: x + 57.5, y })] },
  });

  await ask(backend, 'clips.frame', { clipId, change: { turnDeg: 90 } });
  const { review } = await ask(backend, 'review.get', { sessionId });
  const [middle, rim] = review.entries[0]?.clips[0]?.drawings?.[0]?.points ?? [];
  expect([middle?.x, middle?.y, rim?.x, rim?.y].map((px) => Math.round(100 * (px ?? 0)) / 100)).toEqual([
    x,
    y,
    x + 57.5,
    y,
  ]);

  const { jobIds } = await ask(backend, 'measures.start', { clipIds: [clipId], joints: false });
  expect((await jobEnd(backend, jobIds[0] ?? '')).state).toBe('done');
  const { measurement } = await ask(backend, 'measures.get', { clipId });
  const away = (measurement?.curves.positionPx ?? []).map((point, frame) => {
    const [trueX = 0, trueY = 0] = truth.disc_centre_px[frame] ?? [];
    return point === null ? Number.POSITIVE_INFINITY : Math.hypot(point.xPx - trueX, point.yPx - trueY);
  });
  expect(away).toHaveLength(150);
  expect(Math.max(...away)).toBeLessThan(4);
  const { romM } = measurement?.reps[0] ?? {};
  expect(Math.abs((romM?.value ?? 0) - (truth.reps[0]?.rom_m ?? 0))).toBeLessThan(romM?.plusMinus ?? 0);
}, 120_000);
