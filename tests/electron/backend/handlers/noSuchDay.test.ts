import { expect, it } from 'vitest';
import { alterLibrary } from '../alterLibrary.ts';
import { ask, backendOn, newLibrary, newSession, refusal, temporaryFolder } from '../workbench.ts';

/** The Gregorian calendar: 2026 and 1900 are no leap years, 2024 and 2000 are. */
const missing = ['2026-02-30', '2026-02-29', '1900-02-29', '2026-04-31', '2026-06-31', '2026-11-31', '2026-13-01'];
const real = ['2024-02-29', '2000-02-29', '2026-02-28', '2026-12-31'];

it('takes no day that the calendar does not have, wherever one is named', async () => {
  const backend = await newLibrary();
  const { traineeId, sessionId } = await newSession(backend);
  for (const date of missing) {
    const refused = [
      await refusal(backend, 'sessions.add', { traineeId, date }),
      await refusal(backend, 'sessions.update', { sessionId, date }),
      await refusal(backend, 'inbox.choose', { arrivalIds: ['any'], choice: { date } }),
      await refusal(backend, 'handover.start', {
        ...{ sessionIds: [sessionId], folder: '/anywhere', options: { nextFilming: date } },
      }),
    ];
    expect(refused.map(({ code }) => code)).toEqual(refused.map(() => 'bad-request'));
    for (const { sentence } of refused.slice(0, 2)) expect(sentence).toMatch(/nothing was changed: date is not valid/);
  }
  for (const date of real) await ask(backend, 'sessions.update', { sessionId, date });
});

it('opens a session that an older version let in on such a day, and lets it be mended', async () => {
  const folder = temporaryFolder();
  const first = await newLibrary(folder);
  const { sessionId, traineeId } = await newSession(first);
  await first.close();
  alterLibrary(folder, `UPDATE session SET date = '2026-02-30' WHERE id = '${sessionId}'`);

  const backend = backendOn(folder);
  expect((await ask(backend, 'desk.sessions', {})).sessions).toHaveLength(1);
  expect((await ask(backend, 'review.get', { sessionId })).review.session.date).toBe('2026-02-30');
  await ask(backend, 'trainees.history', { traineeId });
  await ask(backend, 'sessions.places', { sessionId });
  await ask(backend, 'sessions.update', { sessionId, date: '2026-03-02' });
  expect((await ask(backend, 'review.get', { sessionId })).review.session.date).toBe('2026-03-02');
});
