import { expect, it, vi } from 'vitest';
import type { AnyEvent } from '../../../electron/contract/events.ts';
import { ask, newLibrary, newSession, refusal } from './workbench.ts';

it('tells of a change after it can be read, and of nothing when a request was refused', async () => {
  const backend = await newLibrary();
  const { sessionId, traineeId } = await newSession(backend);
  const told: AnyEvent[] = [];
  const stop = backend.onEvent((event) => told.push(event));
  await ask(backend, 'sessions.update', { sessionId, notes: 'Slept badly' });
  const { sessions } = await ask(backend, 'desk.sessions', {});
  expect(told).toEqual([{ name: 'sessionChanged', data: { sessionId, summary: sessions[0] } }]);
  told.length = 0;
  await refusal(backend, 'entries.add', { sessionId, exercise: 'moon-walk' });
  expect(told).toEqual([]);
  stop();
  await ask(backend, 'sessions.add', { traineeId, date: '2026-03-09' });
  expect(told).toEqual([]);
});

it('does what was asked although a listener fails', async () => {
  const stderr = vi.spyOn(process.stderr, 'write').mockReturnValue(true);
  const backend = await newLibrary();
  const { sessionId } = await newSession(backend);
  backend.onEvent(() => {
    throw new Error('This screen is gone.');
  });
  await ask(backend, 'sessions.update', { sessionId, notes: 'Slept badly' });
  const { review } = await ask(backend, 'review.get', { sessionId });
  expect(review.session.notes).toBe('Slept badly');
  expect(stderr.mock.calls.join('')).toContain('This screen is gone.');
  stderr.mockRestore();
});

it('answers that it is closing instead of starting anything new', async () => {
  const backend = await newLibrary();
  await backend.close();
  expect((await refusal(backend, 'desk.sessions', {})).code).toBe('backend-gone');
});
