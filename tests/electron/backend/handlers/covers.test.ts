import { beforeEach, expect, it } from 'vitest';
import type { Backend } from '../../../../electron/contract/backend.ts';
import { alterLibrary } from '../alterLibrary.ts';
import { undoneAndRedone } from '../undoneAndRedone.ts';
import { ask, dump, hingeFile, historyOf, libraryWithClips, nameInWords, refusal, squatFile } from '../workbench.ts';

let backend: Backend;
let folder: string;
let clipId: string;
let clipIds: readonly string[];
let sessionId: string;
let lastFrame: number;

const box = { leftPx: 100, topPx: 50, widthPx: 80, heightPx: 90 };

beforeEach(async () => {
  ({ folder, backend, clipId, clipIds, sessionId } = await libraryWithClips([squatFile, hingeFile]));
  lastFrame = (await ask(backend, 'clips.frameTable', { clipId })).table.ticks.length - 1;
});

const covers = async () => (await ask(backend, 'review.get', { sessionId })).covers;
const addBox = (frame = 40, of = clipId) =>
  ask(backend, 'covers.add', { clipId: of, cover: { kind: 'box', place: { frame, box } } });

it('covers a box over the whole clip, dark unless asked otherwise, with a place at its frame', async () => {
  const { coverId } = await addBox();
  expect(await covers()).toEqual([
    {
      ...{ coverId, clipId },
      cover: { kind: 'box', firstFrame: 0, lastFrame, look: 'filled', places: [{ frame: 40, box }] },
    },
  ]);
  expect((await historyOf(backend, sessionId)).undo).toBe('Cover: squat-side.mp4');
});

it('puts places in their order, one for each frame, and forgets one again', async () => {
  const { coverId } = await addBox(40);
  const at = (leftPx: number) => ({ ...box, leftPx });
  await ask(backend, 'covers.place', { coverId, frame: 60, box: at(160) });
  await ask(backend, 'covers.place', { coverId, frame: 20, box: at(20) });
  await ask(backend, 'covers.place', { coverId, frame: 40, box: at(45) });
  const places = async () => {
    const [first] = await covers();
    return first?.cover.kind === 'box' ? first.cover.places.map((place) => [place.frame, place.box.leftPx]) : [];
  };
  expect(await places()).toEqual([
    [20, 20],
    [40, 45],
    [60, 160],
  ]);
  await ask(backend, 'covers.removePlace', { coverId, frame: 40 });
  expect(await places()).toEqual([
    [20, 20],
    [60, 160],
  ]);
});

it('lists the covers of each clip, in the order they were made', async () => {
  const [, other = ''] = clipIds;
  const { coverId: third } = await addBox(10, other);
  const { coverId: first } = await addBox();
  const { coverId: second } = await ask(backend, 'covers.add', { clipId, cover: { kind: 'head' }, look: 'mosaic' });
  expect((await covers()).map((each) => [each.clipId, each.coverId, each.cover.kind])).toEqual([
    [clipId, first, 'box'],
    [clipId, second, 'head'],
    [other, third, 'box'],
  ]);
  expect((await covers())[1]?.cover).toEqual({ kind: 'head', firstFrame: 0, lastFrame, look: 'mosaic' });
});

it('takes each act back and does it again', async () => {
  const states = [dump(folder)];
  const done = async (act: Promise<unknown>) => {
    await act;
    states.push(dump(folder));
  };
  const { coverId } = await addBox();
  states.push(dump(folder));
  await done(ask(backend, 'covers.place', { coverId, frame: 60, box: { ...box, leftPx: 200 } }));
  await done(ask(backend, 'covers.update', { coverId, change: { look: 'mosaic', firstFrame: 10, lastFrame: 90 } }));
  await done(ask(backend, 'covers.removePlace', { coverId, frame: 40 }));
  await done(ask(backend, 'covers.add', { clipId, cover: { kind: 'head' } }));
  await done(ask(backend, 'covers.remove', { coverId }));
  expect(new Set(states).size).toBe(states.length);
  const names = (await ask(backend, 'history.list', { sessionId })).map(({ name }) => nameInWords(name));
  for (const name of ['Cover', 'Cover moved', 'Cover changed', 'Cover’s place removed', 'Cover removed']) {
    expect(names).toContain(`${name}: squat-side.mp4`);
  }
  await undoneAndRedone({ backend, folder, sessionId }, states);
});

it('leaves no trace in the history where nothing changes', async () => {
  const { coverId } = await addBox();
  const before = await ask(backend, 'history.list', { sessionId });
  await ask(backend, 'covers.place', { coverId, frame: 40, box });
  await ask(backend, 'covers.update', { coverId, change: { look: 'filled', firstFrame: 0 } });
  expect(await ask(backend, 'history.list', { sessionId })).toEqual(before);
});

it('goes with its clip, and comes back with it', async () => {
  await addBox();
  const before = dump(folder);
  await ask(backend, 'clips.remove', { clipId });
  expect(await covers()).toEqual([]);
  await ask(backend, 'history.undo', { sessionId });
  expect(dump(folder)).toBe(before);
});

it('refuses frames and boxes that are not in the clip, and changes nothing', async () => {
  const { coverId } = await addBox();
  await ask(backend, 'covers.update', { coverId, change: { firstFrame: 10, lastFrame: 90 } });
  const { coverId: headId } = await ask(backend, 'covers.add', { clipId, cover: { kind: 'head' } });
  const before = dump(folder);
  const beside = { ...box, leftPx: -box.widthPx };
  const refused: readonly [string, Promise<{ readonly code: string }>][] = [
    ['a frame past the end', refusal(backend, 'covers.place', { coverId, frame: lastFrame + 1, box })],
    ['a frame before it covers', refusal(backend, 'covers.place', { coverId, frame: 9, box })],
    ['a frame after it covers', refusal(backend, 'covers.place', { coverId, frame: 91, box })],
    ['a head that is placed', refusal(backend, 'covers.place', { coverId: headId, frame: 40, box })],
    ['a second head', refusal(backend, 'covers.add', { clipId, cover: { kind: 'head' } })],
    ['an end before the beginning', refusal(backend, 'covers.update', { coverId, change: { firstFrame: 91 } })],
    ['an end past the clip', refusal(backend, 'covers.update', { coverId, change: { lastFrame: lastFrame + 1 } })],
    ['the only place', refusal(backend, 'covers.removePlace', { coverId, frame: 40 })],
  ];
  for (const [what, problem] of refused) expect([what, (await problem).code]).toEqual([what, 'conflict']);
  expect((await refusal(backend, 'covers.removePlace', { coverId, frame: 41 })).code).toBe('not-found');
  expect((await refusal(backend, 'covers.place', { coverId, frame: 40, box: beside })).code).toBe('bad-request');
  const place = { frame: 40, box: beside };
  expect((await refusal(backend, 'covers.add', { clipId, cover: { kind: 'box', place } })).code).toBe('bad-request');
  expect(dump(folder)).toBe(before);
});

it('takes twenty covers of a clip and no more; other clips have room of their own', async () => {
  for (let count = 0; count < 20; count += 1) await addBox(count);
  const before = dump(folder);
  const { code, sentence } = await refusal(backend, 'covers.add', { clipId, cover: { kind: 'head' } });
  expect([code, sentence]).toEqual(['conflict', expect.stringMatching(/20 covers/)]);
  expect(dump(folder)).toBe(before);
  await addBox(0, clipIds[1]);
});

it('refuses every act on a session that is only read', async () => {
  const { coverId } = await addBox();
  await ask(backend, 'covers.place', { coverId, frame: 60, box });
  alterLibrary(folder, `UPDATE session SET read_only = 1 WHERE id = '${sessionId}'`);
  const before = dump(folder);
  const refused = [
    await refusal(backend, 'covers.add', { clipId, cover: { kind: 'head' } }),
    await refusal(backend, 'covers.place', { coverId, frame: 50, box }),
    await refusal(backend, 'covers.update', { coverId, change: { look: 'mosaic' } }),
    await refusal(backend, 'covers.removePlace', { coverId, frame: 60 }),
    await refusal(backend, 'covers.remove', { coverId }),
  ];
  for (const { sentence } of refused) expect(sentence).toMatch(/came from another coach’s Rackside/);
  expect(dump(folder)).toBe(before);
});
