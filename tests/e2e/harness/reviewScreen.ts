import type { App } from './app.ts';
import { until } from './until.ts';

/** What the page shows of the picture: the number beside it, and the time the browser itself reports for it. */
export type Shown = {
  readonly frame: number;
  readonly settled: boolean;
  readonly picture: 'video' | 'canvas';
  /** Media time of the frame that was last composited, in seconds. */
  readonly mediaTime: number | null;
};

/** Opens a session from the desk, as a click on its row does, and waits for its picture. */
export async function openReview(app: App, sessionId: string): Promise<void> {
  await app.page.locator(`[data-session="${sessionId}"] button.row-button`).click();
  await picture(app);
}

/** Waits until the picture of the open review stands still at a frame. */
export async function picture(app: App): Promise<void> {
  await app.page.getByTestId('frame-number').waitFor();
  await app.page.evaluate(() => {
    const video = document.querySelector('video');
    if (video === null || Reflect.get(window, 'watched') === video) return;
    const seen = { mediaTime: null as number | null };
    Object.assign(window, { watched: video, seen });
    const watch: VideoFrameRequestCallback = (_now, { mediaTime }) => {
      seen.mediaTime = mediaTime;
      video.requestVideoFrameCallback(watch);
    };
    video.requestVideoFrameCallback(watch);
  });
  await until('a settled picture', async () => (await shown(app)).settled);
}

export async function shown(app: App): Promise<Shown> {
  return app.page.evaluate(() => {
    const number = document.querySelector('[data-testid="frame-number"]');
    const seen = Reflect.get(window, 'seen') as { mediaTime: number | null } | undefined;
    return {
      frame: Number(number?.textContent),
      settled: number?.getAttribute('data-settled') === 'true',
      picture: number?.getAttribute('data-picture') === 'canvas' ? ('canvas' as const) : ('video' as const),
      mediaTime: seen?.mediaTime ?? null,
    };
  });
}

/** Waits until a frame stands settled on screen; gives what is shown. */
export function shownAt(app: App, frame: number): Promise<Shown> {
  return until(`frame ${frame} on screen`, async () => {
    const now = await shown(app);
    return now.settled && now.frame === frame ? now : null;
  });
}

/** Goes to a frame by the keys for ten frames and one frame. */
export async function goToFrame(app: App, frame: number): Promise<void> {
  const away = frame - (await shown(app)).frame;
  const [ten, one] = away < 0 ? ['PageUp', 'Shift+ArrowLeft'] : ['PageDown', 'Shift+ArrowRight'];
  for (let step = 0; step < Math.floor(Math.abs(away) / 10); step += 1) await app.page.keyboard.press(ten);
  for (let step = 0; step < Math.abs(away) % 10; step += 1) await app.page.keyboard.press(one);
  await shownAt(app, frame);
}

/** The text of a cell of the scorecard, for people who can't see it. */
export async function cellWords(app: App, criterion: string, rep: number | 'set'): Promise<string> {
  return (
    (await app.page.locator(`[data-criterion="${criterion}"][data-rep="${rep}"]`).getAttribute('aria-label')) ?? ''
  );
}

/** Clicks a cell of the scorecard. */
export async function clickCell(app: App, criterion: string, rep: number | 'set'): Promise<void> {
  await app.page.locator(`[data-criterion="${criterion}"][data-rep="${rep}"]`).click();
}

/** Goes to a cell of the scorecard by the arrow keys alone. */
export async function arrowToCell(app: App, criterion: string, rep: number | 'set'): Promise<void> {
  const away = await app.page.evaluate(
    ([wantedCriterion, wantedRep]) => {
      const cursor = document.querySelector('[data-cursor="true"]');
      const wanted = document.querySelector(`[data-criterion="${wantedCriterion}"][data-rep="${wantedRep}"]`);
      if (cursor === null || wanted === null) throw new Error('the card has no such cell');
      const place = (cell: Element) => {
        const row = cell.closest('tr');
        return { row: row?.rowIndex ?? 0, column: [...(row?.children ?? [])].indexOf(cell) };
      };
      const [from, to] = [place(cursor), place(wanted)];
      return { down: to.row - from.row, right: to.column - from.column };
    },
    [criterion, rep] as const,
  );
  const press = async (key: string, times: number): Promise<void> => {
    for (let time = 0; time < times; time += 1) await app.page.keyboard.press(key);
  };
  await press(away.down < 0 ? 'ArrowUp' : 'ArrowDown', Math.abs(away.down));
  await press(away.right < 0 ? 'ArrowLeft' : 'ArrowRight', Math.abs(away.right));
  await app.page.locator(`[data-criterion="${criterion}"][data-rep="${rep}"][data-cursor="true"]`).waitFor();
}
