import type { App } from './app.ts';
import { pointOnScreen } from './pointOnScreen.ts';

/** Drags from one point of the picture to another, in its own pixels. */
export async function drag(app: App, from: readonly [number, number], to: readonly [number, number]): Promise<void> {
  const [start, end] = [await pointOnScreen(app, ...from), await pointOnScreen(app, ...to)];
  await app.page.mouse.move(start.x, start.y);
  await app.page.mouse.down();
  await app.page.mouse.move(end.x, end.y, { steps: 8 });
  await app.page.mouse.up();
}
