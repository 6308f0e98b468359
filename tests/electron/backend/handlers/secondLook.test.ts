import { describe, expect, it } from 'vitest';
import type { Backend } from '../../../../electron/contract/backend.ts';
import {
  ask,
  hingeFile,
  libraryWithClips,
  newLibrary,
  newSession,
  refusal,
  sessionWithClips,
  squatFile,
} from '../workbench.ts';

/** A session of one clip with two reps; depth of rep 1 flagged, rep 2 ticked. */
async function judged(backend: Backend) {
  const session = await sessionWithClips(backend);
  const { clipId } = session;
  for (const frame of [10, 100]) await ask(backend, 'reps.mark', { clipId, edge: 'start', frame });
  await ask(backend, 'flags.add', { clipId, criterion: 'depth', severity: 'correct', reps: [1], frame: 40 });
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
    const { sessionId: secondId } = await ask(backend, 'secondLook.start', { sessionId, language: 'de' });
    expect((await ask(backend, 'desk.session', { sessionId: secondId })).title).toMatch(/^Zweitbewertung: /);
    const { review } = await ask(backend, 'review.get', { sessionId: secondId });
    const [first, second] = [await clipOf(backend, sessionId), review.entries[0]?.clips[0]];
    expect(second?.reps).toEqual(first?.reps);
    expect(second?.facts).toEqual(first?.facts);
    expect(review.entries[0]).toMatchObject({ flags: [], ticks: [] });
    expect(JSON.stringify(review)).not.toMatch(/Depth was short|A long week/);
    const { sessions } = await ask(backend, 'desk.sessions', {});
    expect(sessions.find(({ id }) => id === secondId)?.secondLookOf).toBe(sessionId);
  });

  it('is refused while nothing was judged, while one is there, and of a second look', async () => {
    const backend = await newLibrary();
    const empty = await newSession(backend);
    expect((await refusal(backend, 'secondLook.start', { sessionId: empty.sessionId })).sentence).toMatch(
      /Nothing has been judged/,
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
    await ask(backend, 'flags.add', { clipId, criterion: 'depth', severity: 'correct', reps: [1], frame: 41 });
    await ask(backend, 'flags.add', { clipId, criterion: 'depth', severity: 'prefer', reps: [2], frame: 120 });
    const { agreement } = await ask(backend, 'secondLook.compare', { sessionId });
    expect(agreement.overall).toMatchObject({ moments: 2, percent: 0.5 });
    expect(agreement.perCriterion.map(({ criterion }) => criterion)).toEqual(['depth']);
    expect(agreement.perSeverity.find(({ severity }) => severity === 'correct')?.figures.percent).toBe(1);
    expect(agreement.differences).toEqual([
      expect.objectContaining({
        ...{ clip: firstClip, rep: 2, criterion: 'depth' },
        ...{ first: { severity: 'keep', score: 100 }, second: { severity: 'prefer', score: 92 } },
      }),
    ]);
  });

  it('may be started again once everything judged first was looked at again; the newest is compared', async () => {
    const backend = await newLibrary();
    const { sessionId } = await judged(backend);
    const startAndJudge = async (severity: 'correct' | 'stop') => {
      const look = await ask(backend, 'secondLook.start', { sessionId });
      const clipId = (await clipOf(backend, look.sessionId))?.id ?? '';
      await ask(backend, 'flags.add', { clipId, criterion: 'depth', severity, reps: [1], frame: 40 });
      await ask(backend, 'ticks.set', { clipId, criterion: 'depth', reps: 'set', fine: true });
    };
    await startAndJudge('correct');
    await startAndJudge('stop');
    const { agreement } = await ask(backend, 'secondLook.compare', { sessionId });
    expect(agreement.differences).toMatchObject([{ rep: 1, second: { severity: 'stop' } }]);
  });

  it('judged by another version of the rubric is compared by that of the first', async () => {
    const { backend, sessionId, clipId } = await libraryWithClips();
    const shift = { criterion: 'symmetry', fault: 'hipsShift', severity: 'adjust', reps: 'set', frame: 40 } as const;
    await ask(backend, 'flags.add', { ...shift, clipId });
    const look = await ask(backend, 'secondLook.start', { sessionId });
    const again = (await clipOf(backend, look.sessionId))?.id ?? '';
    await ask(backend, 'flags.add', { ...shift, clipId: again });
    await ask(backend, 'sessions.rejudge', { sessionId: look.sessionId, version: 1 });
    const compared = await ask(backend, 'secondLook.compare', { sessionId });
    expect(compared.rubricVersion).toBe(3);
    expect(compared.agreement.perCriterion).toMatchObject([{ criterion: 'symmetry', figures: { percent: 1 } }]);
  });

  it('is under way until every criterion judged first was looked at again', async () => {
    const backend = await newLibrary();
    const { sessionId, clipId } = await judged(backend);
    await ask(backend, 'ticks.set', { clipId, criterion: 'barPath', reps: 'set', fine: true });
    const look = async () => (await ask(backend, 'secondLook.get', { sessionId })).look;
    expect(await look()).toBeNull();
    const { sessionId: secondId } = await ask(backend, 'secondLook.start', { sessionId });
    const again = (await clipOf(backend, secondId))?.id ?? '';
    await ask(backend, 'ticks.set', { clipId: again, criterion: 'depth', reps: 'set', fine: true });
    expect(await look()).toEqual({ sessionId: secondId, state: 'underWay' });
    await ask(backend, 'ticks.set', { clipId: again, criterion: 'barPath', reps: 'set', fine: true });
    expect(await look()).toEqual({ sessionId: secondId, state: 'finished' });
  });

  it('has nothing to be compared with before it was started', async () => {
    const backend = await newLibrary();
    const { sessionId } = await judged(backend);
    expect((await refusal(backend, 'secondLook.compare', { sessionId })).code).toBe('conflict');
  });
});

describe('two sessions chosen by hand', () => {
  it('are paired by their files, whoever brought them in and in whatever order', async () => {
    const backend = await newLibrary();
    const one = await sessionWithClips(backend, [squatFile, hingeFile]);
    const other = await sessionWithClips(backend, [hingeFile, squatFile]);
    const clipsOf = async (sessionId: string) =>
      (await ask(backend, 'review.get', { sessionId })).review.entries.flatMap((entry) => entry.clips);
    const [firstClips, secondClips] = [await clipsOf(one.sessionId), await clipsOf(other.sessionId)];
    const whole = { criterion: 'depth', reps: 'set', frame: 10 } as const;
    await ask(backend, 'flags.add', { ...whole, severity: 'correct', clipId: firstClips[0]?.id ?? '' });
    await ask(backend, 'flags.add', { ...whole, severity: 'correct', clipId: secondClips[1]?.id ?? '' });
    const { agreement } = await ask(backend, 'agreement.compare', {
      firstId: one.sessionId,
      secondId: other.sessionId,
    });
    expect(agreement).toMatchObject({ overall: { moments: 1, percent: 1 }, differences: [] });
  });

  it('are refused when they show other clips, and so is one session twice', async () => {
    const backend = await newLibrary();
    const { sessionId: firstId } = await judged(backend);
    const { sessionId: secondId } = await sessionWithClips(backend, [hingeFile]);
    expect((await refusal(backend, 'agreement.compare', { firstId, secondId })).sentence).toMatch(
      /no clip of the same exercise in common/,
    );
    expect((await refusal(backend, 'agreement.compare', { firstId, secondId: firstId })).code).toBe('conflict');
  });
});

describe('a trainee’s history', () => {
  it('reads sessions of an older version by the newest, and shows the grade that each was given', async () => {
    const { backend, sessionId, traineeId, clipId } = await libraryWithClips();
    await ask(backend, 'sessions.rejudge', { sessionId, version: 1 });
    const shift = { clipId, criterion: 'spinePosition', fault: 'hipsShift', severity: 'adjust', reps: 'set' } as const;
    await ask(backend, 'flags.add', { ...shift, frame: 40 });
    const grade = await ask(backend, 'grade.get', { sessionId });
    const { points, rubricVersion } = await ask(backend, 'trainees.history', { traineeId });
    expect(rubricVersion).toBe(3);
    expect(points[0]?.criteria.map(({ criterion }) => criterion)).toEqual(['symmetry']);
    expect(points[0]?.grade?.score).toBe(grade.state.kind === 'none' ? undefined : grade.state.score);
  });

  it('lists only the cautions that this trainee’s lifts, age or notes call for', async () => {
    const { backend, sessionId, traineeId } = await libraryWithClips();
    const due = async () =>
      (await ask(backend, 'trainees.history', { traineeId })).cautions.map(({ applies }) => applies);
    // A back squat is braced, so breathing is spoken of.
    expect(new Set(await due())).toEqual(new Set(['exercise', 'breath']));
    await ask(backend, 'sessions.update', { sessionId, painNote: 'The knee, 2 of 10.' });
    expect(new Set(await due())).toEqual(new Set(['exercise', 'breath', 'pain', 'painToSettle']));
  });

  it('tells of each session its grade, its criteria and what became of the faults; second looks stay out', async () => {
    const backend = await newLibrary();
    const { sessionId, traineeId, clipId } = await judged(backend);
    await ask(backend, 'secondLook.start', { sessionId });
    const flag = {
      clipId,
      criterion: 'depth',
      fault: 'shortOfDepth',
      severity: 'correct' as const,
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
