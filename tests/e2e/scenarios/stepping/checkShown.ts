import assert from 'node:assert/strict';
import type { App } from '../../harness/app.ts';
import { picture, type Shown, shownAt } from '../../harness/reviewScreen.ts';

export type ShownFrom = {
  readonly app: App;
  /** When each frame starts in the file that plays, in seconds. */
  readonly playedS: readonly number[];
  readonly toleranceS: number;
};

/** Waits for a frame and compares the time that the browser reports for it. */
export async function checkShown({ app, playedS, toleranceS }: ShownFrom, frame: number): Promise<void> {
  await picture(app);
  const now = await shownAt(app, frame);
  if (now.picture === 'canvas') return checkDrawn(app, now);
  const expected = playedS[frame] ?? Number.NaN;
  const said = now.mediaTime ?? Number.NaN;
  assert.ok(Math.abs(said - expected) < toleranceS, `frame ${frame}: ${said} instead of ${expected}`);
}

export async function stepAndCheck(from: ShownFrom, key: string, frame: number): Promise<void> {
  await from.app.page.keyboard.press(key);
  await checkShown(from, frame);
}

/** Presses a key that jumps along the strip. */
export async function jumpAndCheck(from: ShownFrom, key: 'Home' | 'End', frame: number): Promise<void> {
  await strip(from.app).focus();
  await stepAndCheck(from, key, frame);
}

/** What the strip spans: where its frames start, and where it ends. */
export type Aim = { readonly startsS: readonly number[]; readonly endS: number };

const narrowest = 1.2;

/**
 * Points at the middle of a frame in the strip, which is laid out in time. The pointer stands on whole points, so a frame
 * that is hardly wider than one can't be aimed at; gives false then.
 */
export async function seekByPointer(app: App, { startsS, endS }: Aim, frame: number): Promise<boolean> {
  const box = await strip(app).boundingBox();
  assert.ok(box !== null);
  const [firstS = 0] = startsS;
  const xAt = (seconds: number): number => box.x + ((seconds - firstS) / (endS - firstS)) * box.width;
  const left = xAt(startsS[frame] ?? Number.NaN);
  const right = xAt(startsS[frame + 1] ?? endS);
  if (right - left < narrowest) return false;
  await app.page.mouse.click(Math.round((left + right) / 2), box.y + box.height / 2);
  return true;
}

const strip = (app: App) => app.page.getByRole('slider', { name: 'Position in the clip' });

/** A frame that no seek reaches is drawn over the video; that is only fair when it can be seen. */
async function checkDrawn(app: App, { frame }: Shown): Promise<void> {
  assert.ok(await app.page.locator('.stage canvas').isVisible(), `frame ${frame} is said to be drawn, and is not seen`);
}
