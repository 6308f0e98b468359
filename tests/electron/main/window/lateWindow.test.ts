import { EventEmitter, once } from 'node:events';
import { expect, test } from 'vitest';
import { mostDrawingMs, showWhenDrawn } from '../../../../electron/main/window/lateWindow.ts';
import { sayDialogs } from '../../../../electron/main/window/sayWindow.ts';

/** A window that says what was done with it, and a page that draws itself only when it is told to. */
function windowOf(limitMs: number) {
  const page = new EventEmitter();
  const done: string[] = [];
  let gone = false;
  const window = {
    onDrawn: (listener: () => void) => void page.once('ready-to-show', listener),
    onClosed: (listener: () => void) => void page.once('closed', listener),
    isDestroyed: () => gone,
    show: () => void done.push('shown'),
  };
  const onLate = () => {
    done.push('told');
    page.emit('told');
  };
  showWhenDrawn(window, { limitMs, onLate });
  const close = () => {
    gone = true;
    page.emit('closed');
  };
  return { page, done, close };
}

test('a page that does not draw itself is shown all the same after the limit, with a sentence that names the log', async () => {
  const { page, done } = windowOf(5);
  await once(page, 'told');
  expect(done).toEqual(['shown', 'told']);
  for (const language of ['en', 'de'] as const) {
    expect(sayDialogs(language)('lateWindow', { logFile: '/profile/rackside-window.log' })).toMatch(
      /^\p{Lu}.*\/profile\/rackside-window\.log/u,
    );
  }
  expect(mostDrawingMs).toBe(60_000);
});

test('a page that draws itself is shown once, and a window that was closed is not told of', async () => {
  const drawn = windowOf(5);
  drawn.page.emit('ready-to-show');
  const closed = windowOf(5);
  closed.close();
  const last = windowOf(20);
  await once(last.page, 'told');
  expect([drawn.done, closed.done]).toEqual([['shown'], []]);
});
