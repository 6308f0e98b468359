import { cpSync, mkdirSync, readdirSync, rmSync, statSync } from 'node:fs';
import path from 'node:path';
import Database from 'better-sqlite3';
import { ask, jobsAtRest } from './harness/ask.ts';
import { startBackend } from './harness/backendChild.ts';
import { leftoversIn } from './harness/leftovers.ts';
import type { Figure, Order, Proof } from './harness/proof.ts';
import type { SeedLibrary } from './harness/seedLibrary.ts';
import { JudgedSession } from './kills/judged.ts';
import { LongWork, longKinds } from './kills/longWork.ts';
import { checkBroughtUp, makeOlderLibrary, olderFlags } from './kills/olderLibrary.ts';

/** So many kills strike one library before it is brought to rest and looked at whole. */
const killsALife = 25;
/** So many of them at work that goes on after it was asked for. */
const longStrikes = 5;

/** The backend is ended by `kill -9` at any moment, again and again, and the library opened anew each time. */
export const kills: Proof = {
  name: 'kills',
  run: async (order) => {
    const most = order.long ? 1000 : 25;
    const seed = await order.seedLibrary();
    const older = path.join(order.folder, 'older');
    makeOlderLibrary(older);
    const tally = new Tally();
    for (let done = 0; done < most && !order.isOver(); ) {
      const strikes = Math.min(killsALife, most - done);
      const ofMigration = Math.floor(strikes / 5);
      for (let each = 0; each < ofMigration; each += 1) {
        await killMigration(older, path.join(order.folder, 'migrated'), order, tally);
      }
      await liveOneLife(seed, strikes - ofMigration, order, tally);
      done += strikes;
      order.progress(done, most);
    }
    return tally.figures();
  },
};

type Kind = 'acts' | 'import' | 'measuring' | 'handover' | 'migration';

/** What was tried so far, and what went wrong. */
class Tally {
  readonly killed: Record<Kind, number> = { acts: 0, import: 0, measuring: 0, handover: 0, migration: 0 };
  readonly acknowledged: Record<Kind, number> = { acts: 0, import: 0, measuring: 0, handover: 0, migration: 0 };
  readonly wrong: Record<Kind, string[]> = { acts: [], import: [], measuring: [], handover: [], migration: [] };
  backups = 0;

  figures(): Figure[] {
    const figure = (kind: Kind, what: string, found: string): Figure => ({
      what: `\`kill -9\` during ${what}`,
      tried: this.killed[kind],
      found,
      wrong: this.wrong[kind],
    });
    const { acts, import: imports, measuring, handover } = this.acknowledged;
    return [
      figure('acts', 'acts (flags, notes, undo, redo)', `${acts} acts acknowledged, every one there as it was said`),
      figure('import', 'an import', `${imports} acknowledged, every clip there once, as filmed`),
      figure('measuring', 'measuring', `${measuring} acknowledged, the measures there`),
      figure('handover', 'a handover', `${handover} acknowledged, each there once and whole by its list`),
      figure(
        'migration',
        'a migration and its backup',
        `every library whole in its new shape, ${this.backups} backups sound`,
      ),
    ];
  }
}

/** One library that is struck many times, then brought to rest. */
async function liveOneLife(seed: SeedLibrary, strikes: number, { random, folder }: Order, tally: Tally): Promise<void> {
  const library = path.join(folder, 'struck');
  const out = path.join(folder, 'out');
  cpSync(seed.folder, library, { recursive: true });
  mkdirSync(out);
  const judged = new JudgedSession(seed);
  const work = new LongWork(seed, out);
  for (let strike = 0; strike < strikes; strike += 1) {
    const child = startBackend(library);
    // One in twelve is ended while it is opening.
    if (random.below(12) === 0) {
      await passed(random.share() * 400);
      await child.kill();
      tally.killed.acts += 1;
      continue;
    }
    await child.ready;
    const lost = await judged.check(child);
    if (lost !== null) tally.wrong.acts.push(lost);
    if (strike % 3 === 0) {
      const { sound, findings } = await ask(child, 'library.verify', {});
      if (!sound) tally.wrong.acts.push(...findings);
    }
    // Work that takes long comes last: every later process would begin it anew.
    const kind = strike < strikes - longStrikes ? 'acts' : random.oneOf(longKinds);
    if (kind !== 'acts') await work.begin(child, kind);
    const working = judged.workUntilKilled(child, random);
    // Awaited once the process has ended.
    working.catch(() => undefined);
    if (kind === 'acts') await judged.firstOf(working);
    await passed(random.share() * (kind === 'acts' ? 150 : 700));
    await child.kill();
    await working;
    tally.killed[kind] += 1;
  }
  await bringToRest(library, judged, work, tally);
  rmSync(library, { recursive: true });
  rmSync(out, { recursive: true });
}

/** Lets every job end, and looks at everything that was acknowledged. */
async function bringToRest(library: string, judged: JudgedSession, work: LongWork, tally: Tally): Promise<void> {
  const child = startBackend(library);
  await child.ready;
  const lost = await judged.check(child);
  if (lost !== null) tally.wrong.acts.push(lost);
  const failed = (await jobsAtRest(child)).filter(({ state }) => state !== 'done');
  for (const { kind, message } of failed) tally.wrong.acts.push(`${kind} ended: ${JSON.stringify(message)}`);
  for (const wrong of await work.check(child)) {
    const kind = longKinds.find((each) => wrong.startsWith(each)) ?? 'acts';
    tally.wrong[kind].push(wrong);
  }
  const { sound, findings } = await ask(child, 'library.verify', {});
  if (!sound) tally.wrong.acts.push(...findings);
  await child.close();
  tally.wrong.acts.push(...leftoversIn(library).map((name) => `left over: ${name}`));
  tally.acknowledged.acts += judged.acknowledged;
  for (const kind of longKinds) tally.acknowledged[kind] += work.acknowledged[kind];
}

/** An older library is opened, and the process ended while it backs it up and brings it to its new shape. */
async function killMigration(older: string, folder: string, { random }: Order, tally: Tally): Promise<void> {
  cpSync(older, folder, { recursive: true });
  const child = startBackend(folder);
  // Starting takes the process longer than what is to be struck, so that most strike after it.
  const from = await Promise.race([child.ready.then(() => 'ready'), began(folder)]);
  if (from === 'began') await passed(random.share() * 120);
  await child.kill();
  tally.wrong.migration.push(...(await checkBroughtUp(folder)));
  for (const name of readdirSync(path.join(folder, 'backups'))) {
    const fault = faultOfBackup(path.join(folder, 'backups', name));
    if (fault === null) tally.backups += 1;
    else tally.wrong.migration.push(`backups/${name}: ${fault}`);
  }
  tally.wrong.migration.push(...leftoversIn(folder).map((name) => `left over: ${name}`));
  tally.killed.migration += 1;
  rmSync(folder, { recursive: true });
}

/** What is wrong with a file of the backups folder; null for a sound copy with all that was there. */
function faultOfBackup(file: string): string | null {
  try {
    const backup = new Database(file, { readonly: true });
    try {
      const found = backup.pragma('integrity_check', { simple: true });
      const flags = Number(backup.prepare('SELECT count(*) FROM flag').pluck().get());
      return found === 'ok' && flags === olderFlags ? null : `${found}, ${flags} flags`;
    } finally {
      backup.close();
    }
  } catch (error) {
    return `${error}, ${statSync(file).size} bytes`;
  }
}

/** Resolves once the library's folders are made: the backup comes next. */
async function began(folder: string): Promise<'began'> {
  while (!readdirSync(folder).includes('backups')) await passed(1);
  return 'began';
}

const passed = (milliseconds: number): Promise<void> => new Promise((resolve) => setTimeout(resolve, milliseconds));
