import { describe, expect, it } from 'vitest';
import { playerBench } from './bench.ts';
import type { FakeVideo } from './fakeVideo.ts';

it('follows the frames that are painted while it plays', async () => {
  const { player, video, views } = playerBench();
  player.play();
  for (const frame of [0, 1, 2]) await video.paints(frame);
  expect(video.paused).toBe(false);
  expect(views.map((view) => view.frame)).toEqual([0, 1, 2]);
});

it('settles on the frame last reported when it pauses', async () => {
  const { player, video, settled } = playerBench();
  player.play();
  await video.paints(2);
  player.pause();
  expect(video.paused).toBe(true);
  expect(video.seeks).toEqual(['seek 2']);
  await video.paints(2);
  expect(settled()).toEqual([2]);
});

it('stops at the last frame before the video ends, and starts over from there', async () => {
  const { player, video } = playerBench();
  player.play();
  await video.paints(5);
  expect(video.paused).toBe(true);
  await video.paints(5);
  player.play();
  expect(video.seeks.at(-1)).toBe('seek 0');
  expect(video.paused).toBe(false);
});

it('plays a rep over and over', async () => {
  const { player, video } = playerBench();
  player.seekTo(1);
  await video.paints(1);
  player.setLoop({ first: 1, last: 3 });
  player.play();
  await video.paints(2);
  await video.paints(3);
  expect(video.seeks.at(-1)).toBe('seek 1');
  await video.paints(1);
  await video.paints(3);
  expect(video.seeks).toEqual(['seek 1', 'seek 1', 'seek 1']);
  expect(video.paused).toBe(false);
});

it('begins a repeated rep at its start when it is started outside of it', () => {
  const { player, video } = playerBench();
  player.setLoop({ first: 2, last: 4 });
  player.play();
  expect(video.seeks).toEqual(['seek 2']);
});

it('goes on from where a seek was heading when it is started before the seek has ended', async () => {
  const { player, video } = playerBench();
  player.seekTo(3);
  player.play();
  expect(video.seeks.at(-1)).toBe('seek 3');
});

it('touches nothing any more once it is done with', async () => {
  const { player, video, views } = playerBench();
  player.seekTo(3);
  player.dispose();
  const before = views.length;
  await video.paints(3);
  expect(views).toHaveLength(before);
});

describe('paused at once after it was started in the middle of a seek', () => {
  const settledIn = async (happens: (video: FakeVideo) => Promise<void>) => {
    const { player, video, settled, views } = playerBench();
    player.seekTo(2);
    await video.paints(2);
    player.step(1, 'pressed');
    player.play();
    await happens(video);
    player.pause();
    const heading = player.frame();
    expect(video.seeks.at(-1)).toBe(`seek ${heading}`);
    await video.tells('seeked');
    await video.paints(heading);
    expect(settled().at(-1)).toBe(heading);
    expect(views.at(-1)).toEqual({ frame: heading, settled: true, picture: 'video' });
    return heading;
  };

  it('settles on the frame that the seek was heading for when nothing was painted yet', async () => {
    expect(await settledIn(async () => {})).toBe(3);
  });

  it('settles on what was painted last, and seeks there, though the old seek would have had it too', async () => {
    expect(await settledIn((video) => video.paints(3))).toBe(3);
    expect(
      await settledIn(async (video) => {
        await video.paints(3);
        await video.paints(4);
      }),
    ).toBe(4);
  });

  it('leaves nothing of the old seek to come late', async () => {
    const { player, video, timers, views, drawnAt } = playerBench();
    player.seekTo(2);
    player.play();
    await video.paints(3);
    await timers.pass(5000);
    expect(drawnAt).toEqual([]);
    expect(views.at(-1)).toEqual({ frame: 3, settled: false, picture: 'video' });
  });
});
