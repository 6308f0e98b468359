import assert from 'node:assert/strict';
import type { Scenario } from '../harness/scenario.ts';
import { until } from '../harness/until.ts';

/** A newcomer opens the app for the first time and takes the demo. */
export const firstStart: Scenario = {
  name: 'firstStart',
  run: async (bench, report) => {
    const folder = bench.newFolder('first-start');
    const app = await bench.launch(folder);
    const { page } = app;

    await report.check('the first start offers the demo or an empty library, as a coach or for oneself', async () => {
      await page.getByRole('heading', { name: 'Rackside' }).waitFor();
      for (const name of ['The demo session', 'An empty library', 'A coach', 'Myself']) {
        await page.getByRole('radio', { name }).waitFor();
      }
      assert.equal(await page.getByRole('alert').textContent(), '', 'nothing went wrong yet');
      await bench.picture(app, '1-first-start');
    });

    await report.check('the demo is made and its session stands on the desk with a grade', async () => {
      await page.getByRole('radio', { name: 'The demo session' }).check();
      await page.getByRole('textbox').fill('Coach of the desk');
      await page.getByRole('button', { name: 'Start' }).click();
      const row = page.getByRole('row', { name: /Robin Thale/ }).first();
      await row.waitFor({ timeout: 120_000 });
      const { sessions } = await until('the demo to be graded', async () => {
        const desk = await app.ask('desk.sessions', {});
        return desk.sessions.some(({ mark }) => mark !== '') ? desk : null;
      });
      assert.equal(sessions[0]?.clips, 3);
      const newest = page.locator(`[data-session="${sessions[0]?.id}"]`);
      await newest.getByText(sessions[0]?.mark ?? 'no mark', { exact: true }).waitFor();
      await bench.picture(app, '2-desk');
    });

    await report.check('a second start leaves the library to the first and ends', async () => {
      const { code, said } = await bench.launchAgain(folder);
      assert.equal(code, 0);
      assert.match(said, /Rackside is open already/);
      assert.equal((await app.ask('library.state', {})).kind, 'open');
      assert.equal(page.context().pages().length, 1);
    });

    await report.check('closing the window ends the app', async () => {
      assert.equal(await app.close(), 0);
    });

    await report.check('an empty library for oneself says so, and is still there at the next start', async () => {
      const own = bench.newFolder('first-start-self');
      const first = await bench.launch(own);
      await first.page.getByRole('radio', { name: 'An empty library' }).check();
      await first.page.getByRole('radio', { name: 'Myself' }).check();
      await first.page.getByRole('textbox', { name: 'My name' }).fill('Noor');
      await first.page.getByRole('button', { name: 'Start' }).click();
      await first.page.getByText('Self-review').waitFor();
      await first.close();
      const second = await bench.launch(own);
      await second.page.getByText('Self-review').waitFor();
      await second.page.getByText('Nothing to review yet').waitFor();
      await second.close();
    });
  },
};
