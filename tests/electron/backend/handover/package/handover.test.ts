import { createHash } from 'node:crypto';
import { existsSync, readdirSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import path from 'node:path';
import { expect, it } from 'vitest';
import type { Backend } from '../../../../../electron/contract/backend.ts';
import type { Params } from '../../../../../electron/contract/requests.ts';
import { ask, jobEnd, jobWhen, newLibrary, refusal, sessionWithClips, temporaryFolder } from '../../workbench.ts';
import { shortClip } from '../shortClip.ts';

async function flagged() {
  const folder = temporaryFolder();
  const backend = await newLibrary(folder);
  const footage = temporaryFolder();
  const session = await sessionWithClips(backend, [await shortClip(footage, 'Mira set-1.mp4')]);
  const { clipId } = session;
  await ask(backend, 'reps.mark', { clipId, edge: 'start', frame: 2 });
  await ask(backend, 'reps.mark', { clipId, edge: 'end', frame: 20 });
  const flag = { criterion: 'depth', fault: 'shortOfDepth', severity: 'correct' } as const;
  await ask(backend, 'flags.add', { ...flag, clipId, reps: [1], frame: 8, note: 'Mira, this one is short.' });
  const { exercises } = await ask(backend, 'catalogue.get', {});
  const seen = exercises.find(({ id }) => id === 'back-squat')?.judgedFrom.side ?? [];
  const ticks = seen.map((criterion) => ({ criterion, reps: 'set' as const }));
  await ask(backend, 'ticks.setMany', { clipId, ticks });
  return { folder, backend, ...session };
}

type Options = Params<'handover.start'>['options'];

async function handOver(backend: Backend, sessionId: string, folder: string, options: Options = {}) {
  const { jobIds } = await ask(backend, 'handover.start', { sessionIds: [sessionId], folder, options });
  const job = await jobEnd(backend, jobIds[0] ?? '');
  const { deliveries } = await ask(backend, 'handover.list', { sessionId });
  return { job, delivery: deliveries.find(({ jobId }) => jobId === job.id) };
}

const filesIn = (folder: string) =>
  readdirSync(folder, { recursive: true, withFileTypes: true })
    .filter((entry) => entry.isFile())
    .map((entry) => path.relative(folder, path.join(entry.parentPath, entry.name)))
    .sort();

it('writes a whole folder, each file as the manifest says, and keeps its documents', async () => {
  const { folder, backend, sessionId } = await flagged();
  const out = temporaryFolder();
  const { job, delivery } = await handOver(backend, sessionId, out, { loops: true });
  expect(job).toMatchObject({ state: 'done' });
  expect(delivery).toMatchObject({ version: 1, failed: [] });
  expect(readdirSync(out)).toEqual(['2026-03-04-mira-holt']);
  const place = path.join(out, '2026-03-04-mira-holt');
  expect(delivery?.path).toBe(place);
  expect(filesIn(place)).toEqual(
    [
      ...['annotations.jsonld', 'breakdown.html', 'breakdown.pdf', 'filming-card.html', 'filming-card.pdf'],
      ...['clips/mira-set-1.mp4', 'clips/mira-set-1-rep-1.mp4', 'originals/mira-set-1.mp4'],
      ...['originals/mira-set-1.vtt', 'originals/mira-set-1.srt', 'originals/mira-set-1-reps.vtt'],
      ...['index.html', 'letter.html', 'letter.md', 'letter.pdf', 'letter.txt', 'manifest.json', 'next-filming.ics'],
      ...['review.json', 'sheet.csv', 'sheet.html', 'sheet.json', 'sheet.pdf', 'stills/mira-set-1-01.jpg'],
      'stills/mira-set-1-poster.jpg',
    ].sort(),
  );
  const manifest = JSON.parse(readFileSync(path.join(place, 'manifest.json'), 'utf8'));
  expect(manifest).toMatchObject({ handover: 1, date: '2026-03-04', rubric: { version: 3 }, names: 'full' });
  expect(manifest.files.map(({ name }: { name: string }) => name)).toEqual(
    filesIn(place).filter((name) => name !== 'manifest.json'),
  );
  for (const { name, sha256, bytes } of manifest.files) {
    const content = readFileSync(path.join(place, name));
    expect([content.length, createHash('sha256').update(content).digest('hex')]).toEqual([bytes, sha256]);
  }
  for (const name of ['clips/mira-set-1.mp4', 'originals/mira-set-1.mp4', 'clips/mira-set-1-rep-1.mp4']) {
    expect(readFileSync(path.join(place, name), 'latin1')).not.toMatch(/Secretphone|48\.1\+011/);
  }
  const { versions } = await ask(backend, 'handover.list', { sessionId });
  const kept = readFileSync(path.join(folder, 'handovers', `${sessionId}-v1.zip`));
  expect(versions).toMatchObject([
    { version: 1, letterVersion: 1, sha256: createHash('sha256').update(kept).digest('hex') },
  ]);
  const { sent } = await ask(backend, 'letters.get', { sessionId });
  expect(sent).toMatchObject([{ version: 1 }]);
  expect(await ask(backend, 'library.verify', {})).toMatchObject({ sound: true });
});

it('is version 2 after a change, the same version without one, and due only when something changed', async () => {
  const { folder, backend, sessionId } = await flagged();
  const out = temporaryFolder();
  const few = { clips: false } as const;
  const listed = async () =>
    (await ask(backend, 'handover.sessions', {})).sessions.map((one) => [
      one.session.id,
      one.last?.version ?? null,
      one.due,
    ]);
  expect(await listed()).toEqual([[sessionId, null, true]]);
  await handOver(backend, sessionId, out, few);
  expect(await listed()).toEqual([[sessionId, 1, false]]);
  const first = readFileSync(path.join(folder, 'handovers', `${sessionId}-v1.zip`));
  expect((await handOver(backend, sessionId, out, few)).delivery).toMatchObject({ version: 1 });
  await ask(backend, 'sessions.update', { sessionId, notes: 'The bar was new.' });
  expect(await listed()).toEqual([[sessionId, 1, true]]);
  await ask(backend, 'history.undo', { sessionId });
  expect((await handOver(backend, sessionId, out, few)).delivery).toMatchObject({ version: 1 });
  await ask(backend, 'history.redo', { sessionId });
  expect((await handOver(backend, sessionId, out, few)).delivery).toMatchObject({ version: 2 });
  expect(readdirSync(out).sort()).toEqual([
    '2026-03-04-mira-holt',
    '2026-03-04-mira-holt-2',
    '2026-03-04-mira-holt-3',
    '2026-03-04-mira-holt-v2',
  ]);
  expect(readFileSync(path.join(folder, 'handovers', `${sessionId}-v1.zip`)).equals(first)).toBe(true);
  const target = path.join(out, 'first.zip');
  await ask(backend, 'handover.writeKept', { sessionId, version: 1, path: target });
  expect(readFileSync(target).equals(first)).toBe(true);
  writeFileSync(path.join(folder, 'handovers', `${sessionId}-v1.zip`), 'something else');
  expect((await refusal(backend, 'handover.writeKept', { sessionId, version: 1, path: target })).code).toBe(
    'library-damaged',
  );
  expect(await ask(backend, 'library.verify', {})).toMatchObject({ sound: false });
});

it('is told of by itself as the list tells it, and not at all without a grade', async () => {
  const { backend, sessionId, traineeId } = await flagged();
  const { sessions } = await ask(backend, 'handover.sessions', {});
  expect(sessions).toHaveLength(1);
  expect(await ask(backend, 'handover.session', { sessionId })).toEqual(sessions[0]);
  const { sessionId: bare } = await ask(backend, 'sessions.add', { traineeId, title: '', date: '2026-03-11' });
  expect(await ask(backend, 'handover.session', { sessionId: bare })).toBeNull();
});

it('is due when what it says differs from what was handed over, whatever was done in between', async () => {
  const { backend, sessionId, traineeId, clipId } = await flagged();
  const out = temporaryFolder();
  const due = async () => (await ask(backend, 'handover.sessions', {})).sessions.map((one) => one.due);
  const deliver = async (options: Options = {}) => {
    const { delivery } = await handOver(backend, sessionId, out, { clips: false, ...options });
    expect(await due()).toEqual([false]);
    return delivery?.version;
  };
  await deliver();
  // Sending its letter changes nothing that it says.
  await ask(backend, 'letters.send', { sessionId });
  expect(await due()).toEqual([false]);
  expect(await deliver()).toBe(1);
  // Undone, done, undone: the session is as it was before its last change but one, not as it was handed over.
  await ask(backend, 'sessions.update', { sessionId, notes: 'The bar was new.' });
  expect(await deliver()).toBe(2);
  await ask(backend, 'history.undo', { sessionId });
  await ask(backend, 'sessions.update', { sessionId, title: 'Sunday' });
  await ask(backend, 'history.undo', { sessionId });
  expect(await due()).toEqual([true]);
  expect(await deliver()).toBe(3);
  await ask(backend, 'trainees.names', { traineeId, names: 'initials' });
  expect(await due()).toEqual([true]);
  await deliver();
  const box = { leftPx: 10, topPx: 10, widthPx: 40, heightPx: 40 };
  await ask(backend, 'covers.add', { clipId, cover: { kind: 'box', place: { frame: 0, box } } });
  expect(await due()).toEqual([true]);
  await deliver();
  // Another name for once is how it is handed over, not what it says.
  await deliver({ names: 'none' });
});

it('hands over one state of the session, whatever is done to it meanwhile', async () => {
  const { backend, sessionId, clipId } = await flagged();
  const before = { criterion: 'depth', severity: 'correct', reps: 'set', frame: 12, note: 'Later' } as const;
  const { jobIds } = await ask(backend, 'handover.start', { sessionIds: [sessionId], folder: temporaryFolder() });
  const jobId = jobIds[0] ?? '';
  await jobWhen(backend, jobId, ({ progress }) => (progress ?? 0) > 0);
  await ask(backend, 'flags.add', { ...before, clipId });
  await ask(backend, 'sessions.update', { sessionId, title: 'Sunday' });
  expect((await jobEnd(backend, jobId)).state).toBe('done');
  const { deliveries } = await ask(backend, 'handover.list', { sessionId });
  const place = deliveries[0]?.path ?? '';
  for (const name of filesIn(place).filter((each) => /\.(?:html|md|txt|csv|json|jsonld|vtt)$/.test(each))) {
    expect(readFileSync(path.join(place, name), 'utf8'), name).not.toMatch(/Later|Sunday/);
  }
  expect(filesIn(place).filter((name) => name.startsWith('stills/'))).toEqual([
    'stills/mira-set-1-01.jpg',
    'stills/mira-set-1-poster.jpg',
  ]);
  const { sent } = await ask(backend, 'letters.get', { sessionId });
  const { html } = await ask(backend, 'letters.sent', { sessionId, version: sent[0]?.version ?? 0 });
  expect(html).not.toMatch(/Later/);
  expect((await ask(backend, 'handover.sessions', {})).sessions.map(({ due }) => due)).toEqual([true]);
});

it.each(['first', 'initials', 'none'] as const)('tells no more of a name than the trainee wants: %s', async (names) => {
  const { backend, sessionId, traineeId } = await flagged();
  const out = temporaryFolder();
  await ask(backend, 'trainees.names', { traineeId, names });
  const { delivery } = await handOver(backend, sessionId, out, { clips: false });
  const place = delivery?.path ?? '';
  const hidden = names === 'first' ? /Holt/i : /Holt|Mira/i;
  for (const name of ['', ...filesIn(place)]) {
    expect(path.join(path.basename(place), name)).not.toMatch(hidden);
    if (/\.(?:html|md|txt|csv|json|jsonld|ics|vtt|srt|pdf)$/.test(name)) {
      // The letters of a face that is packed into a page spell names by chance.
      const words = readFileSync(path.join(place, name), 'latin1').replace(/base64,[A-Za-z0-9+/=]+/g, '');
      expect(words, name).not.toMatch(hidden);
    }
  }
});

it('names a clip whose footage is gone, and delivers the rest', async () => {
  const { folder, backend, sessionId } = await flagged();
  for (const name of readdirSync(path.join(folder, 'clips'))) rmSync(path.join(folder, 'clips', name));
  const { job, delivery } = await handOver(backend, sessionId, temporaryFolder());
  expect(job.state).toBe('done');
  expect(delivery?.failed).toMatchObject([
    { clip: 'Mira set-1.mp4', sentence: expect.stringMatching(/is not in the library/) },
  ]);
  const place = delivery?.path ?? '';
  expect(readFileSync(path.join(place, 'index.html'), 'utf8')).toContain('This clip is not in the folder');
  expect(filesIn(place)).toContain('letter.pdf');
  expect(filesIn(place).filter((name) => /mp4|jpg/.test(name))).toEqual([]);
});

it('lets nothing of a clip out whose head was to be covered and could not be followed', async () => {
  const { backend, sessionId } = await flagged();
  const { delivery } = await handOver(backend, sessionId, temporaryFolder(), { covering: { head: true } });
  expect(delivery?.failed).toMatchObject([{ sentence: expect.stringMatching(/head/) }]);
  expect(filesIn(delivery?.path ?? '').filter((name) => /mp4|jpg/.test(name))).toEqual([]);
});

it('leaves nothing behind when it is cancelled or can’t write', async () => {
  const { folder, backend, sessionId } = await flagged();
  const out = path.join(temporaryFolder(), 'new', 'place');
  const { jobIds } = await ask(backend, 'handover.start', { sessionIds: [sessionId], folder: out });
  const jobId = jobIds[0] ?? '';
  await jobWhen(backend, jobId, ({ progress }) => (progress ?? 0) > 0);
  await ask(backend, 'jobs.cancel', { jobId });
  expect((await jobEnd(backend, jobId)).state).toBe('cancelled');
  expect(existsSync(path.dirname(out))).toBe(false);
  const file = path.join(temporaryFolder(), 'taken');
  writeFileSync(file, 'mine');
  const { job } = await handOver(backend, sessionId, file);
  expect(job).toMatchObject({ state: 'failed', sentence: expect.stringMatching(/nothing half done/) });
  expect(readFileSync(file, 'utf8')).toBe('mine');
  expect(await ask(backend, 'handover.list', { sessionId })).toMatchObject({ versions: [], deliveries: [] });
  expect(readdirSync(path.join(folder, 'handovers'))).toEqual([]);
});

it('refuses second looks and places of the library', async () => {
  const { folder, backend, sessionId } = await flagged();
  const { sessionId: second } = await ask(backend, 'secondLook.start', { sessionId });
  const start = (sessionIds: string[], place: string) =>
    refusal(backend, 'handover.start', { sessionIds, folder: place });
  const out = temporaryFolder();
  expect((await start([sessionId, second], out)).sentence).toMatch(/second look/i);
  expect((await start([sessionId], path.join(folder, 'handovers', 'x'))).code).toBe('conflict');
  expect(readdirSync(out)).toEqual([]);
});
