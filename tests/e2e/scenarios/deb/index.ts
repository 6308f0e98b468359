import assert from 'node:assert/strict';
import { execFile } from 'node:child_process';
import { chmod, mkdir, readdir, readFile, readlink, rm, stat } from 'node:fs/promises';
import path from 'node:path';
import { promisify } from 'node:util';
import { rootFolder } from '../../../../electron/launch/folders.ts';
import { debianPackage } from '../../../../electron/packaging/debianPackage.ts';
import { readFuses, wantedFuses } from '../../../../electron/packaging/fuses.ts';
import type { App } from '../../harness/app.ts';
import { finishedJob } from '../../harness/jobs.ts';
import { commandLine, hasCallFilter, processTree } from '../../harness/processes.ts';
import { openReview } from '../../harness/reviewScreen.ts';
import type { Scenario } from '../../harness/scenario.ts';
import { until } from '../../harness/until.ts';
import { networkDevices, startInstalled } from './installedApp.ts';
import { addUser, asUser, type User } from './user.ts';

const run = promisify(execFile);
const home = '/usr/lib/rackside';

/** Why the package can't be tried on this machine; null where it can. */
async function reasonAgainst(): Promise<string | null> {
  if (process.platform !== 'linux' || process.arch !== 'x64') return 'this is no Linux on x64';
  if (process.getuid?.() !== 0) return 'only root can install a package';
  const tools = await run('sh', ['-c', 'command -v dpkg dpkg-deb unshare nsenter setpriv useradd ip']).catch(
    () => null,
  );
  if (tools === null) return 'this system has no dpkg, or lacks another tool for it';
  return (await installedVersion()) === null ? null : 'Rackside is installed here already';
}

/** The version of Rackside that is installed; null where none is. */
async function installedVersion(): Promise<string | null> {
  const { stdout } = await run('dpkg', ['-s', 'rackside']).catch(() => ({ stdout: '' }));
  return /^Status: .* installed$/m.test(stdout) ? (/^Version: (.+)$/m.exec(stdout)?.[1] ?? null) : null;
}

/** A coach without Node installs the .deb, reviews the demo offline as an ordinary user, upgrades, and takes it away again. */
export const deb: Scenario = {
  name: 'deb',
  run: async (bench, report) => {
    const against = await reasonAgainst();
    if (against !== null) return report.check(`not tried: ${against}`, async () => undefined);
    const folder = bench.newFolder('deb');
    // Other folders of a run may lie in memory; this takes 2 GB.
    const output = path.join(rootFolder, 'packages', 'tried');
    await mkdir(folder, { recursive: true });
    await openToAll(folder);
    let newer = '';
    let older = '';
    await report.check('two packages are made of what was built, one of an older version', async () => {
      const entry = path.join(rootFolder, 'electron', 'packaging', 'package.ts');
      await run(process.execPath, [entry, '--quick', '--to', output], { maxBuffer: 10_000_000 });
      newer = path.join(output, (await readdir(output)).find((name) => name.endsWith('.deb')) ?? 'none');
      const program = path.join(output, 'linux-unpacked');
      const order = { program, architecture: 'x64', output, packing: 'quick' } as const;
      older = await debianPackage({ ...order, version: '0.0.9' });
    });
    const user = await addUser('racksidetrial');
    try {
      await tryPackage({ bench, report, user, folder, older, newer });
    } finally {
      await run('dpkg', ['--purge', 'rackside']).catch(() => undefined);
      await user.remove();
      await rm(output, { recursive: true, force: true });
    }
  },
};

type Trial = {
  readonly bench: Parameters<Scenario['run']>[0];
  readonly report: Parameters<Scenario['run']>[1];
  readonly user: User;
  readonly folder: string;
  readonly older: string;
  readonly newer: string;
};

async function tryPackage({ bench, report, user, folder, older, newer }: Trial): Promise<void> {
  const library = path.join(user.home, '.config', 'Rackside', 'library');
  const start = async (): Promise<App> => {
    const command = await menuCommand();
    const { environment } = bench.runtime;
    return bench.launchBy(() => startInstalled({ command, user, environment, folder }), folder);
  };

  await report.check('dpkg installs the older one, with a menu entry and its own kinds of files', async () => {
    await run('dpkg', ['-i', older]);
    assert.equal(await installedVersion(), '0.0.9');
    const { stdout } = await run('desktop-file-validate', ['/usr/share/applications/rackside.desktop']).catch(() => ({
      stdout: '',
    }));
    assert.equal(stdout, '');
    const globs = await readFile('/usr/share/mime/globs2', 'utf8').catch(() => null);
    if (globs !== null) assert.match(globs, /application\/vnd\.rackside\.handover\+zip:\*\.rackside-handover/);
  });

  await report.check('the fuses of the installed program are set, and it holds no updater', async () => {
    const fuses = await readFuses(path.join(home, 'rackside-desk'));
    const wanted = wantedFuses({ platform: 'linux' });
    assert.ok(fuses.size >= 8);
    for (const [name, state] of fuses) assert.equal(state, wanted[name], name);
    for (const file of ['app.asar', 'backend/dist/backend.mjs', 'backend/dist/cli.mjs']) {
      const text = await readFile(path.join(home, 'resources', file), 'latin1');
      assert.doesNotMatch(text, /autoUpdater|electron-updater/, file);
    }
  });

  const first = await start();
  await report.check('the menu’s command opens the window for an ordinary user, offline, without Node', async () => {
    await first.page.getByRole('heading', { name: 'Rackside' }).waitFor();
    assert.deepEqual(await networkDevices(first.processId), ['lo']);
    const status = await readFile(`/proc/${first.processId}/status`, 'utf8');
    assert.match(status, new RegExp(`^Uid:\\s+${user.id}\\s`, 'm'));
    await bench.picture(first, 'deb-1-first-start');
  });

  await report.check('pages run in the sandbox', async () => {
    const lines = await Promise.all(
      (await processTree(first.processId)).map(async (id) => ({ id, line: await commandLine(id) })),
    );
    assert.deepEqual(
      lines.filter(({ line }) => line.includes('--no-sandbox')),
      [],
    );
    const pages = lines.filter(({ line }) => line.includes('--type=renderer'));
    assert.ok(pages.length > 0);
    const own = await readlink('/proc/self/ns/user');
    for (const { id } of pages) {
      assert.ok(await hasCallFilter(id), 'system calls are filtered');
      assert.notEqual(await readlink(`/proc/${id}/ns/user`), own, 'it is in a namespace of its own');
    }
  });

  await report.check('the demo is made, by the programs that the package brings', async () => {
    const { jobId } = await first.ask('library.create', { contents: 'demo', voice: 'coach' });
    assert.ok(jobId !== null);
    await finishedJob(first, jobId);
    assert.equal(await first.close(), 0);
  });

  await report.check('the newer one is installed over it, and finds the library as it was', async () => {
    await run('dpkg', ['-i', newer]);
    assert.equal(await installedVersion(), (await run('rackside', ['--version'])).stdout.trim());
  });

  const second = await start();
  await report.check('the demo’s session is reviewed, and a letter is written', async () => {
    const { sessions } = await second.ask('desk.sessions', {});
    const session = sessions[0];
    assert.ok(session !== undefined);
    await openReview(second, session.id);
    await bench.picture(second, 'deb-2-review');
    const letter = path.join(user.home, 'letter.pdf');
    await second.choose({ save: letter });
    const order = { sessionId: session.id, document: 'letter', format: 'pdf', suggestedName: 'letter' } as const;
    const saved = await second.page.evaluate((what) => window.rackside.askWindow('documents.save', what), order);
    assert.ok(saved.ok, JSON.stringify(saved));
    assert.equal((await readFile(letter)).subarray(0, 5).toString(), '%PDF-');
    assert.equal((await stat(letter)).uid, user.id);
  });

  await report.check('a review that is opened from the file manager comes into the window that is open', async () => {
    const before = (await second.ask('desk.sessions', {})).sessions.length;
    const file = path.join(home, 'resources', 'backend', 'seeds', 'demo', 'session.json');
    const session = [`HOME=${user.home}`, `DISPLAY=${bench.runtime.environment.DISPLAY ?? process.env.DISPLAY}`];
    const [program = '', ...words] = [...asUser(user), 'env', '-i', ...session, ...(await menuCommand()), file];
    const { stderr } = await run(program, words);
    assert.match(stderr, /Rackside is open already/);
    // Its clips lie outside of its folder, so the person is asked.
    await second.page.getByTestId('outside-paths').waitFor();
    await second.page
      .getByRole('button', { name: /^Import/ })
      .last()
      .click();
    await until('the session to come in', async () => {
      const { sessions } = await second.ask('desk.sessions', {});
      return sessions.length === before + 1;
    });
  });

  await report.check('the program says its version, its outdated runtime, and whose work is in it', async () => {
    const about = await second.page.evaluate(() => window.rackside.askWindow('about.runtime', {}));
    assert.ok(about.ok);
    const { version } = await second.ask('about.get', {});
    assert.match(`${version} ${about.value.build?.commit}`, /^\d+\.\d+\.\d+ [0-9a-f]{7,}$/);
    assert.equal(about.value.isOutdated, Number(about.value.electron.split('.')[0]) < 37);
    assert.match((await second.ask('about.notices', {})).text, /better-sqlite3/);
    assert.equal(await second.close(), 0);
  });

  await report.check('the command works for the user too, without a window and without a Node of theirs', async () => {
    const [program = '', ...words] = [...asUser(user), 'env', '-i', `HOME=${user.home}`, 'PATH=/bin', 'rackside'];
    const demo = path.join(home, 'resources', 'backend', 'seeds', 'demo', 'session.json');
    const { stdout } = await run(program, [...words, 'grade', demo], { cwd: user.home });
    assert.match(stdout, /Robin Thale|overall/i);
  });

  await report.check('taken away, it leaves the user’s library untouched, and nothing else', async () => {
    const before = await listing(library);
    assert.ok(before.length > 5);
    await run('dpkg', ['--purge', 'rackside']);
    assert.deepEqual(await listing(library), before);
    await assert.rejects(stat(home));
    await assert.rejects(stat('/usr/bin/rackside'));
  });
}

/** The program and its words in the menu's entry, without a place for files. */
async function menuCommand(): Promise<readonly string[]> {
  const entry = await readFile('/usr/share/applications/rackside.desktop', 'utf8');
  const words = /^Exec=(.+)$/m.exec(entry)?.[1]?.split(' ') ?? [];
  return words.filter((word) => !word.startsWith('%'));
}

/** Every file of a folder with its size and the time of its last change. */
async function listing(folder: string): Promise<readonly string[]> {
  const entries = await readdir(folder, { recursive: true, withFileTypes: true });
  const files = entries.filter((entry) => entry.isFile()).map((entry) => path.join(entry.parentPath, entry.name));
  const lines = files.map(async (file) => {
    const { size, mtimeMs } = await stat(file);
    return `${path.relative(folder, file)} ${size} ${mtimeMs}`;
  });
  return (await Promise.all(lines)).sort();
}

/** Lets every user look into a folder of the run and write there. */
async function openToAll(folder: string): Promise<void> {
  await chmod(path.dirname(folder), 0o755);
  await chmod(folder, 0o777);
}
