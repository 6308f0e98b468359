import { expect, it } from 'vitest';
import { playerBench } from './bench.ts';

it('steps on and back by single frames, each shown once, in order', async () => {
  const { player, video, settled } = playerBench();
  player.seekTo(0);
  await video.paints(0);
  for (const frame of [1, 2, 3, 4, 5]) {
    player.step(1, 'pressed');
    await video.paints(frame);
  }
  for (const frame of [4, 3, 2, 1, 0]) {
    player.step(-1, 'pressed');
    await video.paints(frame);
  }
  expect(settled()).toEqual([0, 1, 2, 3, 4, 5, 4, 3, 2, 1, 0]);
});

it('counts every press, also while a step is still on its way', async () => {
  const { player, video, settled } = playerBench();
  player.seekTo(0);
  await video.paints(0);
  player.step(1, 'pressed');
  player.step(1, 'pressed');
  player.step(1, 'pressed');
  await video.paints(1);
  await video.paints(3);
  expect(settled().at(-1)).toBe(3);
});

it('lets the repeats of a held key wait, so that no frame is skipped', async () => {
  const { player, video, settled } = playerBench();
  player.seekTo(0);
  await video.paints(0);
  player.step(1, 'pressed');
  player.step(1, 'held');
  player.step(1, 'held');
  await video.paints(1);
  player.step(1, 'held');
  await video.paints(2);
  expect(settled()).toEqual([0, 1, 2]);
});

it('stays at the ends', async () => {
  const { player, video, settled } = playerBench();
  player.seekTo(5);
  await video.paints(5);
  player.step(1, 'pressed');
  player.step(10, 'pressed');
  expect(video.seeks).toEqual(['seek 5']);
  expect(settled()).toEqual([5]);
  expect(player.frame()).toBe(5);
});
