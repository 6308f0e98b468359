import { appendFileSync, mkdirSync, renameSync, writeFileSync } from 'node:fs';
import path from 'node:path';
import { expect, it, onTestFinished, vi } from 'vitest';
import { FolderWatch } from '../../../../electron/backend/arrivals/folderWatch.ts';
import { noLog } from '../../../../electron/backend/log/log.ts';
import { listInbox } from '../../../../electron/backend/store/arrivals.ts';
import { inTransaction } from '../../../../electron/backend/store/connection.ts';
import { createLibrary } from '../../../../electron/backend/store/library.ts';
import { writeSettings } from '../../../../electron/backend/store/settings.ts';
import { appFolder, temporaryFolder } from '../workbench.ts';

/** A library that watches a folder, with times short enough to wait for, and a queue that only remembers. */
function watching(folder: string, { settleMs = 60 } = {}) {
  const library = createLibrary(temporaryFolder(), appFolder, { voice: 'coach', coach: '' });
  inTransaction(library.writing, () => writeSettings(library.writing, { watchedFolder: folder }));
  const added: string[] = [];
  const nothing = () => undefined;
  const watch = new FolderWatch(
    {
      library: () => library,
      emit: nothing,
      log: () => noLog,
      jobs: {
        add: ({ kind }) => `${added.push(kind)}`,
        tell: nothing,
        list: () => [],
        cancel: nothing,
        retry: nothing,
        dismiss: nothing,
        line: () => [],
        move: nothing,
        showing: nothing,
        pauseMeasuring: nothing,
        goOnMeasuring: nothing,
      },
    },
    { settleMs, gatherMs: 10, rescanMs: 60_000, returnMs: 30 },
  );
  onTestFinished(async () => {
    await watch.close();
    library.close();
  });
  watch.follow();
  return { watch, added, names: () => listInbox(library.reading, 100).map((row) => path.basename(row.path)), library };
}

const soon = { timeout: 8_000, interval: 20 };

it('takes in what lies there and what comes, each file once, subfolders too', async () => {
  const folder = temporaryFolder();
  writeFileSync(path.join(folder, 'old.mp4'), 'film');
  const { added, names } = watching(folder);
  await vi.waitFor(() => expect(names()).toEqual(['old.mp4']), soon);
  mkdirSync(path.join(folder, 'Mira'));
  writeFileSync(path.join(folder, 'Mira', 'new.mov'), 'film');
  writeFileSync(path.join(folder, 'notes.txt'), 'no film');
  await vi.waitFor(() => expect(names()).toEqual(['old.mp4', 'new.mov']), soon);
  expect(added).toEqual(['arrive', 'arrive']);
});

it('waits for a file that is still being written, and takes it whole', async () => {
  const folder = temporaryFolder();
  const { names, library } = watching(folder, { settleMs: 1_200 });
  const file = path.join(folder, 'long.mp4');
  writeFileSync(file, 'begun');
  const seen: number[] = [];
  // Something that goes on being written for longer than the watch waits.
  await vi.waitFor(
    () => {
      if (seen.length < 8) appendFileSync(file, 'more');
      seen.push(names().length);
      expect(names()).toEqual(['long.mp4']);
    },
    { timeout: 8_000, interval: 100 },
  );
  expect(seen.slice(0, 8)).toEqual([0, 0, 0, 0, 0, 0, 0, 0]);
  expect(listInbox(library.reading, 1)[0]?.size_bytes).toBe('begun'.length + 8 * 'more'.length);
});

it('says that the folder is gone, and goes on once it is back', async () => {
  const home = temporaryFolder();
  const [folder, away] = [path.join(home, 'card'), path.join(home, 'away')];
  mkdirSync(folder);
  const { watch, names } = watching(folder);
  await vi.waitFor(() => expect(watch.watched()).toEqual({ folder, there: true }), soon);
  renameSync(folder, away);
  writeFileSync(path.join(away, 'meanwhile.mp4'), 'film');
  await vi.waitFor(() => expect(watch.watched()).toEqual({ folder, there: false }), soon);
  renameSync(away, folder);
  await vi.waitFor(() => expect(names()).toEqual(['meanwhile.mp4']), soon);
  expect(watch.watched()).toEqual({ folder, there: true });
});

it('watches nothing where nothing is set any more', async () => {
  const folder = temporaryFolder();
  const { watch, names, library } = watching(folder);
  inTransaction(library.writing, () => writeSettings(library.writing, { watchedFolder: null }));
  watch.follow();
  expect(watch.watched()).toBeNull();
  writeFileSync(path.join(folder, 'late.mp4'), 'film');
  expect(names()).toEqual([]);
});
