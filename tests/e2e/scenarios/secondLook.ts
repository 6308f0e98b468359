import assert from 'node:assert/strict';
import { checkerSource, checkScreen } from '../harness/accessible.ts';
import type { App } from '../harness/app.ts';
import { finishedJob } from '../harness/jobs.ts';
import { footage } from '../harness/oneClip.ts';
import { clickCell, openReview } from '../harness/reviewScreen.ts';
import type { Scenario } from '../harness/scenario.ts';
import { until } from '../harness/until.ts';

/** A session of the same trainee a week before: short of depth on every rep, and the chin up. */
async function addWeekBefore(app: App, traineeId: string): Promise<void> {
  const { sessionId } = await app.ask('sessions.add', { traineeId, date: '2026-10-11' });
  const { jobIds } = await app.ask('clips.import', {
    ...{ sessionId, exercise: 'back-squat', view: 'side', paths: [footage.squat] },
  });
  for (const jobId of jobIds) await finishedJob(app, jobId);
  const { review } = await app.ask('review.get', { sessionId });
  const clipId = review.entries[0]?.clips[0]?.id ?? '';
  for (const frame of [24, 110, 230]) await app.ask('reps.mark', { clipId, edge: 'start', frame });
  const everyRep = { clipId, severity: 'correct' as const, reps: [1, 2, 3], frame: 60 };
  await app.ask('flags.add', { ...everyRep, criterion: 'depth', fault: 'shortOfDepth' });
  await app.ask('flags.add', { ...everyRep, criterion: 'headPosition', fault: 'headTiltsBack' });
}

/** One coach against themselves: the same clips judged blind, the figures, the moments that differ; and a trainee's history. */
export const secondLook: Scenario = {
  name: 'secondLook',
  run: async (bench, report) => {
    const source = await checkerSource();
    const app = await bench.launch(await bench.demoFolder('second-look'));
    const { page } = app;
    const { sessions } = await app.ask('desk.sessions', {});
    const trainees = await app.ask('desk.trainees', {});
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

    await report.check('the first letter asks not to be read meanwhile, and leads back', async () => {
      await page.getByRole('button', { name: 'Desk' }).click();
      await openReview(app, sessionId);
      await page.getByRole('button', { name: 'Letter' }).click();
      const notice = page.getByRole('region', { name: 'Second look in progress' });
      await notice.waitFor();
      await checkScreen(app, report, source, 'letter with a second look under way');
      await bench.picture(app, '12-letter-meanwhile');
      await notice.getByRole('button', { name: 'Continue the second look' }).press('Enter');
      await page.getByText(/cells left to look at/).waitFor();
      assert.equal(await page.getByTestId('flag').count(), 0);
    });

    await report.check('two cells judged blind are compared with the first judgement', async () => {
      await clickCell(app, 'depth', 1);
      await page.keyboard.press('3');
      await page.getByRole('combobox', { name: 'Filter the faults' }).press('Escape');
      await clickCell(app, 'depth', 2);
      await page.keyboard.press('1');
      await page.getByRole('combobox', { name: 'Filter the faults' }).press('Escape');
      await page.getByRole('button', { name: 'Desk' }).click();
      const looks = page.getByRole('region', { name: 'Second looks' });
      await looks.getByRole('button', { name: 'Compare' }).waitFor();
      assert.equal(await page.getByRole('button', { name: /^History:/ }).count(), 2, 'it is no session of its own');
      await checkScreen(app, report, source, 'desk with a second look');
      await looks.getByRole('button', { name: 'Compare' }).press('Enter');
      const words = await page.getByTestId('agreement-words').textContent();
      // Depth alone was looked at in both, on two reps: the same on rep 1, another on rep 2; nobody looked at rep 3.
      assert.match(words ?? '', /50% of the 2 moments that both looked at got the same severity/);
      // Reps 1 and 2: correct, keep against correct, prefer.
      const cells = await page.locator('tr[data-severity="keep"] td').allTextContents();
      assert.deepEqual(cells.slice(0, 3), ['1', '0', '0']);
      await page.getByText('What the figures mean').click();
      await checkScreen(app, report, source, 'agreement');
      await bench.picture(app, '12-agreement');
    });

    await report.check(
      'a colleague’s review file is laid beside the session without coming into the library',
      async () => {
        const { review } = await app.ask('review.get', { sessionId });
        const entries = review.entries.map((entry) => ({
          ...entry,
          flags: entry.flags.filter(({ criterion }) => criterion !== 'depth'),
          ticks: [...entry.ticks, ...entry.clips.map(({ id }) => ({ clip: id, criterion: 'depth', reps: 'set' }))],
        }));
        const file = { name: 'colleague.json', mimeType: 'application/json' };
        const choose = page.getByLabel('Review file', { exact: true });
        await choose.setInputFiles({ ...file, buffer: Buffer.from('{') });
        await page.getByText('“colleague.json” is not valid JSON').waitFor();
        await choose.setInputFiles({ ...file, buffer: Buffer.from(JSON.stringify({ ...review, entries })) });
        const differing = page.locator('.differences tbody tr');
        await differing.first().waitFor();
        // All that differs is depth: flagged here, fine there.
        const severities = await differing.locator('td:last-child').allTextContents();
        assert.ok(severities.length > 0 && severities.every((words) => words.includes('keep')), severities.join());
        await bench.picture(app, '12-agreement-file');
        const { sessions: looks } = await app.ask('desk.sessions', { list: 'secondLooks' });
        await page.getByLabel('Second judgement').selectOption(looks[0]?.id ?? '');
        await page.getByRole('button', { name: /^Depth, rep 2/ }).waitFor();
      },
    );

    await report.check('a moment that differs opens where it is in the first judgement, by Enter', async () => {
      await page.getByRole('button', { name: /^Depth, rep 2/ }).press('Enter');
      await until('the cell', async () => {
        const cell = page.locator('[data-cursor="true"]');
        return (await cell.getAttribute('data-criterion')) === 'depth' && (await cell.getAttribute('data-rep')) === '2';
      });
      await page.getByRole('button', { name: 'Desk' }).click();
    });

    await report.check(
      'a trainee’s history has trends, each also as a table, and what became of each fault',
      async () => {
        await addWeekBefore(app, trainees[0]?.id ?? '');
        await page.getByRole('button', { name: 'History: Robin Thale' }).first().press('Enter');
        await page.getByRole('heading', { name: 'Trends' }).waitFor();
        await page.getByRole('img', { name: /^Depth: from / }).waitFor();
        const newest = page.locator('.trainee-sessions > li').first();
        await newest.getByText('18 Oct 2026').waitFor();
        const changed = await newest.locator('.fault-changes > li').allTextContents();
        // Depth was short on three reps of three, then on one of the two looked at; the head on three, then looked at and fine; no
        // drift before.
        assert.match(changed.find((line) => line.includes('Short of depth')) ?? '', /^better .*1 of 2 reps/);
        assert.ok(changed.some((line) => line.startsWith('gone')));
        assert.ok(changed.some((line) => line.startsWith('new')));
        await page.getByLabel('Depth as a table').click();
        await checkScreen(app, report, source, 'trainee');
        await bench.picture(app, '12-trainee');
        await page.getByRole('button', { name: 'Edit trainee', exact: true }).click();
        await page.getByRole('combobox', { name: 'Equipment' }).selectOption('barAndBench');
        await checkScreen(app, report, source, 'dialog: trainee');
        await page.getByRole('button', { name: 'Save', exact: true }).click();
        await page.getByText('equipment: barbell, rack and bench').waitFor();
        await newest.locator('.row-button').press('Enter');
        await page.getByTestId('frame-number').waitFor();
      },
    );
    await app.close();
  },
};
