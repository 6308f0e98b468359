import { frameAtUs, frameStartUs } from '../../../engine/time/frames.ts';
import type { FrameTable } from '../../../engine/time/frameTable.ts';
import type { Later } from '../../../renderer/base/later.ts';
import type { VideoLike } from '../../../renderer/player/videoLike.ts';

type Callback = Parameters<VideoLike['requestVideoFrameCallback']>[0];

/** Six frames of a variable rate, in hundredths of a second; the last one lasts 0.04 s. */
export const table: FrameTable = {
  timeBase: { numerator: 1, denominator: 100 },
  ticks: [0, 3, 6, 12, 14, 20],
  endTicks: 24,
};

/** A stand-in for a `<video>` that does nothing until the test says so, and keeps what was done to it. */
export class FakeVideo implements VideoLike {
  playbackRate = 1;
  paused = true;
  seeking = false;
  readonly log: string[] = [];
  #currentTime = 0;
  #callbacks = new Map<number, Callback>();
  #handle = 0;
  #listeners = new Map<string, Set<() => void>>();

  get currentTime(): number {
    return this.#currentTime;
  }
  set currentTime(seconds: number) {
    this.#currentTime = seconds;
    this.seeking = true;
    this.log.push(`seek ${frameAtUs(table, Math.round(seconds * 1e6))}`);
  }
  play = (): Promise<void> => {
    this.paused = false;
    this.log.push('play');
    return Promise.resolve();
  };
  pause = (): void => {
    this.paused = true;
    this.log.push('pause');
  };
  requestVideoFrameCallback = (callback: Callback): number => {
    this.#handle += 1;
    this.#callbacks.set(this.#handle, callback);
    this.log.push('listen');
    return this.#handle;
  };
  cancelVideoFrameCallback = (handle: number): void => {
    this.#callbacks.delete(handle);
  };
  addEventListener = (type: string, listener: () => void): void => {
    this.#listeners.set(type, (this.#listeners.get(type) ?? new Set()).add(listener));
  };
  removeEventListener = (type: string, listener: () => void): void => {
    this.#listeners.get(type)?.delete(listener);
  };

  /** Paints a frame: every registered callback hears of it once. */
  async paints(frame: number): Promise<void> {
    const callbacks = [...this.#callbacks.values()];
    this.#callbacks.clear();
    for (const callback of callbacks) callback(0, { mediaTime: frameStartUs(table, frame) / 1e6 });
    await turn();
  }
  async tells(type: 'seeked' | 'ended' | 'error'): Promise<void> {
    if (type === 'seeked') this.seeking = false;
    for (const listener of this.#listeners.get(type) ?? []) listener();
    await turn();
  }
  get seeks(): readonly string[] {
    return this.log.filter((line) => line.startsWith('seek'));
  }
}

/** Lets everything that waits for a promise go on. */
export const turn = (): Promise<void> => new Promise((resolve) => setImmediate(resolve));

/** Timers that run when the test lets their time pass. */
export class FakeTimers {
  #timers = new Set<{ readonly delayMs: number; readonly run: () => void }>();

  readonly later: Later = (delayMs, run) => {
    const timer = { delayMs, run };
    this.#timers.add(timer);
    return () => this.#timers.delete(timer);
  };
  /** Runs every timer that is due within so long. */
  async pass(ms: number): Promise<void> {
    for (const timer of [...this.#timers]) {
      if (timer.delayMs > ms) continue;
      this.#timers.delete(timer);
      timer.run();
    }
    await turn();
  }
}
