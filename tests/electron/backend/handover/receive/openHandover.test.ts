import { createHash } from 'node:crypto';
import { createWriteStream, readdirSync, readFileSync, rmSync, symlinkSync, writeFileSync } from 'node:fs';
import path from 'node:path';
import { pipeline } from 'node:stream/promises';
import { expect, it, onTestFinished } from 'vitest';
import yazl from 'yazl';
import { openBackend } from '../../../../../electron/backend/backend.ts';
import type { Params, RequestName } from '../../../../../electron/contract/requests.ts';
import {
  appFolder,
  ask,
  dump,
  jobEnd,
  newLibrary,
  preparedLibrary,
  refusal,
  temporaryFolder,
} from '../../workbench.ts';
import { shortClip } from '../shortClip.ts';

/** A handover with its original, as another desk wrote it, and the review it was written from. */
async function handedOver({ zip, clips = false }: { readonly zip: boolean; readonly clips?: boolean }) {
  const { folder, sessionId, clipId } = await preparedLibrary([await shortClip(temporaryFolder())]);
  const backend = openBackend({ libraryFolder: folder, appFolder });
  onTestFinished(() => backend.close());
  await ask(backend, 'reps.mark', { clipId, edge: 'start', frame: 2 });
  await ask(backend, 'flags.add', {
    clipId,
    criterion: 'depth',
    severity: 'adjust',
    reps: [1],
    frame: 8,
    note: 'Lower',
  });
  const [from, to] = [
    { x: 1, y: 2 },
    { x: 30, y: 40 },
  ];
  await ask(backend, 'drawings.add', { clipId, drawn: { shape: 'line', points: [from, to] }, frame: 3, lastFrame: 9 });
  const out = temporaryFolder();
  const options = { originals: true, clips, zip };
  const { jobIds } = await ask(backend, 'handover.start', { sessionIds: [sessionId], folder: out, options });
  await jobEnd(backend, jobIds[0] ?? '');
  const { review } = await ask(backend, 'review.get', { sessionId });
  return { place: path.join(out, readdirSync(out)[0] ?? ''), review, backend, sessionId };
}

async function takenIn(place: string) {
  const folder = temporaryFolder();
  const backend = await newLibrary(folder);
  const { sessionId, jobId } = await ask(backend, 'reviews.import', { path: place });
  return { folder, backend, sessionId, job: await jobEnd(backend, jobId) };
}

it.each([true, false])(
  'shows another desk’s review with its footage, and refuses every act on it (zip: %s)',
  async (zip) => {
    const { place, review } = await handedOver({ zip });
    const { folder, backend, sessionId, job } = await takenIn(place);
    expect(job).toMatchObject({ state: 'done' });
    const { review: taken, media } = await ask(backend, 'review.get', { sessionId });
    expect(taken).toMatchObject({ coach: 'Ada Quill', trainee: review.trainee, session: { date: '2026-03-04' } });
    const [entry] = taken.entries;
    const [clip] = entry?.clips ?? [];
    const framesOf = (moment: unknown) => (moment as { readonly frame: number }).frame;
    expect(clip?.reps.map(({ start }) => framesOf(start))).toEqual([2]);
    expect(clip?.drawings?.map(({ from, to }) => [framesOf(from), framesOf(to)])).toEqual([[3, 9]]);
    expect(entry?.flags).toMatchObject([{ criterion: 'depth', severity: 'adjust', reps: [1], note: 'Lower' }]);
    expect(entry?.flags.map(({ at }) => framesOf(at))).toEqual([8]);
    expect(media).toMatchObject([{ ready: true, frames: 24 }]);
    expect(await ask(backend, 'handover.list', { sessionId })).toMatchObject({ readOnly: true });
    const [clipId = ''] = [clip?.id];
    const before = dump(folder);
    const refused = async <N extends RequestName>(name: N, params: Params<N>) =>
      expect((await refusal(backend, name, params)).sentence).toMatch(/came from another coach’s Rackside/);
    await refused('flags.add', { clipId, criterion: 'depth', severity: 'stop', reps: 'set', frame: 1 });
    await refused('reps.mark', { clipId, edge: 'start', frame: 20 });
    await refused('sessions.update', { sessionId, notes: 'mine' });
    await refused('clips.update', { clipId, change: { name: 'mine' } });
    await refused('letters.send', { sessionId });
    await refused('letters.style', { sessionId, style: { tone: 'warm' } });
    await refused('handover.start', { sessionIds: [sessionId], folder: temporaryFolder() });
    expect(dump(folder)).toBe(before);
    expect(readdirSync(path.join(folder, 'handovers'))).toEqual([]);
    expect(await ask(backend, 'library.verify', {})).toMatchObject({ sound: true });
    const { sessionId: own } = await ask(backend, 'secondLook.start', { sessionId });
    await ask(backend, 'sessions.update', { sessionId: own, notes: 'mine' });
  },
);

it('takes in what a desk kept of a handover with originals: all but its footage', async () => {
  const { backend: first, sessionId: handed } = await handedOver({ zip: false });
  const kept = path.join(temporaryFolder(), 'kept.zip');
  await ask(first, 'handover.writeKept', { sessionId: handed, version: 1, path: kept });
  const { backend, sessionId, job } = await takenIn(kept);
  expect(job).toMatchObject({ state: 'done' });
  const { review, media } = await ask(backend, 'review.get', { sessionId });
  expect(review.entries[0]?.flags).toMatchObject([{ criterion: 'depth', reps: [1], note: 'Lower' }]);
  expect(media).toMatchObject([{ ready: false }]);
});

it('takes nothing in of which a clip is missing and another is there', async () => {
  const { place } = await handedOver({ zip: false, clips: true });
  for (const name of readdirSync(path.join(place, 'originals')).filter((each) => each.endsWith('.mp4'))) {
    rmSync(path.join(place, 'originals', name));
  }
  const { backend, job } = await takenIn(place);
  expect(job).toMatchObject({ state: 'failed', sentence: expect.stringMatching(/missing or cut short/) });
  expect((await ask(backend, 'desk.sessions', {})).sessions).toEqual([]);
});

type Inside = { readonly name: string; readonly content: Uint8Array; readonly mode?: number };

async function zipped(files: readonly Inside[], rename: readonly (readonly [string, string])[] = []): Promise<string> {
  const file = path.join(temporaryFolder(), 'handover.zip');
  const zip = new yazl.ZipFile();
  for (const { name, content, mode = 0o100644 } of files) zip.addBuffer(Buffer.from(content), name, { mode });
  zip.end();
  await pipeline(zip.outputStream, createWriteStream(file));
  let bytes = readFileSync(file, 'latin1');
  for (const [from, to] of rename) bytes = bytes.replaceAll(from, to);
  writeFileSync(file, bytes, 'latin1');
  return file;
}

const bytesOf = (value: unknown) => Buffer.from(typeof value === 'string' ? value : JSON.stringify(value));

/** The two files that make a handover of a review, sound in themselves. */
function soundFiles(clipPath?: string): readonly Inside[] {
  const review = bytesOf({
    format: 'rackside-review',
    version: 4,
    trainee: { name: 'Mira Holt' },
    session: { date: '2026-03-04' },
    entries: [
      { id: 'e', exercise: 'back-squat', clips: [{ id: 'c', name: 'Set 1', ...(clipPath && { path: clipPath }) }] },
    ],
  });
  const sha256 = createHash('sha256').update(review).digest('hex');
  const manifest = bytesOf({
    ...{ format: 'rackside-handover', version: 1, handover: 1, handedAt: 'then', date: '2026-03-04' },
    ...{ rubric: { id: 'rackside', version: 1 }, language: 'en', names: 'full', failed: [] },
    files: [{ name: 'review.json', bytes: review.length, sha256 }],
  });
  return [
    { name: 'review.json', content: review },
    { name: 'manifest.json', content: manifest },
  ];
}

const nothing = new Uint8Array(0);

it('takes a sound zip in, so that what follows is refused for what it is', async () => {
  expect((await takenIn(await zipped(soundFiles()))).job.state).toBe('done');
});

it.each<[string, () => Promise<string>]>([
  [
    'leads out of its folder',
    () => zipped([...soundFiles(), { name: 'aa/evil.txt', content: bytesOf('x') }], [['aa/evil', '../evil']]),
  ],
  [
    'leads to the root',
    () => zipped([...soundFiles(), { name: 'a/evil.txt', content: bytesOf('x') }], [['a/evil', '//evil']]),
  ],
  [
    'leads to a drive',
    () => zipped([...soundFiles(), { name: 'C_/evil.txt', content: bytesOf('x') }], [['C_/evil', 'C:/evil']]),
  ],
  ['holds a link', () => zipped([...soundFiles(), { name: 'link', content: bytesOf('/etc'), mode: 0o120777 }])],
  ['grows without end', () => zipped([...soundFiles(), { name: 'bomb.txt', content: new Uint8Array(80_000_000) }])],
  [
    'holds too many files',
    () => zipped(Array.from({ length: 10_001 }, (_, place) => ({ name: `f${place}`, content: nothing }))),
  ],
  [
    'holds a file twice',
    () => zipped([...soundFiles(), { name: 'review.jsom', content: nothing }], [['jsom', 'json']]),
  ],
  [
    'holds a changed review',
    () => zipped(soundFiles().map((file) => ({ ...file, content: bytesOf(`${file.content} `) }))),
  ],
  ['holds no review', () => zipped(soundFiles().slice(1))],
  ['holds no list', () => zipped(soundFiles().slice(0, 1))],
  ['names footage of this machine', () => zipped(soundFiles('/etc/hostname'))],
  ['names footage further up', () => zipped(soundFiles('../../secret.mp4'))],
  [
    'holds a review far too long',
    async () => zipped([{ name: 'manifest.json', content: Buffer.alloc(6_000_000, 'ab{') }]),
  ],
  [
    'is no zip',
    async () => {
      const file = path.join(temporaryFolder(), 'letter.zip');
      writeFileSync(file, 'Dear Mira');
      return file;
    },
  ],
  [
    'is cut off',
    async () => {
      const file = await zipped(soundFiles());
      writeFileSync(file, readFileSync(file).subarray(0, 300));
      return file;
    },
  ],
])('refuses a handover that %s, and writes nothing', async (_, make) => {
  const place = await make();
  const folder = temporaryFolder();
  const backend = await newLibrary(folder);
  const [before, files] = [dump(folder), readdirSync(folder, { recursive: true })];
  const { code, sentence } = await refusal(backend, 'reviews.import', { path: place });
  expect(code).toBe('bad-review');
  expect(sentence).toMatch(/nothing was imported|was not read/);
  expect(sentence).not.toContain('\n');
  expect(dump(folder)).toBe(before);
  expect(readdirSync(folder, { recursive: true })).toEqual(files);
});

it('refuses a folder whose review is a link, and one without a list', async () => {
  const { place } = await handedOver({ zip: false });
  const backend = await newLibrary();
  const review = path.join(place, 'review.json');
  const elsewhere = path.join(temporaryFolder(), 'review.json');
  writeFileSync(elsewhere, readFileSync(review));
  rmSync(review);
  symlinkSync(elsewhere, review);
  expect((await refusal(backend, 'reviews.import', { path: place })).sentence).toMatch(/link/);
  rmSync(path.join(place, 'manifest.json'));
  expect((await refusal(backend, 'reviews.import', { path: place })).sentence).toMatch(/no list of its files/);
  expect((await refusal(backend, 'reviews.import', { path: path.join(place, 'gone') })).code).toBe('not-found');
});

it('takes nothing in when a clip was changed on its way', async () => {
  const { place } = await handedOver({ zip: false });
  const [name = ''] = readdirSync(path.join(place, 'originals')).filter((each) => each.endsWith('.mp4'));
  const file = path.join(place, 'originals', name);
  const bytes = readFileSync(file);
  bytes[bytes.length >> 1] = (bytes[bytes.length >> 1] ?? 0) ^ 0xff;
  writeFileSync(file, bytes);
  const { folder, backend, job } = await takenIn(place);
  expect(job).toMatchObject({ state: 'failed', sentence: expect.stringMatching(/changed on its way/) });
  expect((await ask(backend, 'desk.sessions', {})).sessions).toEqual([]);
  expect(readdirSync(path.join(folder, 'handovers'))).toEqual([]);
  expect(readdirSync(path.join(folder, 'clips'))).toEqual([]);
});
