import { describe, expect, it } from 'vitest';
import { createFollower, type FrameStream } from '../../../renderer/player/follower.ts';

/** A clip of a hundred frames that decode one after the other, and a screen that is refreshed by hand. */
function bench() {
  const drawn: number[] = [];
  const opened: number[] = [];
  const paces: string[] = [];
  let held = 0;
  let mostHeld = 0;
  let ended = 0;
  let refresh = (): void => {};
  const stream: FrameStream = async function* (first) {
    opened.push(first);
    for (let frame = first; frame < 100; frame += 1) {
      yield {
        frame,
        take: () => {
          held += 1;
          mostHeld = Math.max(mostHeld, held);
          return {
            draw: () => drawn.push(frame),
            close: () => {
              held -= 1;
            },
          };
        },
        skip: () => {},
      };
    }
  };
  const follower = createFollower({
    stream,
    everyRefresh: (run) => {
      refresh = run;
      return () => {
        refresh = () => {};
      };
    },
    onFrame: () => {},
    onEnd: () => {
      ended += 1;
    },
  });
  /** Follows frames that are due one a refresh; time stands while one is waited for. */
  const follow = async (frames: readonly number[]): Promise<void> => {
    let at = 0;
    let going = true;
    follower.start({
      due: () => frames[at] ?? null,
      ahead: () => [...new Set(frames.slice(at, at + 12))].slice(0, 6),
      onPace: (pace) => {
        paces.push(pace);
        going = pace === 'going';
      },
    });
    for (let turn = 0; turn < 20 * frames.length && ended === 0; turn += 1) {
      refresh();
      if (going) at += 1;
      for (let wait = 0; wait < 3; wait += 1) await Promise.resolve();
    }
  };
  return { follow, follower, drawn, opened, paces, ended: () => ended, held: () => held, mostHeld: () => mostHeld };
}

describe('following a script', () => {
  it('shows every frame that is due, in its order, whichever way it goes', async () => {
    const script = [10, 11, 12, 11, 10, 9, 60, 61, 3, 4];
    const { follow, drawn, ended, held, mostHeld } = bench();
    await follow(script);
    expect(drawn).toEqual(script);
    expect(ended()).toBe(1);
    expect(held()).toBe(0);
    expect(mostHeld()).toBeLessThanOrEqual(8);
  });

  it('makes time stand until a late frame is there', async () => {
    const { follow, paces } = bench();
    await follow([50, 51]);
    expect(paces.slice(0, 2)).toEqual(['waiting', 'going']);
  });

  it('decodes what plays on in one go', async () => {
    const { follow, opened } = bench();
    await follow(Array.from({ length: 40 }, (_, at) => 20 + at));
    expect(opened).toEqual([20]);
  });

  it('ends where a frame can’t be had', async () => {
    const { follow, ended, drawn } = bench();
    await follow([98, 99, 140]);
    expect(ended()).toBe(1);
    expect(drawn).toEqual([98, 99]);
  });
});
