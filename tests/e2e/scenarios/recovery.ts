import assert from 'node:assert/strict';
import path from 'node:path';
import { isDeepStrictEqual } from 'node:util';
import Database from 'better-sqlite3';
import type { App } from '../harness/app.ts';
import { isAlive, processTree } from '../harness/processes.ts';
import { clickCell, goToFrame, openReview, shown } from '../harness/reviewScreen.ts';
import type { Scenario } from '../harness/scenario.ts';
import { until } from '../harness/until.ts';

/** Whatever ends in the middle of work, nothing that was on screen as saved is lost. */
export const recovery: Scenario = {
  name: 'recovery',
  run: async (bench, report) => {
    const folder = await bench.demoFolder('recovery');
    const app = await bench.launch(folder);
    const sessionId = await onlySession(app);
    const before = await flags(app, sessionId);
    await openReview(app, sessionId);

    await report.check('kill -9 of the backend: a notice, and the next act works', async () => {
      await drop(app, sessionId, 'barPath', 3);
      process.kill(await app.backendProcessId(), 'SIGKILL');
      await app.page.getByText(/restarted its library/).waitFor();
      await drop(app, sessionId, 'headPosition', 1);
      assert.equal((await flags(app, sessionId)).length, before.length + 2);
    });

    await report.check('a note that is being typed when the backend is killed is saved whole, untouched', async () => {
      await clickCell(app, 'depth', 1);
      const note = app.page.getByRole('textbox', { name: 'Note' }).first();
      await note.fill('Hips rise');
      process.kill(await app.backendProcessId(), 'SIGKILL');
      await note.press('End');
      await app.page.keyboard.type(' before the bar');
      await savedNote(app, sessionId, 'Hips rise before the bar');
      // Held still, it takes the text and never answers: killed then, it leaves the page without word of it.
      const held = await app.backendProcessId();
      process.kill(held, 'SIGSTOP');
      await app.page.keyboard.type(' does.');
      await app.page.getByTestId('saved-state').getByText('Saving').waitFor();
      process.kill(held, 'SIGKILL');
      await savedNote(app, sessionId, 'Hips rise before the bar does.');
      assert.equal(await note.inputValue(), 'Hips rise before the bar does.');
    });

    await report.check('kill -9 of the whole app in a burst of work: all that was saved is there', async () => {
      const own = await bench.demoFolder('burst');
      const burst = await bench.launch(own);
      const id = await onlySession(burst);
      await openReview(burst, id);
      await goToFrame(burst, 40);
      await burst.page.keyboard.press('s');
      await clickCell(burst, 'pauses', 2);
      for (const key of ['f', 'ArrowDown', 'k', 'ArrowDown', 'f', 'ArrowUp', 'k']) await burst.page.keyboard.press(key);
      const { review: saved } = await burst.ask('review.get', { sessionId: id });
      for (const key of ['k', 'f', 'k', 'f']) await burst.page.keyboard.press(key);
      await burst.kill();
      const after = await bench.launch(own);
      const { review: found } = await after.ask('review.get', { sessionId: id });
      for (const [index, entry] of saved.entries.entries()) {
        const now = found.entries[index];
        assert.deepEqual(now?.clips, entry.clips);
        for (const flag of entry.flags) assert.ok(now?.flags.some((known) => isDeepStrictEqual(known, flag)));
      }
      const { sound } = await after.ask('library.verify', {});
      assert.ok(sound);
      await after.close();
    });

    await report.check('kill -9 of the whole app: reps, flags, notes and the place are there', async () => {
      await clickCell(app, 'depth', 1);
      const note = app.page.getByRole('textbox', { name: 'Note' }).first();
      await note.fill('A note that must not get lost.');
      await note.blur();
      await until('the note to be saved', async () =>
        (await flags(app, sessionId)).some((flag) => flag.note === 'A note that must not get lost.'),
      );
      await goToFrame(app, 133);
      await until('the place to be kept', async () => {
        const { position } = await app.ask('review.get', { sessionId });
        return position?.frame === 133;
      });
      await app.kill();

      const again = await bench.launch(folder);
      const now = await flags(again, sessionId);
      assert.equal(now.length, before.length + 2);
      assert.ok(now.some((flag) => flag.note === 'A note that must not get lost.'));
      const { findings, sound } = await again.ask('library.verify', {});
      assert.deepEqual({ sound, findings }, { sound: true, findings: [] });
      await openReview(again, sessionId);
      assert.equal((await shown(again)).frame, 133);
      await again.close();
    });

    await report.check('when the window process alone is killed, no other process stays behind', async () => {
      const orphaned = await bench.launch(folder);
      const tree = await processTree(orphaned.processId);
      assert.ok(tree.includes(await orphaned.backendProcessId()));
      process.kill(orphaned.processId, 'SIGKILL');
      await until('every process to be gone', async () => !(await Promise.all(tree.map(isAlive))).includes(true));
    });

    await report.check(
      'a window closed while its backend is gone leaves no process, and the next start shows one',
      async () => {
        const bare = await bench.launch(folder);
        const tree = await processTree(bare.processId);
        process.kill(await bare.backendProcessId(), 'SIGKILL');
        assert.equal(await bare.close(), 0);
        await until('every process to be gone', async () => !(await Promise.all(tree.map(isAlive))).includes(true));
        const next = await bench.launch(folder);
        await next.close();
      },
    );

    await report.check('closing the window with a note half typed keeps it', async () => {
      const third = await bench.launch(folder);
      await openReview(third, sessionId);
      await clickCell(third, 'depth', 1);
      await third.page.getByRole('textbox', { name: 'Note' }).first().fill('Half a sentence');
      await third.close();
      const fourth = await bench.launch(folder);
      assert.ok((await flags(fourth, sessionId)).some((flag) => flag.note === 'Half a sentence'));
      await fourth.close();
    });

    await report.check('a window that nobody uses closes itself, with a note half typed, and keeps it', async () => {
      const left = await bench.launch(folder);
      const tree = await processTree(left.processId);
      await openReview(left, sessionId);
      await clickCell(left, 'depth', 1);
      await left.page.getByRole('textbox', { name: 'Note' }).first().fill('Called away');
      await left.ask('settings.change', { closeAfterMinutes: 5 });
      await left.page.evaluate(() => {
        const now = Date.now;
        Date.now = () => now() + 6 * 60_000;
      });
      await until('every process to be gone', async () => !(await Promise.all(tree.map(isAlive))).includes(true));
      const database = new Database(path.join(folder, 'library', 'rackside.sqlite'), { readonly: true });
      const kept = database.prepare("SELECT count(*) FROM flag WHERE note = 'Called away'").pluck().get();
      database.close();
      assert.equal(kept, 1);
    });
  },
};

async function onlySession(app: App): Promise<string> {
  const { sessions } = await app.ask('desk.sessions', {});
  return sessions[0]?.id ?? 'there is no session';
}

/** Waits for a note; a question that the backend dies over is asked again. */
function savedNote(app: App, sessionId: string, words: string): Promise<boolean> {
  return until(`the note "${words}" to be saved`, async () => {
    const reply = await app.reply('review.get', { sessionId });
    return reply.ok && reply.value.review.entries.some(({ flags: of }) => of.some(({ note }) => note === words));
  });
}

async function flags(app: App, sessionId: string) {
  const { review } = await app.ask('review.get', { sessionId });
  return review.entries.flatMap((entry) => entry.flags);
}

/** Drops a preference at the picture on screen and waits until the database has it. */
async function drop(app: App, sessionId: string, criterion: string, rep: number): Promise<void> {
  const { length } = await flags(app, sessionId);
  await clickCell(app, criterion, rep);
  await app.page.keyboard.press('1');
  await app.page.locator('.fault-picker').waitFor();
  await app.page.keyboard.press('Escape');
  await until('the flag to be saved', async () => (await flags(app, sessionId)).length === length + 1);
}
