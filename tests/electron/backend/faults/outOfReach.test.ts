import { execFileSync } from 'node:child_process';
import { chmodSync, cpSync, readdirSync, readFileSync, renameSync, rmSync } from 'node:fs';
import path from 'node:path';
import { describe, expect, it, onTestFinished } from 'vitest';
import { ask, backendOn, newLibrary, newSession, refusal, temporaryFolder } from '../workbench.ts';

async function library() {
  const folder = path.join(temporaryFolder(), 'library');
  const backend = await newLibrary(folder);
  return { folder, backend, ...(await newSession(backend)) };
}

/** A library's state as somebody sees it who is not the root user: whom no permission holds. */
function stateForOthers(folder: string) {
  const script = path.join(import.meta.dirname, 'libraryState.ts');
  const nobody = process.getuid?.() === 0 ? { uid: 65_534, gid: 65_534 } : {};
  return JSON.parse(execFileSync(process.execPath, [script, folder], { encoding: 'utf8', ...nobody }));
}

describe.runIf(process.platform !== 'win32')('a library that is read-only', () => {
  it.each([
    ['its folder and files', 0o555, 0o444],
    ['its files', 0o777, 0o444],
    ['its folder', 0o555, 0o666],
  ])('is called so, not damaged or open elsewhere: %s', async (_what, forFolder, forFiles) => {
    const { folder, backend } = await library();
    await backend.close();
    chmodSync(path.dirname(folder), 0o755);
    for (const name of readdirSync(folder))
      if (name.startsWith('rackside')) chmodSync(path.join(folder, name), forFiles);
    chmodSync(folder, forFolder);
    onTestFinished(() => chmodSync(folder, 0o755));
    const before = readFileSync(path.join(folder, 'rackside.sqlite'));
    const state = stateForOthers(folder);
    expect(state).toMatchObject({ ok: true, value: { kind: 'failed', message: { id: 'libraryReadOnly' } } });
    expect(readFileSync(path.join(folder, 'rackside.sqlite'))).toEqual(before);
  });
});

describe.runIf(process.platform !== 'win32')('a library whose folder goes away while it is open', () => {
  it.each(['removed', 'moved', 'replaced by a copy'])('says nothing is saved that is not: %s', async (how) => {
    const { folder, backend, sessionId, traineeId } = await library();
    const elsewhere = `${folder}-elsewhere`;
    if (how === 'removed') rmSync(folder, { recursive: true });
    else renameSync(folder, elsewhere);
    if (how === 'replaced by a copy') cpSync(elsewhere, folder, { recursive: true });
    const refused = [
      await refusal(backend, 'sessions.update', { sessionId, notes: 'Lost?' }),
      await refusal(backend, 'sessions.add', { traineeId, date: '2026-03-05' }),
      await refusal(backend, 'settings.change', { measuringPaused: true }),
      await refusal(backend, 'history.undo', { sessionId }),
    ];
    for (const { code, sentence } of refused) {
      expect(code).toBe('disk');
      expect(sentence).toMatch(/no longer in .* so this was not saved/);
    }
    if (how !== 'moved') return;
    renameSync(elsewhere, folder);
    await ask(backend, 'sessions.update', { sessionId, notes: 'Back again' });
    await backend.close();
    const again = backendOn(folder);
    expect((await ask(again, 'review.get', { sessionId })).review.session.notes).toBe('Back again');
  });
});
