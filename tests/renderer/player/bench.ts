import { createPlayer, type Player, type PlayerView } from '../../../renderer/player/player.ts';
import { clipTimes } from '../../../renderer/player/videoLike.ts';
import { FakeTimers, FakeVideo, table } from './fakeVideo.ts';

/** A player on a fake video, with everything it told. */
export type PlayerBench = {
  readonly video: FakeVideo;
  readonly timers: FakeTimers;
  readonly player: Player;
  readonly views: PlayerView[];
  readonly settled: () => readonly number[];
  /** Seconds at which a frame was decoded instead. */
  readonly drawnAt: number[];
  readonly troubles: () => number;
};

export function playerBench(stillPicture: () => Promise<boolean> = () => Promise.resolve(true)): PlayerBench {
  const video = new FakeVideo();
  const timers = new FakeTimers();
  const views: PlayerView[] = [];
  const drawnAt: number[] = [];
  let troubles = 0;
  const player = createPlayer({
    video,
    times: clipTimes(table),
    still: (atSeconds) => {
      drawnAt.push(atSeconds);
      return stillPicture();
    },
    source: () => Promise.resolve(new Map()),
    stream: async function* () {},
    now: () => 0,
    everyRefresh: () => () => {},
    later: timers.later,
    onView: (view) => views.push(view),
    onPlaying: () => {},
    onPassedOver: () => {},
    onTrouble: () => {
      troubles += 1;
    },
  });
  const settled = () => views.filter((view) => view.settled).map((view) => view.frame);
  return { video, timers, player, views, settled, drawnAt, troubles: () => troubles };
}
