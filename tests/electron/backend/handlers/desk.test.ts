import { expect, it } from 'vitest';
import { ask, newLibrary, newSession, refusal, sessionWithClips } from '../workbench.ts';

it('shows a session with its trainee, what it holds and its grade', async () => {
  const backend = await newLibrary();
  const { sessionId, traineeId, clipId } = await sessionWithClips(backend);
  const first = await ask(backend, 'desk.get', {});
  expect(first.trainees).toEqual([
    { id: traineeId, name: 'Mira Holt', goal: 'growth', experience: 'new', units: 'kg', minor: false, names: 'full' },
  ]);
  const line = { id: sessionId, traineeId, traineeName: 'Mira Holt', title: 'Legs', date: '2026-03-04' };
  expect(first.sessions).toEqual([
    {
      ...line,
      ...{ exercises: ['back-squat'], clips: 1, posterClipIds: [clipId] },
      ...{ flags: 0, mark: '', provisional: false, byHand: false, secondLookOf: null, readOnly: false, coverage: 0 },
    },
  ]);

  const { exercises } = await ask(backend, 'catalogue.get', {});
  for (const criterion of exercises.find(({ id }) => id === 'back-squat')?.criteria ?? []) {
    await ask(backend, 'ticks.set', { clipId, criterion: criterion.id, reps: 'set', fine: true });
  }
  const { sessions } = await ask(backend, 'desk.get', {});
  expect(sessions[0]).toMatchObject({ mark: 'A+', provisional: false, coverage: 1 });
});

it('puts the newest day first', async () => {
  const backend = await newLibrary();
  const { traineeId } = await newSession(backend);
  for (const date of ['2026-05-01', '2026-01-31']) await ask(backend, 'sessions.add', { traineeId, date });
  const { sessions } = await ask(backend, 'desk.get', {});
  expect(sessions.map((session) => session.date)).toEqual(['2026-05-01', '2026-03-04', '2026-01-31']);
});

it('refuses a session for a trainee that is not there', async () => {
  const backend = await newLibrary();
  expect((await refusal(backend, 'sessions.add', { traineeId: 'nobody', date: '2026-05-01' })).code).toBe('not-found');
});
