import assert from 'node:assert/strict';
import type { App } from '../../harness/app.ts';
import type { Report } from '../../harness/report.ts';
import { picture } from '../../harness/reviewScreen.ts';
import { until } from '../../harness/until.ts';
import { look } from './boxes.ts';

const shareOf = async (app: App): Promise<number> =>
  Number(await app.page.getByRole('separator', { name: 'Width of the picture' }).getAttribute('aria-valuenow'));

/** The divider moves by pointer and by keys, within what both sides need, and is kept for its shape of clip. */
export async function checkDivider(app: App, report: Report, shape: 'landscape' | 'portrait'): Promise<void> {
  const { page } = app;
  const divider = page.getByRole('separator', { name: 'Width of the picture' });
  await report.check(
    `${shape}: the divider is moved by its own arrows and by keys anywhere, and goes back by Enter`,
    async () => {
      const byItself = await shareOf(app);
      await divider.focus();
      await page.keyboard.press('ArrowLeft');
      await until('a narrower picture', async () => (await shareOf(app)) <= byItself - 2);
      await page.keyboard.press('<');
      await until('a still narrower picture', async () => (await shareOf(app)) <= byItself - 5);
      await page.keyboard.press('>');
      await page.keyboard.press('End');
      await until('the widest picture', async () => (await shareOf(app)) >= byItself);
      assert.deepEqual((await look(app)).tooWide, []);
      await page.keyboard.press('Enter');
      await until('the picture’s own width', async () => (await shareOf(app)) === byItself);
    },
  );
  await report.check(`${shape}: the divider is dragged, and stays there when the page is opened anew`, async () => {
    const byItself = await shareOf(app);
    const box = await divider.boundingBox();
    assert.ok(box !== null);
    await page.mouse.move(box.x + 2, 300);
    await page.mouse.down();
    await page.mouse.move(box.x - 100, 300, { steps: 4 });
    await page.mouse.up();
    const dragged = await until('a narrower picture', async () => {
      const now = await shareOf(app);
      return now < byItself - 4 ? now : null;
    });
    const [kept, other] = await page.evaluate(
      ([one, two]) => [
        localStorage.getItem(`rackside.picture.${one}`),
        localStorage.getItem(`rackside.picture.${two}`),
      ],
      [shape, shape === 'landscape' ? 'portrait' : 'landscape'] as const,
    );
    assert.ok(Math.abs(Number(kept) * 100 - dragged) <= 1, `kept ${kept}, shown ${dragged}`);
    assert.ok(other === null || other === '', 'the other shape keeps its own');
    await divider.dblclick();
    await until('the picture’s own width', async () => (await shareOf(app)) === byItself);
    await picture(app);
    await page.evaluate(() => (document.activeElement as HTMLElement | null)?.blur());
  });
}
