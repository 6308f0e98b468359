import type { App } from '../../harness/app.ts';
import type { barsOf } from '../../harness/countedClip.ts';

/**
 * The number that the picture carried between two refreshes of the screen, in milliseconds of the window's clock while recording, of the sound's
 * while listening.
 */
export type Seen = { readonly sinceMs: number; readonly atMs: number; readonly number: number };

export type Watched = {
  /** When recorders were told to start, and to stop, by the window's clock. */
  readonly starts: readonly number[];
  readonly stops: readonly number[];
  readonly recorded: readonly Seen[];
  readonly heard: readonly Seen[];
};

/** Has the page note, at every refresh, the number that is read off the picture: an observer that knows nothing of the app. */
export async function watchPicture(app: App, bars: ReturnType<typeof barsOf>): Promise<void> {
  await app.page.evaluate(({ bits, barPx, drawnOver }) => {
    const watched = { starts: [] as number[], stops: [] as number[], recorded: [] as object[], heard: [] as object[] };
    let before = { now: performance.now(), sound: 0 };
    let sound: HTMLMediaElement | null = null;
    const start = MediaRecorder.prototype.start;
    MediaRecorder.prototype.start = function (...args) {
      watched.starts.push(performance.now());
      start.apply(this, args);
    };
    const stop = MediaRecorder.prototype.stop;
    MediaRecorder.prototype.stop = function () {
      watched.stops.push(performance.now());
      stop.apply(this);
    };
    const play = HTMLMediaElement.prototype.play;
    HTMLMediaElement.prototype.play = function () {
      if (this.src.includes('/voice/')) sound = this;
      return play.apply(this);
    };
    const canvas = new OffscreenCanvas(bits * barPx, 2);
    const context = canvas.getContext('2d', { willReadFrequently: true });
    const look = (): void => {
      requestAnimationFrame(look);
      const over = document.querySelector<HTMLCanvasElement>(drawnOver);
      const picture = over ?? document.querySelector('video');
      if (picture === null || context === null) return;
      context.drawImage(picture, 0, 0, canvas.width, canvas.height);
      const pixels = context.getImageData(0, 0, canvas.width, 1).data;
      let number = 0;
      for (let bit = 0; bit < bits; bit += 1)
        if ((pixels[4 * (bit * barPx + barPx / 2)] ?? 0) > 128) number += 2 ** bit;
      const phase = document.querySelector('[data-testid="narration-time"]')?.getAttribute('data-phase');
      const now = { now: performance.now(), sound: (sound?.currentTime ?? 0) * 1000 };
      if (phase === 'recording') watched.recorded.push({ sinceMs: before.now, atMs: now.now, number });
      // Where the sound stands, it waits for a picture, and nothing is heard beside a wrong one.
      if (phase === 'listening' && sound?.paused === false)
        watched.heard.push({ sinceMs: Math.min(before.sound, now.sound), atMs: now.sound, number });
      before = now;
    };
    requestAnimationFrame(look);
    Object.assign(window, { narrationSeen: watched });
  }, bars);
}

/** What was seen so far. */
export const watchedIn = (app: App): Promise<Watched> =>
  app.page.evaluate(() => Reflect.get(window, 'narrationSeen') as Watched);

/** One frame of the clip, and a refresh of the screen for either observer: 33 ms on a busy machine without a graphics card. */
const apartMs = 3 * 34;

/** What was seen while a recorder ran, by the clock of the sound: without the pauses. */
export function seenBySound({ starts, stops, recorded }: Watched): readonly Seen[] {
  let beforeMs = 0;
  return starts.flatMap((startMs, part) => {
    const stopMs = stops[part] ?? Number.POSITIVE_INFINITY;
    const by = beforeMs - startMs;
    beforeMs += stopMs - startMs;
    return recorded
      .filter(({ sinceMs, atMs }) => atMs >= startMs && sinceMs <= stopMs)
      .map(({ sinceMs, atMs, number }) => ({ sinceMs: Math.max(sinceMs, startMs) + by, atMs: atMs + by, number }));
  });
}

/** Those of some observations that show no number which was on screen then, or one next to it. */
export function strangers(told: readonly Seen[], recorded: readonly Seen[]): readonly string[] {
  return told.flatMap(({ sinceMs, atMs, number }) => {
    const then = recorded.filter((seen) => seen.sinceMs <= atMs + apartMs && seen.atMs >= sinceMs - apartMs);
    const near = then.some((seen) => Math.abs(seen.number - number) <= 1);
    return then.length === 0 || near
      ? []
      : [`${atMs.toFixed(0)} ms: ${number}, not ${then.map((seen) => seen.number)}`];
  });
}
