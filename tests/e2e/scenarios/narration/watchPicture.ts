import type { App } from '../../harness/app.ts';
import type { barsOf } from '../../harness/countedClip.ts';

/** The number that the picture carried at a time: by the window's clock while recording, by the sound's while listening, in milliseconds. */
export type Seen = { readonly atMs: number; readonly number: number };

export type Watched = {
  /** When the recorder was told to start, by the window's clock; the first time only. */
  readonly startedMs: number;
  readonly recorded: readonly Seen[];
  readonly heard: readonly Seen[];
};

/** Has the page note, at every refresh, the number that is read off the picture: an observer that knows nothing of the app. */
export async function watchPicture(app: App, bars: ReturnType<typeof barsOf>): Promise<void> {
  await app.page.evaluate(({ bits, barPx }) => {
    const watched = { startedMs: Number.NaN, recorded: [] as object[], heard: [] as object[] };
    let sound: HTMLMediaElement | null = null;
    const start = MediaRecorder.prototype.start;
    MediaRecorder.prototype.start = function (...args) {
      if (Number.isNaN(watched.startedMs)) watched.startedMs = performance.now();
      start.apply(this, args);
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
      const over = document.querySelector<HTMLCanvasElement>('.stage-picture > canvas:not([hidden]):not(.ghost)');
      const picture = over ?? document.querySelector('video');
      if (picture === null || context === null) return;
      context.drawImage(picture, 0, 0, canvas.width, canvas.height);
      const pixels = context.getImageData(0, 0, canvas.width, 1).data;
      let number = 0;
      for (let bit = 0; bit < bits; bit += 1)
        if ((pixels[4 * (bit * barPx + barPx / 2)] ?? 0) > 128) number += 2 ** bit;
      const phase = document.querySelector('[data-testid="narration-time"]')?.getAttribute('data-phase');
      if (phase === 'recording') watched.recorded.push({ atMs: performance.now(), number });
      if (phase === 'listening' && sound !== null) watched.heard.push({ atMs: sound.currentTime * 1000, number });
    };
    requestAnimationFrame(look);
    Object.assign(window, { narrationSeen: watched });
  }, bars);
}

/** What was seen so far. */
export const watchedIn = (app: App): Promise<Watched> =>
  app.page.evaluate(() => Reflect.get(window, 'narrationSeen') as Watched);

/** One frame of the clip and a refresh of the screen on either side: what two observers of the same may differ by. */
const apartMs = 34 + 34;

/** Those of some observations that show no number which was recorded then, or one next to it. */
export function strangers(told: readonly Seen[], { startedMs, recorded }: Watched): readonly string[] {
  return told.flatMap(({ atMs, number }) => {
    const then = recorded.filter((seen) => Math.abs(seen.atMs - startedMs - atMs) <= apartMs);
    const near = then.some((seen) => Math.abs(seen.number - number) <= 1);
    return then.length === 0 || near
      ? []
      : [`${atMs.toFixed(0)} ms: ${number}, not ${then.map((seen) => seen.number)}`];
  });
}
