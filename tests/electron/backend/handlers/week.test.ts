import { expect, it } from 'vitest';
import { gradeSession } from '../../../../engine/grading/gradeSession.ts';
import { shippedUnder } from '../../../seeds/shippedCatalogue.ts';
import { ask, newLibrary } from '../workbench.ts';

/** A library with a trainee's squats on two days running, twelve hard sets each, and what the second is read as. */
async function twoDays() {
  const backend = await newLibrary();
  const trainee = { name: 'Robin Vale', goal: 'growth', experience: 'experienced', units: 'kg', minor: false } as const;
  const { traineeId } = await ask(backend, 'trainees.add', trainee);
  const day = async (date: string): Promise<string> => {
    const { sessionId } = await ask(backend, 'sessions.add', { traineeId, date });
    const { entryId } = await ask(backend, 'entries.add', { sessionId, exercise: 'back-squat' });
    const plan = { sets: Array.from({ length: 12 }, () => ({ reps: 8, repsInReserve: 1 })) };
    await ask(backend, 'entries.update', { entryId, plan });
    return sessionId;
  };
  return { backend, earlier: await day('2026-03-03'), later: await day('2026-03-04') };
}

const overWeek = ['spacing', 'weekly-volume'];

it('findings over the week stand in the grade, the window, the letter and the sheet of a session', async () => {
  const { backend, earlier, later } = await twoDays();
  const kinds = (findings: readonly { readonly kind: string }[]): string[] =>
    findings.map(({ kind }) => kind).filter((kind) => overWeek.includes(kind));
  const kindsOf = async (sessionId: string): Promise<string[]> =>
    kinds((await ask(backend, 'grade.get', { sessionId })).findings).sort();
  expect(await kindsOf(later)).toEqual(overWeek);
  expect(await kindsOf(earlier)).toEqual([]);
  // The window grades what it reads.
  const { review, weekBefore } = await ask(backend, 'review.get', { sessionId: later });
  expect(weekBefore).toMatchObject([{ session: { date: '2026-03-03' }, entries: [{ exercise: 'back-squat' }] }]);
  const catalogue = shippedUnder(review.rubric?.version ?? 0);
  const asRead = {
    ...review,
    entries: review.entries.map((entry) => ({ ...entry, flags: [] })),
  };
  expect(kinds(gradeSession(asRead, catalogue, weekBefore).findings).sort()).toEqual(overWeek);
  for (const document of ['letter', 'sheet'] as const) {
    const { html } = await ask(backend, 'documents.preview', { sessionId: later, document });
    expect(html).toContain('More than 20 hard sets this week');
  }
});

it('an act on one session leaves the summary of another as it is, whatever it means for its week', async () => {
  const { backend, earlier, later } = await twoDays();
  const before = await ask(backend, 'desk.session', { sessionId: later });
  const { review } = await ask(backend, 'review.get', { sessionId: earlier });
  const entryId = review.entries[0]?.id ?? '';
  await ask(backend, 'entries.update', { entryId, plan: { sets: [{ reps: 8 }] } });
  expect(await ask(backend, 'desk.session', { sessionId: later })).toEqual(before);
  expect(await ask(backend, 'library.verify', {})).toMatchObject({ sound: true });
  const { findings } = await ask(backend, 'grade.get', { sessionId: later });
  expect(findings.map(({ kind }) => kind)).not.toContain('weekly-volume');
});
