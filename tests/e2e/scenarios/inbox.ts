import assert from 'node:assert/strict';
import { mkdir } from 'node:fs/promises';
import path from 'node:path';
import { checkerSource, checkScreen } from '../harness/accessible.ts';
import type { App } from '../harness/app.ts';
import type { Scenario } from '../harness/scenario.ts';
import { putShortFilms } from '../harness/shortFilms.ts';
import { until } from '../harness/until.ts';

const mostKeys = 30;
const mostClicks = 15;

/** Three people's evening, four clips each, named as phones name them. */
const people = ['Mira Holt', 'Jo Berg', 'Ada Lund'] as const;
const evening = people.flatMap((folder, person) =>
  [1, 2, 3, 4].map((clip) => ({
    folder,
    name: `IMG_${person}${clip}.mp4`,
    at: `2026-11-2${6 + person}T18:0${clip}:00`,
  })),
);

const usual = { goal: 'growth', experience: 'new', units: 'kg', minor: false } as const;

/** A night's clips into their sessions: from a folder, guessed, corrected, brought in; by keys, by mouse, and alone. */
export const inbox: Scenario = {
  name: 'inbox',
  run: async (bench, report) => {
    const checker = await checkerSource();
    const folder = bench.newFolder('inbox');
    const films = path.join(folder, 'films');
    await mkdir(folder, { recursive: true });
    await putShortFilms(films, evening);
    let app = await bench.launch(folder);
    await app.ask('library.create', { contents: 'empty', voice: 'coach' });
    for (const name of people) await app.ask('trainees.add', { name, ...usual });
    await app.choose({ folder: films });
    await app.page.reload();

    await report.check('a folder of twelve clips lies in the inbox, each with its trainee and day', async () => {
      await app.page.getByRole('button', { name: 'Add a folder' }).click();
      await allRead(app, 12);
      const files = (await app.ask('inbox.get', {})).files;
      const trainees = await app.ask('desk.trainees', {});
      const owners = files.map(({ placement: { trainee } }) =>
        trainee?.value.kind === 'known'
          ? trainees.find(({ id }) => trainee.value.kind === 'known' && id === trainee.value.traineeId)?.name
          : null,
      );
      assert.deepEqual(
        owners,
        evening.map((film) => film.folder),
      );
      await bench.picture(app, '20-inbox');
      await dark(app, bench, '20-inbox-dark');
    });
    await checkScreen(app, report, checker, 'the inbox');

    await report.check(`five exercises and three people: at most ${mostKeys} keys in all`, async () => {
      await app.ask('settings.change', { measureByItself: true });
      const keys = counted(app);
      await keys('s', 'q', 'u', 'Enter', 'ArrowDown', 'ArrowDown', 'b', 'e', 'Enter');
      await keys('ArrowDown', 'ArrowDown', 'd', 'e', 'Enter', 'ArrowDown', 'ArrowDown', 'o', 'h', 'Enter');
      await keys('ArrowDown', 'ArrowDown', 'r', 'd', 'Enter');
      await bench.picture(app, '20-inbox-guessed');
      await keys('Control+Enter');
      await app.page.getByText('12 clips added to 3 sessions.').waitFor();
      // One click more opened the folder.
      assert.ok(keys.count() <= mostKeys, `${keys.count()} keys`);
      process.stdout.write(`        1 click and ${keys.count()} keys\n`);
      const { sessions } = await app.ask('desk.sessions', {});
      assert.deepEqual(
        sessions.map(({ traineeName, date, exercises, clips }) => [traineeName, date, exercises, clips]),
        [
          ['Ada Lund', '2026-11-28', ['romanian-deadlift'], 4],
          ['Jo Berg', '2026-11-27', ['deadlift', 'overhead-press'], 4],
          ['Mira Holt', '2026-11-26', ['back-squat', 'bench-press'], 4],
        ],
      );
      await until('all twelve to be measured or in line for it', async () => {
        const measured = (await app.ask('jobs.list', {})).filter(({ kind }) => kind === 'measure');
        return new Set(measured.map(({ clipId }) => clipId)).size === 12;
      });
      await app.ask('settings.change', { measureByItself: false });
      await app.page.locator('[data-session]').first().waitFor();
    });

    await report.check('what undo takes back lies in the inbox again, also after a restart', async () => {
      const { sessions } = await app.ask('desk.sessions', {});
      const sessionId = sessions.find(({ traineeName }) => traineeName === 'Jo Berg')?.id ?? '';
      await app.ask('history.undo', { sessionId });
      await app.close();
      app = await bench.launch(folder);
      await app.page.getByRole('button', { name: 'Inbox (4)' }).click();
      await allRead(app, 4);
      assert.deepEqual(
        (await app.ask('inbox.get', {})).files.map(({ twins }) => twins.length),
        [0, 0, 0, 0],
      );
    });

    await report.check('rows are selected with keys and mouse, and one choice counts for all of them', async () => {
      const { page } = app;
      const row = (name: string) => page.locator(`tr[data-file="${name}"]`);
      await row('IMG_11.mp4').locator('th').click();
      await row('IMG_13.mp4')
        .locator('th')
        .click({ modifiers: ['Shift'] });
      await page.getByText('3 selected').waitFor();
      await row('IMG_12.mp4').locator('[data-column="load"]').click();
      await page.getByRole('textbox', { name: 'Load (kg) for 3 clips' }).fill('72,5');
      await page.keyboard.press('Enter');
      await row('IMG_13.mp4').getByText('72.5').waitFor();
      await page.keyboard.press('Control+a');
      await page.keyboard.press('ArrowLeft');
      await page.keyboard.type('side');
      await page.keyboard.press('Enter');
      await row('IMG_14.mp4').getByText('Side').waitFor();
      const files = (await app.ask('inbox.get', {})).files;
      assert.deepEqual(
        files.map(({ placement }) => placement.loadKg?.value ?? null),
        [72.5, 72.5, 72.5, null],
      );
      assert.deepEqual(new Set(files.map(({ placement }) => placement.view?.value)), new Set(['side']));
      await bench.picture(app, '20-inbox-selected');
    });

    await report.check('a duplicate is told with its session, and what is removed can be put back', async () => {
      const { page } = app;
      await app.choose({ open: [path.join(films, 'Mira Holt', 'IMG_01.mp4')] });
      await page.getByRole('button', { name: /^Add files/ }).click();
      await allRead(app, 5);
      await page.getByRole('button', { name: 'In the library: Mira Holt, 26 Nov 2026' }).waitFor();
      await bench.picture(app, '20-inbox-duplicate');
      await page.getByRole('button', { name: 'Remove 1 duplicate' }).click();
      await page.getByText('1 clip removed from the inbox.').waitFor();
      await page.getByRole('button', { name: 'Put back' }).click();
      await page.locator('tr[data-file="IMG_01.mp4"]').waitFor();
    });

    await report.check('a watched folder brings in what is put there, once it is whole', async () => {
      const watched = path.join(folder, 'watched');
      await mkdir(watched);
      await app.choose({ folder: watched });
      await app.page.getByRole('button', { name: 'Choose a folder' }).click();
      await app.page.getByText(watched, { exact: true }).waitFor();
      await putShortFilms(
        watched,
        Array.from({ length: 13 }, (_, index) => ({
          folder: index < 12 ? '../elsewhere' : '.',
          name: `NEW_${index}.mp4`,
          at: '2026-11-29T10:00:00',
        })),
      );
      await app.page.locator('tr[data-file="NEW_12.mp4"]').waitFor();
    });
    await app.close();

    await alone(bench, report, checker);
  },
};

/** The same for somebody who films nobody but themselves. */
async function alone(...[bench, report, checker]: [...Parameters<Scenario['run']>, string]): Promise<void> {
  const folder = bench.newFolder('inbox-alone');
  const films = path.join(folder, 'films');
  await mkdir(folder, { recursive: true });
  await putShortFilms(
    films,
    evening.map(({ name, at }) => ({ folder: 'Camera', name, at })),
  );
  const app = await bench.launch(folder);
  await app.ask('library.create', { contents: 'empty', voice: 'self', coach: 'Robin Thale' });
  await app.ask('trainees.add', { name: 'Robin Thale', ...usual });
  await app.choose({ folder: films });
  await app.page.reload();

  await report.check(`alone: no trainee is named, and at most ${mostClicks} clicks bring twelve clips in`, async () => {
    const { page } = app;
    let clicks = 0;
    const click = async (target: ReturnType<App['page']['locator']>): Promise<void> => {
      clicks += 1;
      await target.click();
    };
    await click(page.getByRole('button', { name: 'Add a folder' }));
    await allRead(app, 12);
    assert.equal(await page.getByRole('columnheader', { name: 'Trainee' }).count(), 0);
    const starts = [
      ['IMG_01.mp4', 'squat', 'Back squat'],
      ['IMG_03.mp4', 'bench', 'Bench press'],
      ['IMG_11.mp4', 'deadlift', 'Deadlift'],
      ['IMG_13.mp4', 'ohp', 'Overhead press'],
      ['IMG_21.mp4', 'rdl', 'Romanian deadlift'],
    ] as const;
    for (const [file, typed, name] of starts) {
      await click(page.locator(`tr[data-file="${file}"] [data-column="exercise"]`));
      await page.getByRole('combobox').fill(typed);
      await click(page.getByRole('option', { name, exact: true }));
      await page.locator(`tr[data-file="${file}"]`).getByText(name, { exact: true }).waitFor();
    }
    await bench.picture(app, '20-inbox-alone');
    await checkScreen(app, report, checker, 'the inbox of one who reviews their own sets');
    await click(page.getByRole('button', { name: /^Add 12 clips to sessions/ }));
    await page.getByText('12 clips added to 3 sessions.').waitFor();
    assert.ok(clicks <= mostClicks, `${clicks} clicks`);
    process.stdout.write(`        ${clicks} clicks\n`);
    const { sessions } = await app.ask('desk.sessions', {});
    assert.deepEqual(
      sessions.map(({ date, exercises, clips }) => [date, exercises, clips]),
      [
        ['2026-11-28', ['romanian-deadlift'], 4],
        ['2026-11-27', ['deadlift', 'overhead-press'], 4],
        ['2026-11-26', ['back-squat', 'bench-press'], 4],
      ],
    );
  });
  await app.close();
}

/** Waits until so many files lie in the inbox, and all are read and shown. */
async function allRead(app: App, count: number): Promise<void> {
  await until(
    `${count} files to be read`,
    async () => {
      const { files } = await app.ask('inbox.get', {});
      return files.length === count && files.every(({ state }) => state === 'read');
    },
    60_000,
  );
  await until('all of them on screen', async () => (await app.page.locator('tr[data-file] img').count()) === count);
}

async function dark(app: App, bench: Parameters<Scenario['run']>[0], name: string): Promise<void> {
  await app.page.emulateMedia({ colorScheme: 'dark' });
  await app.page.setViewportSize({ width: 1280, height: 720 });
  await bench.picture(app, name);
  await app.page.setViewportSize({ width: 1920, height: 1080 });
  await app.page.emulateMedia({ colorScheme: 'light' });
  await bench.picture(app, `${name}-large`);
  await app.page.setViewportSize({ width: 1440, height: 900 });
}

/** Presses keys one after the other, each once what the last one did is saved and shown, and counts them. */
function counted(app: App) {
  let count = 0;
  const press = async (...keys: readonly string[]): Promise<void> => {
    for (const key of keys) {
      await app.page.keyboard.press(key);
      count += 1;
      await until('everything to be saved', async () => (await app.page.getByText('Saving').count()) === 0);
      if (key === 'Enter') await app.page.getByRole('combobox').waitFor({ state: 'detached' });
    }
  };
  return Object.assign(press, { count: () => count });
}
