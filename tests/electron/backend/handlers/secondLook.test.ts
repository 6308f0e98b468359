import { describe, expect, it } from 'vitest';
import type { Backend } from '../../../../electron/backend/port.ts';
import { ask, newLibrary, newSession, refusal, sessionWithClips } from '../workbench.ts';

/** A session of one clip with two reps; depth of rep 1 flagged, rep 2 ticked. */
async function judged(backend: Backend) {
  const session = await sessionWithClips(backend);
  const { clipId } = session;
  for (const frame of [10, 100]) await ask(backend, 'reps.mark', { clipId, edge: 'start', frame });
  await ask(backend, 'flags.add', { clipId, criterion: 'depth', weight: 'correct', reps: [1], frame: 40 });
  await ask(backend, 'ticks.set', { clipId, criterion: 'depth', reps: [2], fine: true });
  return session;
}

const clipOf = async (backend: Backend, sessionId: string) =>
  (await ask(backend, 'review.get', { sessionId })).review.entries[0]?.clips[0];

describe('a second look', () => {
  it('has the same clips and reps and nothing that was judged', async () => {
    const backend = await newLibrary();
    const { sessionId } = await judged(backend);
    await ask(backend, 'sessions.update', { sessionId, notes: 'Depth was short.' });
    await ask(backend, 'grades.override', {
      sessionId,
      entryId: null,
      override: { score: 80, reason: 'A long week.' },
    });
    const { sessionId: secondId } = await ask(backend, 'secondLook.start', { sessionId });
    const { review } = await ask(backend, 'review.get', { sessionId: secondId });
    const [first, second] = [await clipOf(backend, sessionId), review.entries[0]?.clips[0]];
    expect(second?.reps).toEqual(first?.reps);
    expect(second?.facts).toEqual(first?.facts);
    expect(review.entries[0]).toMatchObject({ flags: [], ticks: [] });
    expect(JSON.stringify(review)).not.toMatch(/Depth was short|A long week/);
    const { sessions } = await ask(backend, 'desk.get', {});
    expect(sessions.find(({ id }) => id === secondId)?.secondLookOf).toBe(sessionId);
  });

  it('is refused while nothing was judged, while one is there, and of a second look', async () => {
    const backend = await newLibrary();
    const empty = await newSession(backend);
    expect((await refusal(backend, 'secondLook.start', { sessionId: empty.sessionId })).sentence).toMatch(
      /Nothing was judged/,
    );
    const { sessionId } = await judged(backend);
    const { sessionId: secondId } = await ask(backend, 'secondLook.start', { sessionId });
    expect((await refusal(backend, 'secondLook.start', { sessionId })).code).toBe('conflict');
    expect((await refusal(backend, 'secondLook.start', { sessionId: secondId })).code).toBe('conflict');
  });

  it('is compared with the first: one of two moments the same is half, and the other is told', async () => {
    const backend = await newLibrary();
    const { sessionId, clipId: firstClip } = await judged(backend);
    const { sessionId: secondId } = await ask(backend, 'secondLook.start', { sessionId });
    const clipId = (await clipOf(backend, secondId))?.id ?? '';
    // The same on rep 1, a preference where it was fine on rep 2.
    await ask(backend, 'flags.add', { clipId, criterion: 'depth', weight: 'correct', reps: [1], frame: 41 });
    await ask(backend, 'flags.add', { clipId, criterion: 'depth', weight: 'prefer', reps: [2], frame: 120 });
    const { agreement } = await ask(backend, 'secondLook.compare', { sessionId });
    expect(agreement.overall).toMatchObject({ moments: 2, percent: 0.5 });
    expect(agreement.perCriterion.map(({ criterion }) => criterion)).toEqual(['depth']);
    expect(agreement.perWeight.find(({ weight }) => weight === 'correct')?.figures.percent).toBe(1);
    expect(agreement.differences).toEqual([
      expect.objectContaining({
        ...{ clip: firstClip, rep: 2, criterion: 'depth' },
        ...{ first: { weight: 'keep', score: 100 }, second: { weight: 'prefer', score: 92 } },
      }),
    ]);
  });

  it('has nothing to be compared with before it was started', async () => {
    const backend = await newLibrary();
    const { sessionId } = await judged(backend);
    expect((await refusal(backend, 'secondLook.compare', { sessionId })).code).toBe('conflict');
  });
});

describe('a trainee’s history', () => {
  it('tells of each session its grade, its criteria and what became of the faults; second looks stay out', async () => {
    const backend = await newLibrary();
    const { sessionId, traineeId, clipId } = await judged(backend);
    await ask(backend, 'secondLook.start', { sessionId });
    const flag = {
      clipId,
      criterion: 'depth',
      fault: 'shortOfDepth',
      weight: 'correct' as const,
      reps: [1],
      frame: 40,
    };
    await ask(backend, 'flags.add', flag);
    const history = await ask(backend, 'trainees.history', { traineeId });
    expect(history.points).toHaveLength(1);
    // Rep 1: 100 × 0.4 × 0.4 = 16, rep 2: 100; the mean is 58.
    expect(history.points[0]?.criteria).toEqual([{ criterion: 'depth', score: 58 }]);
    expect(history.points[0]?.changes).toEqual([]);
    expect(history.cautions.length).toBeGreaterThan(0);
  });
});
