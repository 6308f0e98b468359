import type { ClipTimes, FrameSource, Picture } from './videoLike.ts';

export type ReverseOptions = {
  readonly times: ClipTimes;
  readonly source: FrameSource;
  /** Milliseconds of a steady clock. */
  readonly now: () => number;
  /** Calls back once a screen refresh; the returned function calls it off. */
  readonly everyRefresh: (run: () => void) => () => void;
  readonly onFrame: (frame: number) => void;
  /** A frame can't be decoded and is passed over; told for the first of each run. */
  readonly onPassedOver: (frame: number) => void;
  /** The start of the clip, or of the loop, was reached. */
  readonly onEnd: () => void;
};

export type Reverse = {
  readonly start: (frame: number, speed: number, first: number) => void;
  readonly setSpeed: (speed: number) => void;
  readonly stop: () => void;
};

/** Frames decoded at a time: the next lot is decoded while this one is shown. */
const lot = 16;

/**
 * Plays backwards: no video element can, so frames are decoded forwards in small lots and drawn in reverse, each at its
 * own time. Where a lot is not ready in time the picture waits for it; no frame of a lot is skipped for being late. One that can't be
 * decoded is: the picture before it stays for its time.
 */
export function createReverse({ times, source, now, everyRefresh, onFrame, ...told }: ReverseOptions): Reverse {
  let lots = new Map<number, Promise<ReadonlyMap<number, Picture>>>();
  let ready = new Map<number, ReadonlyMap<number, Picture>>();
  let callOff = (): void => {};
  let run = 0;
  let speed = 1;
  let anchor = { atMs: 0, seconds: 0 };
  /** The frame that playing has come to. */
  let shown = 0;
  let hasPassedOver = false;

  const lotOf = (frame: number): number => Math.floor(frame / lot);

  function load(number: number): void {
    if (number < 0 || lots.has(number)) return;
    const mine = run;
    const frames = source(number * lot, Math.min(times.count, (number + 1) * lot) - 1);
    lots.set(number, frames);
    const settle = (pictures: ReadonlyMap<number, Picture>): void => {
      if (mine === run) ready.set(number, pictures);
      else discard(pictures);
    };
    frames.then(settle, () => settle(new Map()));
  }

  const discard = (pictures: ReadonlyMap<number, Picture>): void => {
    for (const picture of pictures.values()) picture.close();
  };

  function forget(from: number): void {
    for (const [number, pictures] of ready) {
      if (number <= from) continue;
      discard(pictures);
      ready.delete(number);
      lots.delete(number);
    }
  }

  function clear(): void {
    run += 1;
    callOff();
    for (const pictures of ready.values()) discard(pictures);
    ready = new Map();
    lots = new Map();
  }

  function finish(): void {
    clear();
    told.onEnd();
  }

  function show(frame: number): boolean {
    const pictures = ready.get(lotOf(frame));
    if (pictures === undefined) return false;
    shown = frame;
    const picture = pictures.get(frame);
    if (picture !== undefined) {
      picture.draw();
      onFrame(frame);
    } else if (!hasPassedOver) {
      hasPassedOver = true;
      told.onPassedOver(frame);
    }
    return true;
  }

  return {
    start: (frame, startSpeed, first) => {
      clear();
      speed = startSpeed;
      shown = frame;
      hasPassedOver = false;
      anchor = { atMs: now(), seconds: times.seekSeconds(frame) };
      load(lotOf(frame));
      load(lotOf(frame) - 1);
      callOff = everyRefresh(() => {
        if (shown <= first) return finish();
        const dueSeconds = anchor.seconds - ((now() - anchor.atMs) / 1000) * speed;
        const due = Math.max(first, Math.min(times.frameShownAt(Math.max(0, dueSeconds)), shown));
        if (due >= shown) return;
        load(lotOf(due));
        load(lotOf(due) - 1);
        // Late lots hold the picture; time goes on from where it was held.
        if (show(due)) forget(lotOf(due));
        else anchor = { atMs: now(), seconds: times.seekSeconds(shown) };
      });
    },
    setSpeed: (next) => {
      anchor = { atMs: now(), seconds: times.seekSeconds(shown) };
      speed = next;
    },
    stop: clear,
  };
}
