import type { App } from '../e2e/harness/app.ts';

/** The value below which such a share of all lies. */
export const nth = (values: readonly number[], share: number): number =>
  [...values].sort((a, b) => a - b)[Math.floor((values.length - 1) * share)] ?? Number.NaN;

/** Milliseconds from a key to its frame standing on screen, step after step. */
export const stepTimes = (app: App, key: 'ArrowRight' | 'ArrowLeft', steps: number): Promise<number[]> =>
  app.page.evaluate(
    async ([name, count]) => {
      const readout = document.querySelector('[data-testid="frame-number"]');
      if (readout === null) throw new Error('There is no picture.');
      const settled = (but: string): Promise<void> =>
        new Promise((resolve) => {
          const observer = new MutationObserver(() => {
            if (readout.getAttribute('data-settled') !== 'true' || readout.textContent === but) return;
            observer.disconnect();
            resolve();
          });
          observer.observe(readout, { attributes: true, childList: true, characterData: true, subtree: true });
        });
      const times: number[] = [];
      for (let step = 0; step < count; step += 1) {
        const done = settled(readout.textContent ?? '');
        const start = performance.now();
        document.body.dispatchEvent(
          new KeyboardEvent('keydown', { key: name, code: name, shiftKey: true, bubbles: true }),
        );
        await done;
        times.push(performance.now() - start);
      }
      return times;
    },
    [key, steps] as const,
  );

/** The longest stretch, in milliseconds, for which typing a note kept the page from drawing. */
export const longestBlock = async (app: App): Promise<number> => {
  await app.page.getByTestId('flag').first().getByRole('textbox', { name: 'Note' }).focus();
  await app.page.evaluate(() => {
    const blocks = [0];
    new PerformanceObserver((list) => blocks.push(...list.getEntries().map(({ duration }) => duration))).observe({
      type: 'longtask',
    });
    Object.assign(window, { blocks });
  });
  await app.page.keyboard.type('The bar tips to the left as it leaves the stretched end. ', { delay: 60 });
  // Long enough for the note to be saved and the review read again.
  await app.page.getByText('Saved').waitFor();
  await app.page.keyboard.type('And again.', { delay: 120 });
  return app.page.evaluate(() => Math.max(...(Reflect.get(window, 'blocks') as number[])));
};
