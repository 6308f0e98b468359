import { mkdtempSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import path from 'node:path';
import { afterAll, beforeAll, beforeEach, describe, expect, it } from 'vitest';
import { openBackend } from '../../../../electron/backend/backend.ts';
import type { Backend } from '../../../../electron/contract/backend.ts';
import type { Params } from '../../../../electron/contract/requests.ts';
import { numberedClip } from '../handover/package/numberedClip.ts';
import { undoneAndRedone } from '../undoneAndRedone.ts';
import { appFolder, ask, backendOn, copyOf, dump, historyOf, refusal, sessionWithClips } from '../workbench.ts';

let backend: Backend;
let folder: string;
let clipId: string;
let sessionId: string;

const root = mkdtempSync(path.join(tmpdir(), 'rackside-framing-'));
const prepared = path.join(root, 'library');

/** A clip of 100 frames of 336 × 240, 25 a second, and one that was filmed after it. */
beforeAll(async () => {
  const long = await numberedClip(root, { name: 'long.mp4', rate: '25' });
  const next = await numberedClip(root, { name: 'next.mp4', rate: '50' });
  const opened = openBackend({ libraryFolder: prepared, appFolder });
  await ask(opened, 'library.create', { contents: 'empty', voice: 'coach', coach: 'Ada Quill' });
  ({ clipId, sessionId } = await sessionWithClips(opened, [long, next]));
  await opened.close();
});

afterAll(() => rmSync(root, { recursive: true, force: true }));

beforeEach(() => {
  folder = copyOf(prepared);
  backend = backendOn(folder);
});

const session = async () => {
  const { review, covers, media } = await ask(backend, 'review.get', { sessionId });
  const [entry] = review.entries;
  if (!entry) throw new Error('The session lost its entry.');
  return { entry, covers, media };
};
const clip = async () => {
  const found = (await session()).entry.clips.find(({ id }) => id === clipId);
  if (!found) throw new Error('The clip is gone.');
  return found;
};
const frame = (change: Params<'clips.frame'>['change']) => ask(backend, 'clips.frame', { clipId, change });
const flag = (at: number, reps: 'set' | number[], of = clipId) =>
  ask(backend, 'flags.add', { clipId: of, criterion: 'depth', severity: 'adjust', frame: at, reps });
async function markRep(start: number, end: number): Promise<void> {
  await ask(backend, 'reps.mark', { clipId, edge: 'start', frame: start });
  await ask(backend, 'reps.mark', { clipId, edge: 'stretchedEnd', frame: Math.round((start + end) / 2) });
  await ask(backend, 'reps.mark', { clipId, edge: 'end', frame: end });
}

describe('a picture that is turned', () => {
  const box = { leftPx: 100, topPx: 50, widthPx: 80, heightPx: 90 };

  beforeEach(async () => {
    await ask(backend, 'drawings.add', {
      clipId,
      drawn: { shape: 'text', points: [{ x: 10, y: 20 }], text: 'here' },
      frame: 3,
    });
    await ask(backend, 'covers.add', { clipId, cover: { kind: 'box', place: { frame: 0, box } } });
    await ask(backend, 'measures.setUp', { clipId, change: { facing: 'left', knownLength: null } });
    await frame({ crop: { leftPx: 0, topPx: 0, widthPx: 100, heightPx: 60 } });
  });

  it('takes everything along that was placed on it, in one act', async () => {
    const before = dump(folder);
    await frame({ turnDeg: 90 });
    const after = dump(folder);
    const { framing, drawings, setUp } = await clip();
    expect(framing).toEqual({
      turnDeg: 90,
      mirrored: false,
      brightness: 1,
      crop: { leftPx: 180, topPx: 0, widthPx: 60, heightPx: 100 },
    });
    expect(drawings?.[0]?.points).toEqual([{ x: 220, y: 10 }]);
    expect(setUp?.facing).toBe(null);
    const { covers, media } = await session();
    expect(covers[0]?.cover).toMatchObject({
      places: [{ frame: 0, box: { leftPx: 100, topPx: 100, widthPx: 90, heightPx: 80 } }],
    });
    expect(media[0]).toMatchObject({ width: 240, height: 336 });
    expect((await historyOf(backend, sessionId)).undo).toBe('Turned: long.mp4');
    await undoneAndRedone({ backend, folder, sessionId }, [before, after]);
  });

  it('is as it was after four turns', async () => {
    const before = dump(folder);
    await ask(backend, 'measures.setUp', { clipId, change: { facing: null } });
    const unfaced = dump(folder);
    for (const turnDeg of [90, 180, 270, 0] as const) await frame({ turnDeg });
    expect(dump(folder)).toBe(unfaced);
    expect(unfaced).not.toBe(before);
  });
});

describe('mirror, crop and light', () => {
  it('move nothing that is kept', async () => {
    await ask(backend, 'covers.add', {
      clipId,
      cover: { kind: 'box', place: { frame: 0, box: { leftPx: 1, topPx: 2, widthPx: 30, heightPx: 40 } } },
    });
    const { covers } = await session();
    await frame({ mirrored: true, brightness: 1.6, crop: { leftPx: 20, topPx: 30, widthPx: 200, heightPx: 100 } });
    expect((await session()).covers).toEqual(covers);
    expect(await clip()).toMatchObject({ framing: { mirrored: true, brightness: 1.6 } });
    await frame({ mirrored: false, brightness: 1, crop: null });
    expect(await clip()).not.toHaveProperty('framing');
  });

  it('show no more than there is', async () => {
    const asked = { crop: { leftPx: 200, topPx: 0, widthPx: 200, heightPx: 100 } };
    expect(await refusal(backend, 'clips.frame', { clipId, change: asked })).toMatchObject({
      code: 'bad-request',
      sentence: 'The crop goes beyond the picture, so nothing was changed; keep it within the picture.',
    });
  });
});

describe('a section of a clip', () => {
  it('keeps the reps that start in it, and comes back whole by undo', async () => {
    await markRep(5, 15);
    await markRep(20, 40);
    await markRep(50, 70);
    const before = dump(folder);
    await ask(backend, 'clips.trim', { clipId, section: { firstFrame: 18, lastFrame: 60 } });
    const { section, reps, facts } = await clip();
    expect(section).toEqual({ from: { frame: 18, ticks: 18 * 3600 }, to: { frame: 60, ticks: 60 * 3600 } });
    expect(facts?.frames).toBe(100);
    expect(reps).toEqual([
      {
        index: 1,
        start: { frame: 20, ticks: 72_000 },
        stretchedEnd: { frame: 30, ticks: 108_000 },
        end: { frame: 40, ticks: 144_000 },
      },
      { index: 2, start: { frame: 50, ticks: 180_000 }, end: { frame: 60, ticks: 216_000 } },
    ]);
    await undoneAndRedone({ backend, folder, sessionId }, [before, dump(folder)]);
  });

  it('is refused where something outside of it was judged, and nothing is lost', async () => {
    await markRep(5, 15);
    await flag(10, [1]);
    const before = dump(folder);
    const section = { firstFrame: 18, lastFrame: 60 };
    expect((await refusal(backend, 'clips.trim', { clipId, section })).sentence).toBe(
      'Some flags or ticks lie outside the section, so “long.mp4” was not trimmed; move or remove them first.',
    );
    expect(dump(folder)).toBe(before);
  });

  it('takes no flags outside of it, and shows all of the footage again when asked', async () => {
    await ask(backend, 'clips.trim', { clipId, section: { firstFrame: 18, lastFrame: 60 } });
    const outside = { clipId, criterion: 'depth', severity: 'adjust', reps: 'set', frame: 61 } as const;
    expect((await refusal(backend, 'flags.add', outside)).sentence).toBe(
      'Frame 61 lies outside the section that “long.mp4” shows, so nothing was marked; choose a moment within it.',
    );
    await ask(backend, 'clips.trim', { clipId, section: null });
    expect(await clip()).not.toHaveProperty('section');
    await flag(61, 'set');
  });

  it.each([
    [{ firstFrame: 40, lastFrame: 40 }, 'sectionEndsEarly'],
    [{ firstFrame: 40, lastFrame: 100 }, 'noFrame'],
  ])('is not %j', async (section, id) => {
    expect((await refusal(backend, 'clips.trim', { clipId, section })).message.id).toBe(id);
  });
});

describe('a clip of three sets that is split', () => {
  beforeEach(async () => {
    for (const [start, end] of [
      [2, 10],
      [12, 20],
      [40, 48],
      [50, 58],
      [80, 90],
    ] as const)
      await markRep(start, end);
  });

  const split = (cuts: number[]) => ask(backend, 'clips.split', { clipId, cuts });

  it('becomes three clips on one footage, each with its section and its reps, in one act', async () => {
    const before = dump(folder);
    const { clipIds } = await split([30, 70]);
    const { entry, media } = await session();
    expect(entry.clips.slice(0, 3).map(({ id }) => id)).toEqual(clipIds);
    expect(clipIds[0]).toBe(clipId);
    expect(
      entry.clips
        .slice(0, 3)
        .map(({ name, section, reps }) => [name, section?.from.frame, section?.to.frame, reps.length]),
    ).toEqual([
      ['long.mp4 (1)', 0, 29, 2],
      ['long.mp4 (2)', 30, 69, 2],
      ['long.mp4 (3)', 70, 99, 1],
    ]);
    expect(media.map(({ ready }) => ready)).toEqual([true, true, true, true]);
    await undoneAndRedone({ backend, folder, sessionId }, [before, dump(folder)]);
  });

  it('gives each part its flags, ticks, drawings and covers', async () => {
    await flag(5, [1]);
    await flag(45, [3, 4]);
    await flag(41, 'set');
    // On reps of two sets: told in both, each on its own reps.
    await flag(14, [2, 5]);
    await ask(backend, 'ticks.set', { clipId, criterion: 'barPath', reps: [1, 4], fine: true });
    await ask(backend, 'ticks.set', { clipId, criterion: 'headPosition', reps: 'set', fine: true });
    await ask(backend, 'drawings.add', {
      clipId,
      drawn: { shape: 'text', points: [{ x: 9, y: 9 }], text: 'deep' },
      frame: 44,
      lastFrame: 90,
    });
    const box = { leftPx: 1, topPx: 2, widthPx: 30, heightPx: 40 };
    await ask(backend, 'covers.add', { clipId, cover: { kind: 'box', place: { frame: 0, box } } });
    const before = dump(folder);
    const { clipIds } = await split([30, 70]);
    const { entry, covers } = await session();
    const [one, two, three] = clipIds;
    expect(entry.flags.map(({ clip: of, at, reps }) => [of, 'frame' in at ? at.frame : null, reps])).toEqual([
      [one, 5, [1]],
      [one, 14, [2]],
      [two, 41, 'set'],
      [two, 45, [1, 2]],
      [three, 80, [1]],
    ]);
    expect(entry.ticks.filter(({ criterion }) => criterion === 'barPath')).toEqual([
      { clip: one, criterion: 'barPath', reps: [1] },
      { clip: two, criterion: 'barPath', reps: [2] },
    ]);
    expect(entry.ticks.filter(({ reps }) => reps === 'set').map((tick) => tick.clip)).toEqual([one, two, three]);
    expect(entry.clips.slice(0, 3).map(({ drawings = [] }) => drawings.map(({ from, to }) => [from, to]))).toEqual([
      [],
      [
        [
          { frame: 44, ticks: 44 * 3600 },
          { frame: 69, ticks: 69 * 3600 },
        ],
      ],
      [],
    ]);
    expect(covers.map((cover) => cover.clipId)).toEqual([one, two, three]);
    await undoneAndRedone({ backend, folder, sessionId }, [before, dump(folder)]);
  });

  it('makes room for its parts before the clip that came after it', async () => {
    await split([30]);
    expect((await session()).entry.clips.map(({ name }) => name)).toEqual(['long.mp4 (1)', 'long.mp4 (2)', 'next.mp4']);
  });

  it('stays one where there is nothing to cut', async () => {
    expect((await refusal(backend, 'clips.split', { clipId, cuts: [0] })).message.id).toBe('nothingToSplit');
  });
});

describe('a second look', () => {
  it('shows the clip as it is framed', async () => {
    await frame({ turnDeg: 180, mirrored: true, brightness: 2 });
    await ask(backend, 'clips.trim', { clipId, section: { firstFrame: 10, lastFrame: 60 } });
    await flag(20, 'set');
    const look = await ask(backend, 'secondLook.start', { sessionId });
    const { review } = await ask(backend, 'review.get', { sessionId: look.sessionId });
    expect(review.entries[0]?.clips[0]).toMatchObject({
      framing: { turnDeg: 180, mirrored: true, brightness: 2 },
      section: { from: { frame: 10 }, to: { frame: 60 } },
    });
  });
});
