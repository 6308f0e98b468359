import { expect, it } from 'vitest';
import { playerBench } from './bench.ts';

it('listens for the painted frame before it seeks, since the frame may be painted at once', () => {
  const { player, video } = playerBench();
  player.seekTo(2);
  expect(video.log).toEqual(['listen', 'seek 2']);
});

it('seeks to the middle of a frame’s time on screen', () => {
  const { player, video } = playerBench();
  player.seekTo(3);
  // Frame 3 is on screen from 0.12 s to 0.14 s.
  expect(video.currentTime).toBe(0.13);
});

it('runs one seek at a time and keeps only the latest request', async () => {
  const { player, video, settled } = playerBench();
  player.seekTo(1);
  player.seekTo(2);
  player.seekTo(4);
  expect(video.seeks).toEqual(['seek 1']);
  await video.paints(1);
  expect(video.seeks).toEqual(['seek 1', 'seek 4']);
  await video.paints(4);
  expect(video.seeks).toEqual(['seek 1', 'seek 4']);
  expect(settled()).toEqual([4]);
});

it('never loses a request that comes while a decoded frame is being drawn', async () => {
  let drawn = (_done: boolean): void => {};
  const { player, video, settled, drawnAt } = playerBench(
    () =>
      new Promise((resolve) => {
        drawn = resolve;
      }),
  );
  player.seekTo(3);
  await video.tells('seeked');
  await video.paints(4);
  expect(drawnAt).toEqual([0.13]);
  player.seekTo(5);
  drawn(true);
  await video.paints(3);
  await video.paints(5);
  expect(settled()).toEqual([5]);
});

it('holds requests outside the clip at its first and last frame, short of the end', async () => {
  const { player, video, settled } = playerBench();
  player.seekTo(99);
  expect(video.currentTime).toBeLessThan(0.24);
  await video.paints(5);
  player.seekTo(-7);
  await video.paints(0);
  expect(settled()).toEqual([5, 0]);
});

it('says settled only when the frame asked for is on screen', async () => {
  const { player, video, views } = playerBench();
  player.seekTo(2);
  await video.tells('seeked');
  expect(views.at(-1)?.settled).toBe(false);
  await video.paints(2);
  expect(views.at(-1)).toEqual({ frame: 2, settled: true, picture: 'video' });
});
