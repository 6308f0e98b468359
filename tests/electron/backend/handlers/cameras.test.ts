import { mkdtempSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import path from 'node:path';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import type { Backend } from '../../../../electron/contract/backend.ts';
import { changeOnDisk } from '../changeOnDisk.ts';
import { ask, dump, historyOf, refusal } from '../workbench.ts';
import { filmedLibrary, laterByS, twoCameras } from './twoCameras.ts';

const fps = 30;
const shift = laterByS * fps;

async function markReps(backend: Backend, clipId: string, starts: readonly number[]): Promise<void> {
  for (const frame of starts) {
    await ask(backend, 'reps.mark', { clipId, edge: 'start', frame });
    await ask(backend, 'reps.mark', { clipId, edge: 'end', frame: frame + 25 });
  }
}

const room = mkdtempSync(path.join(tmpdir(), 'rackside-cameras-'));
let silent: Awaited<ReturnType<typeof filmedLibrary>>;
beforeAll(async () => {
  silent = await filmedLibrary(room, 'silent');
});
afterAll(() => rmSync(room, { recursive: true, force: true }));

describe('two cameras of one set', () => {
  it('are laid together by their sound to within a frame, and share the reps of the one that leads', async () => {
    const { backend, leadId, clipId, clips, starts } = twoCameras(await filmedLibrary(room, 'heard'));
    await markReps(backend, leadId, [60, 100, 140]);
    expect(await ask(backend, 'cameras.pair', { leadId, clipId })).toEqual({ by: 'sound' });
    const offsetUs = (await clips()).find(({ id }) => id === clipId)?.sameSet?.offsetUs ?? 0;
    expect(Math.abs(offsetUs + laterByS * 1e6)).toBeLessThan(1e6 / fps);
    const there = await starts(clipId);
    expect(there).toHaveLength(3);
    there.forEach((frame, place) => {
      expect(Math.abs(frame - ([60, 100, 140][place] ?? 0) + shift)).toBeLessThanOrEqual(1);
    });
  });

  it('are laid together by the turning points of their reps where nothing is heard', async () => {
    const { backend, leadId, clipId, starts } = twoCameras(silent);
    await markReps(backend, leadId, [60, 100, 160]);
    await markReps(backend, clipId, [60 - shift, 100 - shift + 1, 160 - shift]);
    expect(await ask(backend, 'cameras.pair', { leadId, clipId })).toEqual({ by: 'reps' });
    expect(await starts(leadId)).toEqual([60, 100, 160]);
    expect(await starts(clipId)).toEqual([60 - shift, 100 - shift, 160 - shift]);
  });

  it('are laid together by two frames that a person chose, and judged as one set', async () => {
    const { backend, folder, sessionId, leadId, clipId } = twoCameras(silent);
    await markReps(backend, leadId, [60, 100]);
    const before = dump(folder);
    await ask(backend, 'cameras.pair', { leadId, clipId, by: { how: 'frames', leadFrame: 90, frame: 90 - shift } });
    expect((await historyOf(backend, sessionId)).undo).toBe('Two cameras paired: side.mp4 and front.mp4');
    await ask(backend, 'flags.add', { clipId, criterion: 'depth', severity: 'correct', reps: [2], frame: 75 });
    const [graded] = (await ask(backend, 'grade.get', { sessionId })).entries;
    const depth = graded?.criteria.find(({ criterion }) => criterion === 'depth');
    expect(graded?.setsDone).toBe(1);
    expect(depth?.reps.map(({ clip, rep }) => [clip, rep])).toEqual([[leadId, 2]]);
    expect(depth?.cells).toEqual({ lookedAt: 1, applicable: 2 });
    await ask(backend, 'history.undo', { sessionId });
    await ask(backend, 'history.undo', { sessionId });
    expect(dump(folder)).toBe(before);
  });

  it('stay in step: an edge that is moved, a rep that comes or goes, on either side, in one step of the history', async () => {
    const { backend, folder, sessionId, leadId, clipId, starts } = twoCameras(silent);
    await markReps(backend, leadId, [60, 100]);
    await ask(backend, 'cameras.pair', { leadId, clipId, by: { how: 'frames', leadFrame: shift, frame: 0 } });
    const paired = dump(folder);
    await ask(backend, 'reps.moveEdge', { clipId, rep: 2, edge: 'start', frame: 74 });
    expect([await starts(leadId), await starts(clipId)]).toEqual([
      [60, 104],
      [30, 74],
    ]);
    await ask(backend, 'reps.mark', { clipId: leadId, edge: 'start', frame: 150 });
    await ask(backend, 'reps.remove', { clipId, rep: 1 });
    expect([await starts(leadId), await starts(clipId)]).toEqual([
      [104, 150],
      [74, 120],
    ]);
    for (const _ of [1, 2, 3]) await ask(backend, 'history.undo', { sessionId });
    expect(dump(folder)).toBe(paired);
  });

  it('lose nothing that was judged on either before they were one', async () => {
    const { backend, sessionId, leadId, clipId, starts } = twoCameras(silent);
    await markReps(backend, leadId, [60]);
    await markReps(backend, clipId, [60 - shift + 2, 80]);
    await ask(backend, 'flags.add', { clipId, criterion: 'depth', severity: 'adjust', reps: [1, 2], frame: 85 });
    await ask(backend, 'cameras.pair', { leadId, clipId, by: { how: 'frames', leadFrame: shift, frame: 0 } });
    expect([await starts(leadId), await starts(clipId)]).toEqual([
      [60, 110],
      [30, 80],
    ]);
    const { review } = await ask(backend, 'review.get', { sessionId });
    expect(review.entries[0]?.flags.map(({ clip, reps }) => [clip, reps])).toEqual([[clipId, [1, 2]]]);
  });

  it('are two sets again once they are taken apart, with their reps', async () => {
    const { backend, sessionId, leadId, clipId, clips, starts } = twoCameras(silent);
    await markReps(backend, leadId, [60, 100]);
    await ask(backend, 'cameras.pair', { leadId, clipId, by: { how: 'frames', leadFrame: shift, frame: 0 } });
    await ask(backend, 'cameras.part', { clipId });
    expect((await clips()).map(({ sameSet }) => sameSet)).toEqual([undefined, undefined]);
    await ask(backend, 'reps.remove', { clipId, rep: 1 });
    expect([await starts(leadId), await starts(clipId)]).toEqual([[60, 100], [70]]);
    expect((await ask(backend, 'grade.get', { sessionId })).entries[0]?.setsDone).toBe(2);
  });

  it('go along into a second look', async () => {
    const { backend, sessionId, leadId, clipId } = twoCameras(silent);
    await markReps(backend, leadId, [60, 100]);
    await ask(backend, 'cameras.pair', { leadId, clipId, by: { how: 'frames', leadFrame: shift, frame: 0 } });
    await ask(backend, 'flags.add', { clipId, criterion: 'depth', severity: 'keep', reps: [2], frame: 75 });
    const { sessionId: second } = await ask(backend, 'secondLook.start', { sessionId });
    const { review } = await ask(backend, 'review.get', { sessionId: second });
    const [lead, other] = review.entries[0]?.clips ?? [];
    expect(other?.sameSet).toEqual({ clip: lead?.id, offsetUs: -1_000_000 });
  });

  it('are refused in a sentence where they can’t be one set, and nothing changes', async () => {
    const { backend, folder, sessionId, leadId, clipId } = twoCameras(silent);
    const { entryId } = await ask(backend, 'entries.add', { sessionId, exercise: 'back-squat' });
    const before = dump(folder);
    const refused = async (asked: { leadId: string; clipId: string }) =>
      (await refusal(backend, 'cameras.pair', asked)).sentence;
    expect(await refused({ leadId, clipId })).toMatch(
      /^Neither the sound nor the reps show how “front.mp4” and “side.mp4” line up/,
    );
    expect(await refused({ leadId, clipId: leadId })).toMatch(/are not clips of the same exercise/);
    expect((await refusal(backend, 'cameras.part', { clipId })).sentence).toMatch(/is not paired with another clip/);
    const beyond = { how: 'frames', leadFrame: 0, frame: 100_000 } as const;
    expect((await refusal(backend, 'cameras.pair', { leadId, clipId, by: beyond })).code).toBe('conflict');
    expect(entryId).not.toBe('');
    expect(dump(folder)).toBe(before);
  });

  it('are not laid together by the sound of a file that was changed on the disk', async () => {
    for (const which of ['lead', 'other'] as const) {
      const { backend, folder, leadId, clipId } = twoCameras(silent);
      const changed = which === 'lead' ? leadId : clipId;
      changeOnDisk((await ask(backend, 'media.resolve', { clipId: changed, what: 'clip' })).path);
      const before = dump(folder);
      const { code, sentence } = await refusal(backend, 'cameras.pair', { leadId, clipId, by: { how: 'sound' } });
      expect([code, sentence]).toEqual(['bad-media', expect.stringMatching(/changed on the disk/)]);
      expect(sentence).toContain(which === 'lead' ? 'side.mp4' : 'front.mp4');
      expect(dump(folder)).toBe(before);
    }
  });
});
