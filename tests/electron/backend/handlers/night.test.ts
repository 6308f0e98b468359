import { expect, it } from 'vitest';
import type { Backend } from '../../../../electron/contract/backend.ts';
import {
  ask,
  backendOn,
  copyOf,
  libraryWithClips,
  newSession,
  preparedLibrary,
  sessionWithClips,
} from '../workbench.ts';

async function judgeWhole(backend: Backend, clipId: string): Promise<void> {
  const { exercises } = await ask(backend, 'catalogue.get', {});
  for (const criterion of exercises.find(({ id }) => id === 'back-squat')?.criteria ?? []) {
    await ask(backend, 'ticks.set', { clipId, criterion: criterion.id, reps: 'set', fine: true });
  }
}

const stateOf = async (backend: Backend, sessionId: string): Promise<string> =>
  (await ask(backend, 'desk.session', { sessionId })).state;

const nextAfter = async (backend: Backend, after: string | null): Promise<string | undefined> =>
  (await ask(backend, 'night.next', { after })).session?.id;

it('tells where a session stands, from its first clip until it is sent, and whether it changed since', async () => {
  const { folder, sessionId, clipId } = await preparedLibrary();
  const backend = backendOn(folder);
  expect(await stateOf(backend, sessionId)).toBe('new');
  await ask(backend, 'ticks.set', { clipId, criterion: 'depth', reps: 'set', fine: true });
  expect(await stateOf(backend, sessionId)).toBe('inWork');
  await judgeWhole(backend, clipId);
  expect(await stateOf(backend, sessionId)).toBe('judged');
  await ask(backend, 'letters.send', { sessionId });
  expect(await stateOf(backend, sessionId)).toBe('sent');
  await ask(backend, 'sessions.update', { sessionId, notes: 'New' });
  expect(await stateOf(backend, sessionId)).toBe('changedSince');
  // Taken back, it says what was sent; done again, it does not.
  await ask(backend, 'history.undo', { sessionId });
  expect(await stateOf(backend, sessionId)).toBe('sent');
  await ask(backend, 'history.redo', { sessionId });
  expect(await stateOf(backend, sessionId)).toBe('changedSince');
  // What was there when it was sent is taken back, and so is what came after it.
  await ask(backend, 'history.undo', { sessionId });
  await ask(backend, 'history.undo', { sessionId });
  await ask(backend, 'sessions.update', { sessionId, notes: 'Other' });
  await ask(backend, 'history.undo', { sessionId });
  expect(await stateOf(backend, sessionId)).toBe('changedSince');
  await ask(backend, 'letters.send', { sessionId });
  expect(await stateOf(backend, sessionId)).toBe('sent');
});

it('is the same after a restart', async () => {
  const { folder, sessionId } = await preparedLibrary();
  const backend = backendOn(folder);
  await ask(backend, 'letters.send', { sessionId });
  await backend.close();
  expect(await stateOf(backendOn(copyOf(folder)), sessionId)).toBe('sent');
});

it('walks what is due, what came first first, round and round, and leaves out what is sent', async () => {
  const { backend, sessionId: first } = await libraryWithClips();
  const { sessionId: empty } = await newSession(backend);
  const { sessionId: second } = await sessionWithClips(backend);
  expect(await nextAfter(backend, null)).toBe(first);
  expect(await nextAfter(backend, first)).toBe(second);
  expect(await nextAfter(backend, second)).toBe(empty);
  expect(await nextAfter(backend, empty)).toBe(first);
  await ask(backend, 'letters.send', { sessionId: first });
  expect(await nextAfter(backend, first)).toBe(second);
  expect(await nextAfter(backend, null)).toBe(second);
  expect(await nextAfter(backend, empty)).toBe(second);
  await ask(backend, 'letters.send', { sessionId: second });
  await ask(backend, 'sessions.discard', { sessionId: empty, trainee: 'keep' });
  expect(await nextAfter(backend, second)).toBeUndefined();
});

it('counts what is due and its clips, and tells no pace from nothing', async () => {
  const { backend, clipId } = await libraryWithClips();
  await newSession(backend);
  const nothingYet = { late: 0, more: false, pace: null } as const;
  expect(await ask(backend, 'night.left', {})).toEqual({ ...nothingYet, sessions: 1, clips: 1 });
  await judgeWhole(backend, clipId);
  expect(await ask(backend, 'night.left', {})).toEqual({ ...nothingYet, sessions: 1, clips: 0 });
});
