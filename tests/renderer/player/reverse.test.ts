import { describe, expect, it } from 'vitest';
import { createReverse } from '../../../renderer/player/reverse.ts';
import { clipTimes } from '../../../renderer/player/videoLike.ts';

const count = 40;
/** Forty frames, a tenth of a second each. */
const times = clipTimes({
  timeBase: { numerator: 1, denominator: 10 },
  ticks: Array.from({ length: count }, (_, i) => i),
  endTicks: count,
});

const turn = () => new Promise((resolve) => setImmediate(resolve));

/** A reverse player whose clock and refreshes are the test's. */
function bench({ slow = false, broken = [] as readonly number[], fails = -1 } = {}) {
  const clock = { ms: 0 };
  const refreshes = new Set<() => void>();
  const told = { frames: [] as number[], passedOver: [] as number[], ended: 0, open: 0, mostOpen: 0 };
  const waiting: (() => void)[] = [];
  const reverse = createReverse({
    times,
    source: async (first, last) => {
      if (slow) await new Promise<void>((resolve) => waiting.push(resolve));
      if (first <= fails && fails <= last) throw new Error('The file ends here.');
      const frames = Array.from({ length: last - first + 1 }, (_, i) => first + i).filter(
        (frame) => !broken.includes(frame),
      );
      told.open += frames.length;
      told.mostOpen = Math.max(told.mostOpen, told.open);
      return new Map(
        frames.map((frame) => [
          frame,
          {
            draw: () => {},
            close: () => {
              told.open -= 1;
            },
          },
        ]),
      );
    },
    now: () => clock.ms,
    everyRefresh: (run) => {
      refreshes.add(run);
      return () => refreshes.delete(run);
    },
    onFrame: (frame) => told.frames.push(frame),
    onPassedOver: (frame) => told.passedOver.push(frame),
    onEnd: () => {
      told.ended += 1;
    },
  });
  const pass = async (ms: number, each = 20) => {
    for (let passed = 0; passed < ms; passed += each) {
      clock.ms += each;
      await turn();
      for (const run of [...refreshes]) run();
    }
  };
  const release = () => {
    for (const go of waiting.splice(0)) go();
  };
  return { reverse, told, pass, release };
}

describe('playing backwards', () => {
  it('shows each frame once, one after the other, a tenth of a second each, and ends at the first', async () => {
    const { reverse, told, pass } = bench();
    reverse.start(39, 1, 0);
    await pass(4100);
    expect(told.frames).toEqual(Array.from({ length: 39 }, (_, i) => 38 - i));
    expect(told.ended).toBe(1);
  });

  it('at a quarter of the speed shows ten frames in four seconds', async () => {
    const { reverse, told, pass } = bench();
    reverse.start(30, 0.25, 0);
    await pass(4000);
    expect(told.frames.at(-1)).toBe(20);
  });

  it('stops at the start of a loop', async () => {
    const { reverse, told, pass } = bench();
    reverse.start(30, 2, 25);
    await pass(1000);
    expect(told.frames.at(-1)).toBe(25);
    expect(told.ended).toBe(1);
  });

  it('waits for frames that are not decoded yet, and skips none for it', async () => {
    const { reverse, told, pass, release } = bench({ slow: true });
    reverse.start(20, 1, 0);
    await pass(2000);
    expect(told.frames).toEqual([]);
    release();
    await pass(300);
    expect(told.frames).toEqual([19, 18, 17]);
  });

  it('lets go of what was shown, and of everything when it stops', async () => {
    const { reverse, told, pass } = bench();
    reverse.start(39, 1, 0);
    await pass(3900);
    expect(told.mostOpen).toBeLessThanOrEqual(48);
    reverse.stop();
    await turn();
    expect(told.open).toBe(0);
  });

  const downFrom = (from: number, to: number) => Array.from({ length: from - to + 1 }, (_, i) => from - i);

  it('passes over a frame that can’t be decoded in its time, says so once, and goes on', async () => {
    const { reverse, told, pass } = bench({ broken: [30, 29, 12] });
    reverse.start(39, 1, 0);
    await pass(4100);
    expect(told.frames).toEqual([...downFrom(38, 31), ...downFrom(28, 13), ...downFrom(11, 0)]);
    expect(told.passedOver).toEqual([30]);
    expect(told.ended).toBe(1);
  });

  it('comes to its end where the first frame can’t be decoded, or a stretch of the file can’t be read', async () => {
    for (const trouble of [{ broken: [0] }, { fails: 20 }]) {
      const { reverse, told, pass } = bench(trouble);
      reverse.start(39, 1, 0);
      await pass(4100);
      expect(told.ended).toBe(1);
      expect(told.passedOver).toHaveLength(1);
      expect(told.frames).toContain(1);
    }
  });
});
