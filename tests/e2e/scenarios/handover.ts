import assert from 'node:assert/strict';
import { createHash } from 'node:crypto';
import { mkdir, readdir, readFile, rm } from 'node:fs/promises';
import path from 'node:path';
import { checkerSource, checkScreen } from '../harness/accessible.ts';
import { longestMs } from '../harness/jobs.ts';
import { previewed } from '../harness/previewed.ts';
import { openReview } from '../harness/reviewScreen.ts';
import type { Scenario } from '../harness/scenario.ts';
import { until } from '../harness/until.ts';

/** From a judged session to the folder that a trainee opens, and into another coach's Rackside that reads it. */
export const handover: Scenario = {
  name: 'handover',
  run: async (bench, report) => {
    const folder = await bench.demoFolder('handover');
    const out = path.join(folder, 'out');
    await mkdir(out);
    const app = await bench.launch(folder);
    const { page } = app;
    const source = await checkerSource();
    const { sessions } = await app.ask('desk.sessions', {});
    const sessionId = sessions[0]?.id ?? '';
    const handOver = page.getByRole('button', { name: /^Hand over \d+ sessions?…$/ });

    await report.check('a key leads from the review to the handover of its session', async () => {
      await openReview(app, sessionId);
      await page.keyboard.press('Shift+W');
      await page.getByRole('button', { name: 'Hand over 1 session…' }).waitFor();
      await bench.picture(app, '18-handover');
    });
    await checkScreen(app, report, source, 'handover');

    await report.check('nothing is handed over when the person changes their mind', async () => {
      await app.choose({ folder: null });
      await handOver.click();
      await until('the question to be answered', () => handOver.isEnabled());
      assert.deepEqual(await readdir(out), []);
      assert.equal((await app.ask('jobs.list', {})).filter(({ kind }) => kind === 'handover').length, 0);
    });

    await report.check('a word that may be the hidden name holds the handover until somebody has looked', async () => {
      await app.ask('sessions.update', { sessionId, notes: 'Robinchen slept well, says Thalen.' });
      const row = page.getByRole('row', { name: /^Hand over: Robin Thale, 18 Oct/ });
      await row.getByRole('combobox', { name: 'Name shown on what you send: Robin Thale' }).selectOption('initials');
      await page.getByRole('button', { name: 'Check 2 places first' }).click();
      await page.getByRole('heading', { name: /^Names to check/ }).waitFor();
      await bench.picture(app, '18-handover-names');
      await page.emulateMedia({ colorScheme: 'dark' });
      await page.setViewportSize({ width: 1280, height: 720 });
      await bench.picture(app, '18-handover-names-dark-1280');
      await page.emulateMedia({ colorScheme: 'light' });
      await page.setViewportSize({ width: 1440, height: 900 });
      assert.deepEqual(await readdir(out), []);
    });
    await checkScreen(app, report, source, 'names to check');

    await report.check('what was chosen goes into the folder, the trainee named by initials', async () => {
      await page.getByRole('button', { name: /^Hide all 2: Robin Thale/ }).click();
      await page.getByRole('combobox', { name: 'At each note' }).selectOption('slow');
      await page.getByRole('checkbox', { name: /^Each flagged rep/ }).uncheck();
      await app.choose({ folder: out });
      await handOver.click();
      await page.getByRole('progressbar', { name: /^Progress: Hand over/ }).waitFor();
      await bench.picture(app, '18-handover-under-way');
      const delivered = page.getByTestId('delivered');
      await delivered.getByText(out).waitFor({ timeout: longestMs });
      await bench.picture(app, '18-handover-delivered');
      const [name = ''] = await readdir(out);
      assert.match(name, /^\d{4}-\d\d-\d\d-r-t$/);
      const files = await readdir(path.join(out, name));
      for (const file of ['index.html', 'letter.pdf', 'sheet.html', 'clips', 'stills']) assert.ok(files.includes(file));
      const start = await readFile(path.join(out, name, 'index.html'), 'utf8');
      assert.match(start, /R\.T\./);
      assert.doesNotMatch(start, /Robin|Thale/);
    });

    await report.check('the version is kept, and saved again as it was', async () => {
      await page.getByRole('button', { name: /^Version 1, .*: handovers of Robin Thale/ }).click();
      const list = page.getByRole('list', { name: 'Handovers: Robin Thale' });
      await list.getByText('Version 1').waitFor();
      await bench.picture(app, '18-handover-kept');
      const target = path.join(folder, 'kept.zip');
      await app.choose({ save: target });
      await page.getByRole('button', { name: 'Save as it was: version 1' }).click();
      await page.getByText(`Saved to ${target}`).waitFor();
      const { versions } = await app.ask('handover.list', { sessionId });
      assert.equal(
        createHash('sha256')
          .update(await readFile(target))
          .digest('hex'),
        versions[0]?.sha256,
      );
    });
    await checkScreen(app, report, source, 'handover with its versions');

    await report.check('what is cancelled leaves nothing behind', async () => {
      const before = await readdir(out);
      await app.choose({ folder: out });
      await app.ask('sessions.update', { sessionId, notes: 'The bar was new.' });
      await handOver.click();
      await page.getByRole('button', { name: 'Cancel' }).click();
      await page.locator('[data-testid="job"][data-state="cancelled"]').waitFor({ timeout: longestMs });
      assert.deepEqual(await readdir(out), before);
      assert.equal((await app.ask('handover.list', { sessionId })).versions.length, 1);
    });

    await report.check('all that is due goes in one step, a change as version 2, each as one zip', async () => {
      await app.ask('library.addDemo', {});
      // The demo is a session and one before it.
      await until('four sessions', async () => (await app.ask('desk.sessions', {})).sessions.length === 4, longestMs);
      await page.getByRole('button', { name: 'Letter', exact: true }).click();
      await page.getByRole('button', { name: 'Review' }).click();
      await page.getByRole('button', { name: 'Desk' }).click();
      await page.getByRole('button', { name: 'Hand over', exact: true }).click();
      await page.getByRole('button', { name: 'Hand over 4 sessions…' }).waitFor();
      await page.getByRole('checkbox', { name: /^Each clip with notes/ }).uncheck();
      await page.getByRole('checkbox', { name: 'One zip instead of a folder' }).check();
      await handOver.click();
      const zips = await until(
        'four zips',
        async () => {
          const found = (await readdir(out)).filter((name) => name.endsWith('.zip') && !name.startsWith('.'));
          return found.length === 4 ? found : null;
        },
        longestMs,
      );
      assert.equal(zips.filter((name) => name.endsWith('-v2.zip')).length, 1);
      assert.deepEqual(
        (await app.ask('handover.list', { sessionId })).versions.map(({ version }) => version),
        [1, 2],
      );
    });

    await report.check(
      'another coach’s Rackside imports the zip, shows it, and lets nothing in it be changed',
      async () => {
        const [zip = ''] = (await readdir(out)).filter((name) => name.endsWith('-v2.zip'));
        await page.getByRole('button', { name: 'Desk' }).click();
        await app.choose({ open: [path.join(out, zip)] });
        await page.getByRole('button', { name: 'Zip or review file' }).click();
        const row = page.getByRole('row', { name: /Received, read only/ });
        await row.waitFor({ timeout: longestMs });
        await bench.picture(app, '18-desk-received');
        const received = (await app.ask('desk.sessions', {})).sessions.find(({ readOnly }) => readOnly);
        assert.ok(received !== undefined);
        await page.locator(`[data-session="${received.id}"] button.row-button`).click();
        await page.getByText('Received from another coach’s Rackside.').waitFor();
        await page.keyboard.press('Shift+P');
        await page
          .getByRole('menuitem', { name: /^Zoom in/ })
          .first()
          .waitFor();
        assert.equal(await page.getByRole('menuitem', { name: /^(Mark|Remove)/ }).count(), 0);
        assert.equal(await page.getByRole('menuitemcheckbox', { name: /^(Draw|Cover|Help)/ }).count(), 0);
        await page.keyboard.press('Escape');
        await bench.picture(app, '18-review-received');
        await page.setViewportSize({ width: 1280, height: 720 });
        await bench.picture(app, '18-review-received-1280');
        await page.setViewportSize({ width: 1440, height: 900 });
        await page.getByRole('button', { name: /^All flags/ }).click();
        const before = await app.ask('review.get', { sessionId: received.id });
        const flags = page.getByTestId('flag');
        assert.equal(await flags.count(), before.review.entries[0]?.flags.length);
        assert.equal(await flags.getByRole('textbox').count(), 0);
        const frame = await page.getByTestId('frame-number').textContent();
        await flags
          .last()
          .getByRole('button', { name: /^Go to/ })
          .click();
        await until('its moment', async () => (await page.getByTestId('frame-number').textContent()) !== frame);
        await page.keyboard.press('2');
        await page.keyboard.press('f');
        assert.deepEqual((await app.ask('review.get', { sessionId: received.id })).review, before.review);
        await page.getByRole('button', { name: 'Letter' }).click();
        await page.getByText('Received from another coach’s Rackside.').waitFor();
        assert.equal(await page.getByRole('button', { name: 'Edit letter' }).count(), 0);
        assert.equal(await page.getByRole('button', { name: 'Hand over' }).count(), 0);
        assert.match(await previewed(app, 'Preview: Letter'), /Letter to R\.T\./);
        await bench.picture(app, '18-letter-received');
      },
    );
    await checkScreen(app, report, source, 'a received letter');

    await report.check('a clip whose footage is gone is named, and the rest is delivered', async () => {
      const clips = path.join(folder, 'library', 'clips');
      const [first = ''] = await readdir(clips);
      await rm(path.join(clips, first));
      await page.getByRole('button', { name: 'Review' }).click();
      await page.getByRole('button', { name: 'Desk' }).click();
      await page.getByRole('button', { name: 'Hand over', exact: true }).click();
      await page
        .getByRole('checkbox', { name: /^Hand over: Robin Thale/ })
        .first()
        .check();
      await app.choose({ folder: out });
      const before = (await readdir(out)).length;
      await handOver.click();
      await page
        .getByTestId('delivered')
        .getByText(/is not in the library/)
        .waitFor({ timeout: longestMs });
      assert.equal((await readdir(out)).length, before + 1);
      await bench.picture(app, '18-handover-missing');
    });
    await app.close();
  },
};
