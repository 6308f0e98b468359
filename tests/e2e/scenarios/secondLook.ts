import assert from 'node:assert/strict';
import { clickCell, openReview } from '../harness/reviewScreen.ts';
import type { Scenario } from '../harness/scenario.ts';
import { until } from '../harness/until.ts';

/** One coach against themselves: the same clips judged blind, the figures, the moments that differ; and a trainee's history. */
export const secondLook: Scenario = {
  name: 'secondLook',
  run: async (bench, report) => {
    const app = await bench.launch(await bench.demoFolder('second-look'));
    const { page } = app;
    const { sessions } = await app.ask('desk.get', {});
    const sessionId = sessions[0]?.id ?? '';
    await openReview(app, sessionId);

    await report.check('a second look shows the same clips, and nothing of the first judgement', async () => {
      await page.getByRole('button', { name: 'Letter' }).click();
      await page.getByRole('button', { name: 'Second look' }).click();
      await page.getByRole('heading', { name: 'Robin Thale' }).waitFor();
      await page.getByText(/cells left to look at/).waitFor();
      assert.equal(await page.getByTestId('flag').count(), 0);
      assert.equal(await page.getByRole('button', { name: 'Letter' }).count(), 0);
      await bench.picture(app, '12-second-look');
    });

    await report.check('two cells judged blind are compared with the first judgement', async () => {
      await clickCell(app, 'depth', 1);
      await page.keyboard.press('3');
      await page.getByRole('combobox', { name: 'Type to filter the faults' }).press('Escape');
      await clickCell(app, 'depth', 2);
      await page.keyboard.press('1');
      await page.getByRole('combobox', { name: 'Type to filter the faults' }).press('Escape');
      await page.getByRole('button', { name: 'Desk' }).click();
      await page.getByRole('region', { name: 'Second looks' }).getByRole('button', { name: 'Compare' }).click();
      const words = await page.getByTestId('agreement-words').textContent();
      // Depth alone was looked at in both, on three reps: the same on rep 1, another on rep 2, nothing said of rep 3.
      assert.match(words ?? '', /Of 3 moments that both looked at, 67% were judged the same/);
      await bench.picture(app, '12-agreement');
    });

    await report.check('a moment that differs opens where it is in the first judgement', async () => {
      await page.getByRole('button', { name: /^Depth .*rep 2$/ }).click();
      await until('the cell', async () => {
        const cell = page.locator('[data-cursor="true"]');
        return (await cell.getAttribute('data-criterion')) === 'depth' && (await cell.getAttribute('data-rep')) === '2';
      });
      await page.getByRole('button', { name: 'Desk' }).click();
    });

    await report.check('a trainee’s history has trends, each also as a table, and opens its sessions', async () => {
      await page.getByRole('button', { name: 'History of Robin Thale' }).click();
      await page.getByRole('heading', { name: 'Trends' }).waitFor();
      await page.getByRole('img', { name: /^Depth: / }).waitFor();
      assert.equal(await page.locator('.trainee-sessions > li').count(), 1);
      await bench.picture(app, '12-trainee');
      await page.locator('.trainee-sessions .row-button').click();
      await page.getByTestId('frame-number').waitFor();
    });
    await app.close();
  },
};
