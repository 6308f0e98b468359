import assert from 'node:assert/strict';
import { mkdir } from 'node:fs/promises';
import path from 'node:path';
import { checkerSource, checkScreen } from '../harness/accessible.ts';
import type { App } from '../harness/app.ts';
import { finishedJob, longestMs } from '../harness/jobs.ts';
import { picture } from '../harness/reviewScreen.ts';
import type { Scenario } from '../harness/scenario.ts';
import { putShortFilms } from '../harness/shortFilms.ts';
import { until } from '../harness/until.ts';

const days = ['2026-11-27', '2026-11-29'] as const;
const usual = { goal: 'growth', experience: 'new', units: 'kg', minor: false } as const;

/** Two sessions of one person, with a short clip each; the older came first. */
async function twoSessions(app: App, films: string): Promise<readonly string[]> {
  const { traineeId } = await app.ask('trainees.add', { name: 'Mira Holt', ...usual });
  const ids: string[] = [];
  for (const [at, date] of days.entries()) {
    const { sessionId } = await app.ask('sessions.add', { traineeId, date });
    const paths = [path.join(films, 'Mira Holt', `set-${at}.mp4`)];
    const { jobIds } = await app.ask('clips.import', { sessionId, exercise: 'back-squat', view: 'side', paths });
    for (const jobId of jobIds) await finishedJob(app, jobId);
    ids.push(sessionId);
  }
  return ids;
}

const stateOnDesk = async (app: App, sessionId: string): Promise<string | null> =>
  app.page.locator(`[data-session="${sessionId}"] .session-state`).getAttribute('data-state');

/** The titles of the jobs on the desk, from the first. */
const jobsOnDesk = (app: App): Promise<string[]> => app.page.locator('[data-testid="job"] strong').allTextContents();

const toDesk = async (app: App): Promise<void> => {
  await app.page.reload();
  await app.page.getByRole('heading', { name: 'Desk', exact: true }).waitFor();
};

/** Goes from the desk through one session by the one key, to the next one; asks for documents alone, to be quick. */
async function walk(app: App, [first = '', second = '']: readonly string[]): Promise<void> {
  const { page } = app;
  const goOn = () => page.keyboard.press('Shift+N');
  await goOn();
  await picture(app);
  await page.keyboard.press('Shift+F');
  await until('the session to be judged', async () => {
    return (await app.ask('desk.session', { sessionId: first })).state === 'judged';
  });
  await goOn();
  await page.locator('main.letter').waitFor();
  await goOn();
  await page.getByRole('button', { name: 'Hand over 1 session…' }).waitFor();
  await page.getByRole('checkbox', { name: /^Each clip with notes/ }).uncheck();
  await goOn();
  await until(
    'the session to be handed over',
    async () => (await app.ask('desk.session', { sessionId: first })).state === 'sent',
    longestMs,
  );
  await goOn();
  await picture(app);
  assert.equal(await page.locator('main.review').count(), 1);
  assert.equal((await app.ask('desk.session', { sessionId: second })).state, 'new');
}

/** A night's work by one key, and the measuring that goes on meanwhile, in the order a person gave. */
export const night: Scenario = {
  name: 'night',
  run: async (bench, report) => {
    const checker = await checkerSource();
    const folder = bench.newFolder('night');
    const films = path.join(folder, 'films');
    await mkdir(folder, { recursive: true });
    await putShortFilms(
      films,
      days.map((day, at) => ({ folder: 'Mira Holt', name: `set-${at}.mp4`, at: `${day}T18:00:00` })),
    );
    const app = await bench.launch(folder, 'byItself');
    await app.ask('library.create', { contents: 'empty', voice: 'coach' });
    await app.ask('settings.change', { measuringPaused: true });
    const sessions = await twoSessions(app, films);
    const [first = '', second = ''] = sessions;
    await app.choose({ folder: path.join(folder, 'out') });
    await mkdir(path.join(folder, 'out'));
    await toDesk(app);

    await report.check('clips wait to be measured by themselves, the newest session first', async () => {
      await until('both clips in line', async () => (await jobsOnDesk(app)).length === 2);
      assert.deepEqual(await jobsOnDesk(app), ['Measure: set-1.mp4', 'Measure: set-0.mp4']);
      assert.equal(await stateOnDesk(app, first), 'new');
      assert.equal(await stateOnDesk(app, second), 'new');
    });
    await checkScreen(app, report, checker, 'the desk with its line of clips');
    await bench.picture(app, '22-night-desk');

    await report.check('they are measured in the order a person gave, once it goes on', async () => {
      await app.page.evaluate(() => {
        const started: string[] = [];
        Object.assign(window, { started });
        window.rackside.onEvent((event) => {
          if (event.name !== 'jobChanged' || event.data.job.state !== 'running') return;
          const { title } = event.data.job;
          const name = String(title.values.clip);
          if (!started.includes(name)) started.push(name);
        });
      });
      await app.page.getByRole('button', { name: 'Move to the front: Measure: set-0.mp4' }).click();
      await until('the new order', async () => (await jobsOnDesk(app))[0] === 'Measure: set-0.mp4');
      await app.page.getByRole('button', { name: 'Resume measuring' }).click();
      await until(
        'both clips measured',
        async () => {
          const measured = await Promise.all(
            sessions.map(async (sessionId) => (await app.ask('desk.session', { sessionId })).measured),
          );
          return measured.every((count) => count === 1);
        },
        longestMs,
      );
      assert.deepEqual(await app.page.evaluate(() => Reflect.get(window, 'started')), ['set-0.mp4', 'set-1.mp4']);
    });

    await report.check('one key walks a session from the desk to the trainee, and on to the next', async () => {
      await walk(app, sessions);
      await toDesk(app);
      assert.equal(await stateOnDesk(app, first), 'sent');
      assert.equal(await stateOnDesk(app, second), 'new');
      await app.ask('sessions.update', { sessionId: first, notes: 'The bar felt light.' });
      await until('the change on the desk', async () => (await stateOnDesk(app, first)) === 'changedSince');
    });
    await app.close();

    const alone = bench.newFolder('night-alone');
    const mine = await bench.launch(alone);
    await mine.ask('library.create', { contents: 'empty', voice: 'self', coach: 'Mira Holt' });
    const own = await twoSessions(mine, films);
    await mkdir(path.join(alone, 'out'));
    await mine.choose({ folder: path.join(alone, 'out') });
    await toDesk(mine);
    await report.check('the same alone: one’s own sessions, kept instead of sent', async () => {
      await walk(mine, own);
      await toDesk(mine);
      const kept = mine.page.locator(`[data-session="${own[0]}"] .session-state`);
      assert.equal(await kept.textContent(), 'Kept');
    });
    await checkScreen(mine, report, checker, 'the desk of one’s own sessions');
    await mine.close();
  },
};
