import { expect, it } from 'vitest';
import { ask, libraryWithClips, newLibrary, newSession, refusal } from '../workbench.ts';

it('takes a session back that nothing came into, and its trainee where that is wanted', async () => {
  const backend = await newLibrary();
  const { sessionId, traineeId } = await newSession(backend);
  const { sessionId: other } = await ask(backend, 'sessions.add', { traineeId, date: '2026-03-05' });

  await ask(backend, 'sessions.discard', { sessionId, trainee: 'discard' });
  expect((await ask(backend, 'desk.sessions', {})).sessions.map(({ id }) => id)).toEqual([other]);
  expect((await ask(backend, 'desk.trainees', {})).map(({ id }) => id)).toEqual([traineeId]);

  await ask(backend, 'sessions.discard', { sessionId: other, trainee: 'keep' });
  expect((await ask(backend, 'desk.trainees', {})).map(({ id }) => id)).toEqual([traineeId]);

  const { sessionId: last } = await ask(backend, 'sessions.add', { traineeId, date: '2026-03-06' });
  await ask(backend, 'sessions.discard', { sessionId: last, trainee: 'discard' });
  expect((await ask(backend, 'desk.sessions', {})).sessions).toEqual([]);
  expect(await ask(backend, 'desk.trainees', {})).toEqual([]);
  expect(await ask(backend, 'library.verify', {})).toMatchObject({ sound: true, sessions: 0 });
});

it('keeps a session that holds a clip', async () => {
  const { backend, sessionId } = await libraryWithClips();
  expect((await refusal(backend, 'sessions.discard', { sessionId, trainee: 'discard' })).code).toBe('conflict');
  expect((await ask(backend, 'desk.sessions', {})).sessions).toHaveLength(1);
});
