import { describe, expect, it } from 'vitest';
import {
  ask,
  backendOn,
  dump,
  historyOf,
  libraryWithClips,
  nameInWords,
  newLibrary,
  refusal,
  sessionWithClips,
  temporaryFolder,
} from './workbench.ts';

describe('history', () => {
  it('takes an act back and does it again after the library was closed in between', async () => {
    const folder = temporaryFolder();
    const first = await newLibrary(folder);
    const { sessionId, clipId } = await sessionWithClips(first);
    await ask(first, 'reps.mark', { clipId, edge: 'start', frame: 24 });
    const marked = dump(folder);
    await ask(first, 'flags.add', { clipId, criterion: 'depth', severity: 'correct', reps: [1], frame: 70 });
    const flagged = dump(folder);
    await first.close();

    const second = backendOn(folder);
    await ask(second, 'history.undo', { sessionId });
    expect(dump(folder)).toBe(marked);
    expect(await historyOf(second, sessionId)).toEqual({ undo: 'Rep 1: start', redo: 'Flag: Depth, rep 1' });
    await second.close();

    const third = backendOn(folder);
    await ask(third, 'history.redo', { sessionId });
    expect(dump(folder)).toBe(flagged);
    expect(await historyOf(third, sessionId)).toEqual({ undo: 'Flag: Depth, rep 1', redo: null });
  });

  it('forgets what could be redone at the next act, but keeps it in the list', async () => {
    const { backend, sessionId, clipId } = await libraryWithClips();
    await ask(backend, 'reps.mark', { clipId, edge: 'start', frame: 24 });
    await ask(backend, 'history.undo', { sessionId });
    await ask(backend, 'reps.mark', { clipId, edge: 'start', frame: 30 });
    expect(await historyOf(backend, sessionId)).toEqual({ undo: 'Rep 1: start', redo: null });
    expect((await refusal(backend, 'history.redo', { sessionId })).code).toBe('conflict');
    const lines = await ask(backend, 'history.list', { sessionId });
    expect(lines.map(({ name, undone }) => [nameInWords(name), undone])).toEqual([
      ['Rep 1: start', false],
      ['Rep 1: start', true],
      ['Clip added: squat-side.mp4', false],
      ['Exercise added: Back squat', false],
      ['Session added for Mira Holt', false],
    ]);
  });

  it('keeps redo when only the place changes or an act changes nothing', async () => {
    const { backend, sessionId, clipId } = await libraryWithClips();
    await ask(backend, 'reps.mark', { clipId, edge: 'start', frame: 24 });
    await ask(backend, 'history.undo', { sessionId });
    await ask(backend, 'position.set', { sessionId, clipId, frame: 99 });
    await ask(backend, 'clips.update', { clipId, change: { view: 'side' } });
    const review = await ask(backend, 'review.get', { sessionId });
    expect(review.position).toEqual({ clipId, frame: 99 });
    expect(nameInWords(review.history.redo)).toBe('Rep 1: start');
  });

  it('brings a removed clip back with its reps, flags and ticks', async () => {
    const folder = temporaryFolder();
    const backend = await newLibrary(folder);
    const { sessionId, clipId } = await sessionWithClips(backend);
    await ask(backend, 'reps.mark', { clipId, edge: 'start', frame: 24 });
    await ask(backend, 'flags.add', { clipId, criterion: 'depth', severity: 'keep', reps: [1], frame: 70 });
    await ask(backend, 'ticks.set', { clipId, criterion: 'headPosition', reps: 'set', fine: true });
    const before = dump(folder);
    await ask(backend, 'clips.remove', { clipId });
    const { review } = await ask(backend, 'review.get', { sessionId });
    expect(review.entries[0]).toMatchObject({ clips: [], flags: [], ticks: [] });
    await ask(backend, 'history.undo', { sessionId });
    expect(dump(folder)).toBe(before);
    const media = await ask(backend, 'media.resolve', { clipId, what: 'clip' });
    expect(media.type).toBe('video/mp4');
  });

  it('stops at the birth of the session', async () => {
    const { backend, sessionId } = await libraryWithClips();
    await ask(backend, 'history.undo', { sessionId });
    await ask(backend, 'history.undo', { sessionId });
    expect(await historyOf(backend, sessionId)).toEqual({ undo: null, redo: 'Exercise added: Back squat' });
    expect((await refusal(backend, 'history.undo', { sessionId })).code).toBe('conflict');
  });
});
