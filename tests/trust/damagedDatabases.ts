import { cpSync, existsSync, readdirSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import path from 'node:path';
import { openBackend } from '../../electron/backend/backend.ts';
import { backUp } from '../../electron/backend/store/backup.ts';
import { closeWriting, openWriting } from '../../electron/backend/store/connection.ts';
import { libraryFolder } from '../../electron/backend/store/folder.ts';
import { rootFolder } from '../../electron/launch/folders.ts';
import { type Damage, damages, type LeftOpen } from './damage/damages.ts';
import { refused, type Shown, shownOf } from './damage/shown.ts';
import { ask } from './harness/ask.ts';
import { startBackend } from './harness/backendChild.ts';
import type { Proof } from './harness/proof.ts';
import type { SeedLibrary } from './harness/seedLibrary.ts';

/** Databases that a disk, another program or a person has damaged: none is shown with other content than was written. */
export const damagedDatabases: Proof = {
  name: 'damaged databases',
  run: async ({ long, random, folder, seedLibrary, progress, isOver }) => {
    const most = long ? 500 : 32;
    const common = await seedLibrary();
    const seed = { ...common, folder: path.join(folder, 'sound') };
    cpSync(common.folder, seed.folder, { recursive: true });
    const backup = makeBackup(seed.folder);
    const left = await leftOpen(seed, path.join(folder, 'left'));
    const original = await shownIn(seed.folder, seed);
    const moments: Shown[] = [];
    for (const log of [null, ...left.logs]) {
      moments.push(await shownOfLog(left.database, log, seed, path.join(folder, 'moment')));
    }
    const tally: Record<Outcome['kind'], number> = { refused: 0, partly: 0, unchanged: 0, earlier: 0, wrong: 0 };
    const wrong: string[] = [];
    let healed = 0;
    let tried = 0;
    for (; tried < most && !isOver(); tried += 1) {
      const damage = damages[tried % damages.length];
      if (damage === undefined) break;
      const library = path.join(folder, 'damaged');
      cpSync(seed.folder, library, { recursive: true });
      const database = path.join(library, 'rackside.sqlite');
      const did = damage.to(database, random, left);
      const before = readFileSync(database);
      const shown = await shownIn(library, seed);
      const outcome = judge(shown, { original, moments, damage });
      tally[outcome.kind] += 1;
      if (outcome.kind === 'wrong') wrong.push(`${damage.name}, ${did}: ${outcome.views.join(', ')}`);
      if (outcome.kind === 'refused') {
        if (!before.equals(readFileSync(database)))
          wrong.push(`${damage.name}, ${did}: refused, yet the file was changed`);
        healed += (await wayBack(library, backup, seed, original)) ? 1 : 0;
      }
      rmSync(library, { recursive: true });
      progress(tried + 1, most);
    }
    const wholeWay = healed === tally.refused ? [] : [`${tally.refused - healed} not healed by the backup`];
    return [
      {
        what: `a database damaged in one of ${damages.length} ways`,
        tried,
        found:
          `${tally.refused} refused in a sentence, ${healed} of these healed from the backup; ${tally.partly} shown in part, ` +
          `the damaged part refused or its list named; ${tally.unchanged} shown unchanged; ${tally.earlier} as after an earlier act, where the log of later ones was damaged; ` +
          `${tally.wrong} shown wrong`,
        wrong: [...wrong, ...wholeWay],
      },
    ];
  },
};

type Outcome =
  | { readonly kind: 'refused' | 'partly' | 'unchanged' | 'earlier' }
  | { readonly kind: 'wrong'; readonly views: readonly string[] };

type Known = { readonly original: Shown; readonly moments: readonly Shown[]; readonly damage: Damage };

function judge(shown: Shown, { original, moments, damage }: Known): Outcome {
  if (shown.state !== original.state) {
    return isRefusal(shown.state ?? '') ? { kind: 'refused' } : { kind: 'wrong', views: ['state', shown.state ?? ''] };
  }
  // What the log of a killed process holds is lost with it: then it is as it was after one of its acts.
  const allowed = damage.name.includes('log') ? [original, ...moments] : [original];
  const base = allowed.find((each) =>
    Object.keys(each).every((view) => shown[view] === each[view] || shown[view] === refused),
  );
  if (base === undefined) {
    const views = Object.keys(original).filter((view) => shown[view] !== original[view] && shown[view] !== refused);
    return { kind: 'wrong', views: views.map((view) => `${view}: ${shown[view]?.slice(0, 300)}`) };
  }
  if (Object.values(shown).includes(refused)) return { kind: 'partly' };
  return { kind: base === original || base === moments.at(-1) ? 'unchanged' : 'earlier' };
}

const isRefusal = (state: string): boolean =>
  /^\{"kind":"failed","message":\{"id":"(libraryDamaged|noLibraryFile|libraryNewer|libraryUnknown)"/.test(state) ||
  // Of nothing there is nothing to show: the file is empty.
  state.startsWith('{"kind":"none"');

async function shownIn(library: string, seed: SeedLibrary): Promise<Shown> {
  const backend = openBackend({ libraryFolder: library, appFolder: rootFolder });
  try {
    return await shownOf(backend, seed);
  } finally {
    await backend.close();
  }
}

async function shownOfLog(database: Buffer, log: Buffer | null, seed: SeedLibrary, library: string): Promise<Shown> {
  cpSync(seed.folder, library, { recursive: true });
  const file = path.join(library, 'rackside.sqlite');
  writeFileSync(file, database);
  if (log !== null) writeFileSync(`${file}-wal`, log);
  const shown = await shownIn(library, seed);
  rmSync(library, { recursive: true });
  return shown;
}

/** A copy as the app makes them before it changes a library's shape; gives its name. */
function makeBackup(folder: string): string {
  const writing = openWriting(path.join(folder, 'rackside.sqlite'));
  try {
    return path.basename(backUp(writing, libraryFolder(folder), 'before-migration'));
  } finally {
    closeWriting(writing);
  }
}

/** Has the backend do acts and ends it hard, so that its log stays beside the database. */
async function leftOpen(seed: SeedLibrary, library: string): Promise<LeftOpen> {
  cpSync(seed.folder, library, { recursive: true });
  const file = path.join(library, 'rackside.sqlite');
  const older = readFileSync(file);
  const child = startBackend(library);
  await child.ready;
  const logs: Buffer[] = [];
  for (let each = 0; each < 6; each += 1) {
    await ask(child, 'sessions.update', { sessionId: seed.sessionId, notes: `Said later ${each}` });
    logs.push(readFileSync(`${file}-wal`));
  }
  await child.kill();
  return { database: readFileSync(file), log: readFileSync(`${file}-wal`), logs, older };
}

/** What the refusal tells a person to do: the good copy out of the backups in place of the damaged file. */
async function wayBack(library: string, backup: string, seed: SeedLibrary, original: Shown): Promise<boolean> {
  for (const name of readdirSync(library)) {
    if (/^rackside\.sqlite/.test(name)) rmSync(path.join(library, name));
  }
  if (!existsSync(path.join(library, 'backups', backup))) return false;
  cpSync(path.join(library, 'backups', backup), path.join(library, 'rackside.sqlite'));
  const shown = await shownIn(library, seed);
  return Object.keys(original).every((view) => shown[view] === original[view]);
}
