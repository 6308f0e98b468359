import { mkdtempSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import path from 'node:path';
import { expect, onTestFinished, test, vi } from 'vitest';
import type { Backend } from '../../../../electron/contract/backend.ts';
import type { SystemDialogs } from '../../../../electron/main/bridge/systemDialogs.ts';
import { safeFileName, windowAnswers } from '../../../../electron/main/bridge/windowAnswers.ts';

const params = { sessionId: 's1', document: 'letter', format: 'pdf', suggestedName: 'Letter: one/two' } as const;

const facts = {
  build: null,
  electron: '45.0.0',
  chromium: '150.0.0',
  isOutdated: false,
  dataFolder: '/home/data',
};

function answers(
  save: string | null,
  reply: unknown = { ok: true, value: { path: save, bytes: 9 } },
  logFile = '/nowhere/window.log',
) {
  const whereToSave = vi.fn<SystemDialogs['whereToSave']>(async () => save);
  const ask = vi.fn<(name: string, params?: unknown) => Promise<unknown>>(async () => reply);
  const showInFolder = vi.fn();
  const named = ['/home/named.rackside-review'];
  const dialogs: SystemDialogs = {
    whereToSave,
    whichClips: async () => ['/a.mp4', '/b.mov'],
    whichFolder: async () => save,
    whichSessionFile: async () => save,
    showInFolder,
  };
  const answer = windowAnswers({
    dialogs,
    ask: ask as unknown as Backend['ask'],
    keepLanguage: async () => undefined,
    runtime: () => facts,
    namedFile: () => named.shift() ?? null,
    logFile,
  });
  return { whereToSave, showInFolder, ask, answer };
}

test('asks where with a safe name, then has the document written there', async () => {
  const { whereToSave, ask, answer } = answers('/home/letter.pdf');
  expect(await answer('documents.save', params)).toEqual({ ok: true, value: { path: '/home/letter.pdf' } });
  expect(whereToSave).toHaveBeenCalledWith({ name: 'Letter one two', extension: 'pdf' });
  expect(ask).toHaveBeenCalledWith('documents.write', {
    sessionId: 's1',
    document: 'letter',
    format: 'pdf',
    path: '/home/letter.pdf',
  });
});

test('a suggested name that brings its extension keeps one', async () => {
  const { whereToSave, answer } = answers('/home/letter.pdf');
  await answer('documents.save', { ...params, suggestedName: 'letter-2026-03-02.PDF' });
  expect(whereToSave).toHaveBeenCalledWith({ name: 'letter-2026-03-02', extension: 'pdf' });
});

test('writes nothing when the person changed their mind', async () => {
  const { ask, answer } = answers(null);
  expect(await answer('documents.save', params)).toEqual({ ok: true, value: { path: null } });
  expect(ask).not.toHaveBeenCalled();
});

test('hands on why writing failed', async () => {
  const problem = { ok: false, problem: { code: 'disk', message: { id: 'diskFull', values: {} } } };
  expect(await answers('/x.pdf', problem).answer('documents.save', params)).toEqual(problem);
});

test('gives the clips a person chose', async () => {
  expect(await answers(null).answer('clips.choose', {})).toEqual({ ok: true, value: { paths: ['/a.mp4', '/b.mov'] } });
});

test('hands over into the folder a person chose, and not at all when they changed their mind', async () => {
  const chosen = answers('/home/out', { ok: true, value: { jobIds: ['j1'] } });
  const asked = { sessionIds: ['s1'], options: { zip: true } };
  expect(await chosen.answer('handover.deliver', asked)).toEqual({ ok: true, value: { jobIds: ['j1'] } });
  expect(chosen.ask).toHaveBeenCalledWith('handover.start', { ...asked, folder: '/home/out' });
  const refused = answers(null);
  expect(await refused.answer('handover.deliver', asked)).toEqual({ ok: true, value: { jobIds: null } });
  expect(refused.ask).not.toHaveBeenCalled();
});

test('saves a kept version as one zip under a safe name', async () => {
  const { whereToSave, ask, answer } = answers('/home/v2.zip', { ok: true, value: { path: '/home/v2.zip', bytes: 9 } });
  const asked = { sessionId: 's1', version: 2, suggestedName: 'Robin: version 2' };
  expect(await answer('handover.saveKept', asked)).toEqual({ ok: true, value: { path: '/home/v2.zip' } });
  expect(whereToSave).toHaveBeenCalledWith({ name: 'Robin version 2', extension: 'zip' });
  expect(ask).toHaveBeenCalledWith('handover.writeKept', { sessionId: 's1', version: 2, path: '/home/v2.zip' });
});

test('shows only places where a handover was written', async () => {
  const list = { ok: true, value: { deliveries: [{ jobId: 'j1', path: '/home/out/2026-03-02-robin' }] } };
  const { showInFolder, answer } = answers(null, list);
  await answer('handover.show', { sessionId: 's1', jobId: 'other' });
  expect(showInFolder).not.toHaveBeenCalled();
  await answer('handover.show', { sessionId: 's1', jobId: 'j1' });
  expect(showInFolder).toHaveBeenCalledExactlyOnceWith('/home/out/2026-03-02-robin');
});

test('takes in what a person chose, by a job', async () => {
  const { ask, answer } = receiving([]);
  expect(await answer('handover.receive', { from: 'file' })).toEqual({
    ok: true,
    value: { jobId: 'j2', footageOutside: [] },
  });
  expect(ask).toHaveBeenCalledWith('reviews.import', { path: '/home/in.json' });
});

test('takes in a file that the system named, once, and never a path of the page’s own', async () => {
  const { ask, answer } = receiving([]);
  const value = { jobId: 'j2', footageOutside: [] };
  expect(await answer('handover.receive', { from: 'named' })).toEqual({ ok: true, value });
  expect(ask).toHaveBeenLastCalledWith('reviews.import', { path: '/home/named.rackside-review' });
  expect(await answer('handover.receive', { from: 'named' })).toEqual({ ok: true, value: { ...value, jobId: null } });
});

test('says what it runs in', async () => {
  const { answer } = answers(null);
  expect(await answer('about.runtime', {})).toEqual({ ok: true, value: facts });
});

/** A person who chose a review file, and a backend that finds footage outside of its folder. */
function receiving(outside: readonly string[]) {
  const asked = answers('/home/in.json', { ok: true, value: { sessionId: 's2', jobId: 'j2' } });
  asked.ask.mockImplementation(async (name) =>
    name === 'reviews.footageOutside' ? { ok: true, value: outside } : { ok: true, value: { jobId: 'j2' } },
  );
  return asked;
}

test('shows footage outside the folder of a review file first, and imports what was shown, once', async () => {
  const { ask, answer } = receiving(['/etc/other.mp4']);
  const imports = () => ask.mock.calls.filter(([name]) => name === 'reviews.import');
  expect(await answer('handover.receiveShown', {})).toEqual({ ok: true, value: { jobId: null } });
  const value = { jobId: null, footageOutside: ['/etc/other.mp4'] };
  expect(await answer('handover.receive', { from: 'file' })).toEqual({ ok: true, value });
  expect(imports()).toEqual([]);
  expect(await answer('handover.receiveShown', {})).toEqual({ ok: true, value: { jobId: 'j2' } });
  expect(await answer('handover.receiveShown', {})).toEqual({ ok: true, value: { jobId: null } });
  expect(imports()).toEqual([['reviews.import', { path: '/home/in.json', footageOutside: ['/etc/other.mp4'] }]]);
});

test('puts the window’s log under the problem report that the backend wrote', async () => {
  const folder = mkdtempSync(path.join(tmpdir(), 'rackside-report-'));
  onTestFinished(() => rmSync(folder, { recursive: true, force: true }));
  const report = path.join(folder, 'report.txt');
  const logFile = path.join(folder, 'window.log');
  writeFileSync(report, 'Rackside problem report\n');
  writeFileSync(logFile, 'warn backend stopped\n');
  const { answer } = answers(report, { ok: true, value: { path: report } }, logFile);
  expect(await answer('report.save', {})).toEqual({ ok: true, value: { path: report } });
  expect(readFileSync(report, 'utf8')).toBe('Rackside problem report\n\nThe window’s log\nwarn backend stopped\n');
});

test.each([
  ['Letter for Trainee One, 2 March', 'Letter for Trainee One, 2 March'],
  ['a/b\\c:d*e?f"g<h>i|j', 'a b c d e f g h i j'],
  ['../../etc/passwd', 'etc passwd'],
  ['.hidden', 'hidden'],
  ['name. . ', 'name'],
  ['line\nbreak\u0000', 'line break'],
  ['brève Überprüfung 💪', 'brève Überprüfung 💪'],
  ['', 'Rackside'],
  ['...', 'Rackside'],
  ['CON', 'CON!'],
  ['lpt1', 'lpt1!'],
  ['reversed\u202Eend', 'reversed end'],
])('%j becomes %j', (suggestion, name) => {
  expect(safeFileName(suggestion)).toBe(name);
});

test('a long name is cut without splitting a character', () => {
  expect(safeFileName('💪'.repeat(300))).toBe('💪'.repeat(50));
});
