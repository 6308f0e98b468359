import { expect, it } from 'vitest';
import type { Result } from '../../../../electron/contract/requests.ts';
import { ask, libraryWithClips, newLibrary, newSession, refusal } from '../workbench.ts';

it('shows a session with its trainee, what it holds and its grade', async () => {
  const { backend, sessionId, traineeId, clipId } = await libraryWithClips();
  const first = await ask(backend, 'desk.sessions', {});
  expect(await ask(backend, 'desk.trainees', {})).toEqual([
    {
      id: traineeId,
      name: 'Mira Holt',
      goal: 'growth',
      experience: 'new',
      units: 'kg',
      minor: false,
      names: 'full',
      archived: false,
      notes: '',
    },
  ]);
  const line = { id: sessionId, traineeId, traineeName: 'Mira Holt', title: 'Legs', date: '2026-03-04' };
  expect(first.sessions).toEqual([
    {
      ...line,
      ...{ exercises: ['back-squat'], clips: 1, posters: [{ clipId, look: '' }] },
      ...{ flags: 0, mark: '', provisional: false, byHand: false, secondLookOf: null, readOnly: false, coverage: 0 },
      ...{ archived: false, finished: false, damaged: false },
      ...{ state: 'new', cameAt: expect.stringMatching(/^20/), measured: 0, clipsLeft: 1 },
    },
  ]);

  const { exercises } = await ask(backend, 'catalogue.get', {});
  for (const criterion of exercises.find(({ id }) => id === 'back-squat')?.criteria ?? []) {
    await ask(backend, 'ticks.set', { clipId, criterion: criterion.id, reps: 'set', fine: true });
  }
  const { sessions } = await ask(backend, 'desk.sessions', {});
  expect(sessions[0]).toMatchObject({ mark: 'A+', provisional: false, coverage: 1, state: 'judged', clipsLeft: 0 });
});

it('puts the newest day first', async () => {
  const backend = await newLibrary();
  const { traineeId } = await newSession(backend);
  for (const date of ['2026-05-01', '2026-01-31']) await ask(backend, 'sessions.add', { traineeId, date });
  const { sessions } = await ask(backend, 'desk.sessions', {});
  expect(sessions.map((session) => session.date)).toEqual(['2026-05-01', '2026-03-04', '2026-01-31']);
});

it('gives each session once, page after page, what somebody waits for before what waits for its clips', async () => {
  const { backend, sessionId, traineeId, clipId } = await libraryWithClips();
  for (let day = 1; day <= 7; day += 1) await ask(backend, 'sessions.add', { traineeId, date: `2026-05-0${day}` });
  await ask(backend, 'sessions.add', { traineeId, date: '2026-05-07', title: 'Evening' });
  const { exercises } = await ask(backend, 'catalogue.get', {});
  for (const criterion of exercises.find(({ id }) => id === 'back-squat')?.criteria ?? []) {
    await ask(backend, 'ticks.set', { clipId, criterion: criterion.id, reps: 'set', fine: true });
  }
  const { sessionId: look } = await ask(backend, 'secondLook.start', { sessionId });
  const all = async (list: 'due' | 'done' | 'newest' | 'secondLooks') => {
    const found: (readonly [string, string])[] = [];
    let after: string | null = null;
    do {
      const page: Result<'desk.sessions'> = await ask(backend, 'desk.sessions', { list, after, limit: 3 });
      expect(page.sessions.length).toBeLessThanOrEqual(3);
      found.push(...page.sessions.map(({ id, date }) => [id, date] as const));
      after = page.next;
    } while (after !== null);
    expect(new Set(found.map(([id]) => id)).size).toBe(found.length);
    return found;
  };
  const days = [7, 7, 6, 5, 4, 3, 2, 1].map((day) => `2026-05-0${day}`);
  expect((await all('due')).map(([, date]) => date).sort()).toEqual(['2026-03-04', ...days].sort());
  expect((await all('due'))[0]?.[0]).toBe(sessionId);
  expect(await all('done')).toEqual([]);
  await ask(backend, 'letters.send', { sessionId });
  expect((await all('due')).map(([, date]) => date).sort()).toEqual([...days].sort());
  expect(await all('done')).toEqual([[sessionId, '2026-03-04']]);
  expect((await all('newest')).map(([, date]) => date)).toEqual([...days, '2026-03-04', '2026-03-04']);
  expect(await all('secondLooks')).toEqual([[look, '2026-03-04']]);
  expect(await ask(backend, 'desk.session', { sessionId: look })).toMatchObject({ id: look, secondLookOf: sessionId });
  expect((await refusal(backend, 'desk.sessions', { after: 'here' })).code).toBe('bad-request');
});

it('refuses a session for a trainee that is not there', async () => {
  const backend = await newLibrary();
  expect((await refusal(backend, 'sessions.add', { traineeId: 'nobody', date: '2026-05-01' })).code).toBe('not-found');
});
