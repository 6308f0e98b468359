import assert from 'node:assert/strict';
import { checkerSource, checkScreen } from '../harness/accessible.ts';
import type { App } from '../harness/app.ts';
import { finishedJob } from '../harness/jobs.ts';
import { footage } from '../harness/oneClip.ts';
import { openReview } from '../harness/reviewScreen.ts';
import type { Scenario } from '../harness/scenario.ts';
import { until } from '../harness/until.ts';

type Made = { readonly sessionId: string; readonly otherId: string; readonly clipIds: readonly string[] };

/** Two sessions of one trainee and day, the first with a squat and a press, all of it named squat; and a second trainee. */
async function twoSessions(app: App): Promise<Made> {
  await app.ask('library.create', { contents: 'empty', voice: 'coach' });
  const facts = { goal: 'growth', experience: 'new', units: 'kg', minor: false } as const;
  const { traineeId } = await app.ask('trainees.add', { name: 'Trainee One', ...facts });
  await app.ask('trainees.add', { name: 'Trainee Two', ...facts });
  const { sessionId } = await app.ask('sessions.add', { traineeId, title: 'Legs', date: '2026-03-02' });
  const paths = [footage.squat, footage.portrait];
  const { jobIds } = await app.ask('clips.import', { sessionId, exercise: 'back-squat', view: 'side', paths });
  for (const jobId of jobIds) await finishedJob(app, jobId);
  const { sessionId: otherId } = await app.ask('sessions.add', { traineeId, title: 'Evening', date: '2026-03-02' });
  const { review } = await app.ask('review.get', { sessionId });
  return { sessionId, otherId, clipIds: review.entries.flatMap(({ clips }) => clips.map(({ id }) => id)) };
}

/** Everything in a session can be renamed, moved, reordered and removed, and what was removed comes back. */
export const arranging: Scenario = {
  name: 'arranging',
  run: async (bench, report) => {
    const source = await checkerSource();
    const folder = await bench.newFolder('arranging');
    let app = await bench.launch(folder);
    const { sessionId, otherId } = await twoSessions(app);
    const shown = async (id: string) =>
      (await app.ask('review.get', { sessionId: id })).review.entries.map(({ exercise, clips }) => [
        exercise,
        ...clips.map(({ name }) => name),
      ]);
    const restart = async () => {
      await app.close();
      app = await bench.launch(folder);
      await app.page.getByRole('heading', { name: 'Desk' }).waitFor();
    };
    const menuOf = async (name: string | RegExp, line: string) => {
      await app.page.getByRole('button', { name }).click();
      await app.page.getByRole('menuitem', { name: line }).click();
    };
    const squat = 'squat-side.mp4';
    const press = 'press-portrait.mov';
    const before = await shown(sessionId);
    await openReview(app, sessionId);

    await report.check('a clip is renamed, by key', async () => {
      await app.page.keyboard.press('F2');
      await app.page.getByRole('textbox', { name: 'Name of the clip' }).fill('First set');
      await app.page.keyboard.press('Enter');
      await until('the new name', async () => (await shown(sessionId))[0]?.[1] === 'First set');
      await app.page.keyboard.press('Control+z');
      await until('the old name', async () => (await shown(sessionId))[0]?.[1] === squat);
    });

    await report.check('one clip changes its exercise, and undo brings it back', async () => {
      await menuOf(`More: ${squat}`, 'Change this clip’s exercise…');
      await checkScreen(app, report, source, 'exercise of one clip');
      await app.page.getByRole('combobox', { name: 'Exercise' }).last().fill('leg press');
      await app.page.keyboard.press('Enter');
      await app.page.getByRole('button', { name: 'Change', exact: true }).click();
      const after = [
        ['back-squat', press],
        ['leg-press', squat],
      ];
      await until('the clip under its exercise', async () => same(await shown(sessionId), after));
      await app.page.keyboard.press('Control+z');
      await until('all as it was', async () => same(await shown(sessionId), before));
    });

    await report.check('clips change places by key and by drag', async () => {
      await app.page.keyboard.press('Control+Shift+ArrowRight');
      await until('the other order', async () => same(await shown(sessionId), [['back-squat', press, squat]]));
      const chips = app.page.getByRole('navigation', { name: 'Clips' }).locator('.chip');
      await chips.nth(1).dragTo(chips.nth(0));
      await until('the first order', async () => same(await shown(sessionId), before));
    });

    await report.check('a flag that means nothing for another exercise is parked, shown, and comes back', async () => {
      const { review } = await app.ask('review.get', { sessionId });
      const [entry] = review.entries;
      const clipId = entry?.clips[0]?.id ?? '';
      await app.ask('flags.add', { clipId, criterion: 'barPath', severity: 'adjust', reps: 'set', frame: 60 });
      await app.ask('entries.update', { entryId: entry?.id ?? '', exercise: 'leg-press' });
      await app.page.getByRole('button', { name: 'Parked: 1 flag or tick' }).click();
      await app.page.getByRole('dialog', { name: 'Parked flags and ticks' }).waitFor();
      await checkScreen(app, report, source, 'parked flags');
      await bench.picture(app, 'arranging-parked');
      await app.page.keyboard.press('Escape');
      await app.page.keyboard.press('Control+z');
      await app.page.getByRole('button', { name: /^Parked/ }).waitFor({ state: 'detached' });
      assert.equal((await app.ask('review.get', { sessionId })).review.entries[0]?.flags.length, 1);
    });

    await report.check(
      'a removed clip comes back by the status line’s undo, and by the bin after a restart',
      async () => {
        await app.page.keyboard.press('F8');
        await until('one clip less', async () => (await shown(sessionId))[0]?.length === 2);
        await app.page.getByTestId('done-state').getByRole('button', { name: 'Undo' }).click();
        await until('all as it was', async () => same(await shown(sessionId), before));
        await app.page.keyboard.press('F8');
        await until('one clip less', async () => (await shown(sessionId))[0]?.length === 2);
        await restart();
        await app.page.getByRole('button', { name: 'Bin' }).click();
        await checkScreen(app, report, source, 'bin');
        await bench.picture(app, 'arranging-bin');
        await app.page.getByRole('button', { name: `Bring back: Clip: ${squat}` }).click();
        await app.page.getByText('The bin is empty.').waitFor();
        assert.deepEqual(await shown(sessionId), before);
        await app.page.getByRole('button', { name: 'Desk' }).click();
      },
    );

    await report.check('a removed exercise comes back by undo, also after a restart', async () => {
      await openReview(app, sessionId);
      await menuOf('More: Back squat', 'Remove exercise');
      await until('nothing left', async () => (await shown(sessionId)).length === 0);
      await restart();
      await menuOf(/^More: Trainee One, Legs/, 'Open review');
      await app.page.getByText('This session has no clips yet. Import some to begin.').waitFor();
      await app.page.keyboard.press('Control+z');
      await until('all as it was', async () => same(await shown(sessionId), before));
    });

    await report.check('a removed session comes back by the desk’s undo key after a restart', async () => {
      await app.page.getByRole('button', { name: 'Desk' }).click();
      await menuOf(/^More: Trainee One, Legs/, 'Remove');
      const row = () => app.page.locator(`tr[data-session="${sessionId}"]`);
      await row().waitFor({ state: 'detached' });
      await restart();
      assert.equal(await row().count(), 0);
      await app.page.keyboard.press('Control+z');
      await row().waitFor();
      assert.deepEqual(await shown(sessionId), before);
    });

    await report.check('two sessions of a day become one, and one goes to another trainee', async () => {
      await menuOf(/^More: Trainee One, Legs/, 'Merge…');
      await checkScreen(app, report, source, 'merging sessions');
      await app.page.getByRole('button', { name: 'Merge', exact: true }).click();
      await until('all in the other session', async () => same(await shown(otherId), before));
      await menuOf(/^More: Trainee One, Evening/, 'Move to…');
      await app.page.getByRole('button', { name: 'Move', exact: true }).click();
      await app.page.getByRole('button', { name: /^More: Trainee Two, Evening/ }).waitFor();
      await app.page.keyboard.press('Control+z');
      await app.page.getByRole('button', { name: /^More: Trainee One, Evening/ }).waitFor();
      await app.page.keyboard.press('Control+z');
      await until('both as they were', async () => same(await shown(sessionId), before));
    });

    await report.check('a trainee is renamed and archived: off the desk, and brought back', async () => {
      await app.page.getByRole('button', { name: 'Trainees' }).click();
      await app.page.getByRole('button', { name: 'Edit: Trainee One' }).click();
      await app.page.getByRole('textbox', { name: 'Name', exact: true }).fill('Mira Holt');
      await app.page.getByRole('textbox', { name: /Your notes/ }).fill('Prefers mornings.');
      await app.page.getByRole('button', { name: 'Save' }).click();
      await app.page.getByRole('button', { name: 'Archive: Mira Holt' }).click();
      await app.page.getByRole('button', { name: 'Bring back: Mira Holt' }).waitFor();
      await checkScreen(app, report, source, 'trainees');
      await bench.picture(app, 'arranging-trainees');
      await app.page.getByRole('button', { name: 'Desk' }).click();
      await until('an empty desk', async () => (await app.page.locator('tr[data-session]').count()) === 0);
      await app.page.getByRole('button', { name: 'Trainees' }).click();
      await app.page.getByRole('button', { name: 'Bring back: Mira Holt' }).click();
      await app.page.getByRole('button', { name: 'Archive: Mira Holt' }).waitFor();
      await app.page.getByRole('button', { name: 'Desk' }).click();
      await app.page.getByRole('button', { name: /^More: Mira Holt, Legs/ }).waitFor();
      await bench.picture(app, 'arranging-desk');
    });
    await app.close();
  },
};

const same = (one: unknown, other: unknown): boolean => JSON.stringify(one) === JSON.stringify(other);
