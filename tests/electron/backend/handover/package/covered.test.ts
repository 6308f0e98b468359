import { readFileSync } from 'node:fs';
import path from 'node:path';
import Database from 'better-sqlite3';
import { expect, it } from 'vitest';
import { currentMethods } from '../../../../../electron/backend/measure/methods.ts';
import { openLibrary } from '../../../../../electron/backend/store/library.ts';
import { writeRecordedParts } from '../../../../../electron/backend/store/recordings.ts';
import type { Backend } from '../../../../../electron/contract/backend.ts';
import type { Params } from '../../../../../electron/contract/requests.ts';
import { appFolder, ask, backendOn, jobEnd, preparedLibrary, temporaryFolder } from '../../workbench.ts';
import { boxAround, frameCount, lookable, marked, markedBody, markedClip, picturesOf, size } from './markedClip.ts';

type Options = NonNullable<Params<'handover.start'>['options']>;

/** The frames that are remarked on: the first, one between two places, the turn, the last. */
const remarked = [0, 13, 25, 49];

/** A library with two clips of the mark, flagged in one rep each; open. */
async function flagged() {
  const footage = temporaryFolder();
  const files = [await markedClip(footage, 'set-1.mp4'), await markedClip(footage, 'set-2.mov')];
  const { folder, clipIds, sessionId } = await preparedLibrary(files);
  const backend = backendOn(folder);
  for (const clipId of clipIds) {
    await ask(backend, 'reps.mark', { clipId, edge: 'start', frame: 8 });
    await ask(backend, 'reps.mark', { clipId, edge: 'end', frame: 42 });
    const flag = { clipId, criterion: 'depth', severity: 'correct', note: 'Lower' } as const;
    await ask(backend, 'flags.add', { ...flag, reps: [1], frame: 20 });
    for (const frame of remarked) await ask(backend, 'flags.add', { ...flag, reps: 'set', frame });
  }
  const [clipId = '', otherId = ''] = clipIds;
  return { folder, backend, sessionId, clipId, otherId };
}

async function coverMark(backend: Backend, clipId: string, look: 'filled' | 'mosaic' = 'filled'): Promise<string> {
  const cover = { kind: 'box', place: { frame: 25, box: boxAround(25) } } as const;
  const { coverId } = await ask(backend, 'covers.add', { clipId, cover, look });
  for (const frame of [0, 49]) await ask(backend, 'covers.place', { coverId, frame, box: boxAround(frame) });
  return coverId;
}

async function handOver(backend: Backend, sessionId: string, options: Options = {}) {
  const start = { sessionIds: [sessionId], folder: temporaryFolder(), options };
  const { jobIds } = await ask(backend, 'handover.start', start);
  const { id, state } = await jobEnd(backend, jobIds[0] ?? '');
  const { deliveries } = await ask(backend, 'handover.list', { sessionId });
  const delivery = deliveries.find(({ jobId }) => jobId === id);
  if (delivery === undefined) throw new Error(`Nothing was handed over: ${state}`);
  return delivery;
}

/** How many pictures of each file show the mark, and how many there are. */
async function shownIn(place: string) {
  const counts = lookable(place).map(async (name) => {
    const pictures = await picturesOf(path.join(place, name));
    return { name, pictures: pictures.length, shown: pictures.filter((picture) => marked(picture) > 0).length };
  });
  return Promise.all(counts);
}

it('shows what is covered in no picture of clip, loop or still', async () => {
  const { backend, sessionId, clipId } = await flagged();
  await coverMark(backend, clipId);
  const { path: place, failed } = await handOver(backend, sessionId, { atNotes: { do: 'freeze', lastsS: 0.4 } });
  expect(failed).toEqual([]);
  const files = await shownIn(place);
  const of = (slug: string) => files.filter(({ name }) => path.basename(name).startsWith(slug));
  // The clip by itself and with notes, the loop, the picture before it plays, a still of each of the five remarks; nothing else is to
  // be looked at.
  expect([of('set-1').length, of('set-2').length, files.length]).toEqual([9, 9, 18]);
  expect(of('set-1').filter(({ shown }) => shown > 0)).toEqual([]);
  // The same footage, uncovered, shows it in all of them: the mark would have been found.
  for (const { name, pictures, shown } of of('set-2')) {
    const card = name === path.join('clips', 'set-2.mp4') ? 50 : 0;
    expect([name, shown]).toEqual([name, pictures - card]);
  }
});

/** Largest and smallest grey of a picture within a box, three pixels inwards of its rim. */
function greysIn(rgb: Buffer, { leftPx, topPx, widthPx, heightPx }: ReturnType<typeof boxAround>): [number, number] {
  const greys: number[] = [];
  for (let row = topPx + 3; row < topPx + heightPx - 3; row += 1) {
    for (let column = leftPx + 3; column < leftPx + widthPx - 3; column += 1) {
      const at = 3 * (row * size.width + column);
      greys.push(((rgb[at] ?? 0) + (rgb[at + 1] ?? 0) + (rgb[at + 2] ?? 0)) / 3);
    }
  }
  return [Math.min(...greys), Math.max(...greys)];
}

it('is dark where the cover is at the first frame, at a place, between two, and at the last frame', async () => {
  const { backend, sessionId, clipId } = await flagged();
  await coverMark(backend, clipId);
  const { path: place } = await handOver(backend, sessionId, { atNotes: { do: 'playOn' }, loops: false });
  const pictures = await picturesOf(path.join(place, 'clips', 'set-1.mp4'));
  // Two seconds of the card, then frame for frame.
  expect(pictures).toHaveLength(50 + frameCount);
  for (const frame of [0, 13, 25, 38, 49]) {
    const [least, most] = greysIn(pictures[50 + frame] ?? Buffer.alloc(0), boxAround(frame));
    expect([frame, least < 20, most < 40]).toEqual([frame, true, true]);
  }
});

it('covers within its frames only, besides what one handover asks for', async () => {
  const { backend, sessionId, clipId } = await flagged();
  const coverId = await coverMark(backend, clipId);
  await ask(backend, 'covers.update', { coverId, change: { firstFrame: 10, lastFrame: 30 } });
  const corner = { leftPx: 166, topPx: 4, widthPx: 30, heightPx: 30 };
  const options: Options = { atNotes: { do: 'playOn' }, loops: false, covering: { boxes: [corner] } };
  const { path: place } = await handOver(backend, sessionId, options);
  const pictures = (await picturesOf(path.join(place, 'clips', 'set-1.mp4'))).slice(50);
  const shown = pictures.flatMap((picture, frame) => (marked(picture) > 0 ? [frame] : []));
  const outside = Array.from({ length: frameCount }, (_, frame) => frame).filter((frame) => frame < 10 || frame > 30);
  expect(shown).toEqual(outside);
  for (const picture of pictures) expect(greysIn(picture, corner)[1]).toBeLessThan(40);
});

it('is squares of one shade each where asked', async () => {
  const { backend, sessionId, clipId } = await flagged();
  await coverMark(backend, clipId, 'mosaic');
  const { path: place } = await handOver(backend, sessionId, { atNotes: { do: 'playOn' }, loops: false });
  // A quarter of the box's side, at its corner, where footage and mark meet.
  const { leftPx, topPx } = boxAround(20);
  const square = { leftPx: leftPx - 3, topPx: topPx - 3, widthPx: 13, heightPx: 13 };
  const spread = async (name: string) => {
    const pictures = await picturesOf(path.join(place, 'clips', name));
    const [least, most] = greysIn(pictures[50 + 20] ?? Buffer.alloc(0), square);
    return most - least;
  };
  expect(await spread('set-1.mp4')).toBeLessThan(25);
  expect(await spread('set-2.mp4')).toBeGreaterThan(40);
});

it('sends a covered clip as a copy with its covers, frame for frame, and never its original', async () => {
  const { backend, sessionId, clipId } = await flagged();
  await coverMark(backend, clipId);
  const { path: place, failed } = await handOver(backend, sessionId, { originals: true, loops: false });
  expect(failed).toEqual([]);
  const names = lookable(place);
  expect(names.filter((name) => name.startsWith('originals'))).toEqual([path.join('originals', 'set-2.mp4')]);
  const files = await shownIn(place);
  expect(files.filter(({ name, shown }) => /set-1/.test(name) && shown > 0)).toEqual([]);
  const copy = files.find(({ name }) => name === path.join('clips', 'set-1-plain.mp4'));
  expect(copy?.pictures).toBe(frameCount);
  const page = readFileSync(path.join(place, 'index.html'), 'utf8');
  expect(page).toContain('src="clips/set-1-plain.mp4"');
  expect(page).not.toContain('originals/set-1');
  expect(readFileSync(path.join(place, 'review.json'), 'utf8')).not.toContain('originals/set-1');
});

it('is a new version once something is covered, and the same one until that changes', async () => {
  const { backend, sessionId, clipId } = await flagged();
  const few: Options = { clips: false };
  expect((await handOver(backend, sessionId, few)).version).toBe(1);
  await ask(backend, 'covers.add', { clipId, cover: { kind: 'box', place: { frame: 0, box: boxAround(0) } } });
  expect((await handOver(backend, sessionId, few)).version).toBe(2);
  expect((await handOver(backend, sessionId, few)).version).toBe(2);
});

/** Keeps joints of the marked lifter for the footage of a clip, as measuring would. */
function keepJoints(folder: string, clipId: string): void {
  const library = openLibrary(folder, appFolder);
  if (!library) throw new Error('There is no library.');
  const database = new Database(path.join(folder, 'rackside.sqlite'), { readonly: true });
  const row = database.prepare('SELECT footage_id AS id FROM clip WHERE id = ?').get(clipId) as { id: string };
  database.close();
  const frames = Array.from({ length: frameCount }, (_, frame) => markedBody(frame));
  const method = currentMethods.joints;
  const found = { method, everyFrames: 1, frames };
  writeRecordedParts(library.writing, row.id, [], { joints: { method, found, warnings: [] } });
  library.close();
}

it('follows the head by the joints, and lets nothing of a clip out whose head can’t be followed', async () => {
  const { folder, backend, sessionId, clipId, otherId } = await flagged();
  for (const id of [clipId, otherId]) await ask(backend, 'covers.add', { clipId: id, cover: { kind: 'head' } });
  await backend.close();
  keepJoints(folder, clipId);
  const again = backendOn(folder);
  const { path: place, failed } = await handOver(again, sessionId, { loops: true });
  expect(failed).toMatchObject([{ clip: 'set-2.mov', sentence: expect.stringMatching(/head in “set-2.mov”/) }]);
  const files = await shownIn(place);
  expect(files.map(({ name }) => name).filter((name) => /set-2/.test(name))).toEqual([]);
  expect(files).toHaveLength(9);
  expect(files.filter(({ shown }) => shown > 0)).toEqual([]);
});
