import { expect, it } from 'vitest';
import { playerBench } from './bench.ts';

it('draws the frame itself where the video paints another one', async () => {
  const { player, video, views, drawnAt } = playerBench();
  player.seekTo(3);
  await video.tells('seeked');
  await video.paints(4);
  expect(drawnAt).toEqual([0.13]);
  expect(views.at(-1)).toEqual({ frame: 3, settled: true, picture: 'canvas' });
});

it('lets a late picture of what was shown before pass', async () => {
  const { player, video, views, drawnAt } = playerBench();
  player.seekTo(3);
  await video.paints(0);
  await video.tells('seeked');
  await video.paints(3);
  expect(drawnAt).toEqual([]);
  expect(views.at(-1)).toEqual({ frame: 3, settled: true, picture: 'video' });
});

it('draws the frame itself where the video has arrived and says nothing of a picture', async () => {
  const { player, video, timers, views } = playerBench();
  player.seekTo(1);
  await video.tells('seeked');
  await timers.pass(300);
  expect(views.at(-1)).toEqual({ frame: 1, settled: true, picture: 'canvas' });
});

it('does not wait for ever for a seek that never arrives', async () => {
  const { player, timers, views } = playerBench();
  player.seekTo(1);
  await timers.pass(5000);
  expect(views.at(-1)?.settled).toBe(true);
});

it('goes back to the video as soon as that shows the right frame', async () => {
  const { player, video, views } = playerBench();
  player.seekTo(3);
  await video.tells('seeked');
  await video.paints(4);
  player.seekTo(4);
  await video.paints(4);
  expect(views.at(-1)).toEqual({ frame: 4, settled: true, picture: 'video' });
});

it('says so when neither the video nor the decoder can show a frame', async () => {
  const { player, video, troubles, settled } = playerBench(() => Promise.resolve(false));
  player.seekTo(3);
  await video.tells('seeked');
  await video.paints(4);
  expect(troubles()).toBe(1);
  expect(settled()).toEqual([]);
});
