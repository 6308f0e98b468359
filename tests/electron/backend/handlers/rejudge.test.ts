import { beforeEach, describe, expect, it } from 'vitest';
import type { Backend } from '../../../../electron/contract/backend.ts';
import { ask, historyOf, libraryWithClips, refusal } from '../workbench.ts';

let backend: Backend;
let clipId: string;
let sessionId: string;

beforeEach(async () => {
  ({ backend, clipId, sessionId } = await libraryWithClips());
});

const judgeBy = (version: number) => ask(backend, 'sessions.rejudge', { sessionId, version });
const judged = async () => {
  const { review } = await ask(backend, 'review.get', { sessionId });
  return {
    version: review.rubric?.version,
    flags: review.entries.flatMap((entry) => entry.flags.map(({ criterion, fault }) => `${criterion} ${fault}`)),
    ticks: review.entries.flatMap((entry) => entry.ticks.map(({ criterion }) => criterion)),
  };
};

describe('a session judged by another version of the rubric', () => {
  it('is new under the newest version there is', async () => {
    const { rubricVersions, rubric } = await ask(backend, 'catalogue.get', {});
    expect(rubricVersions).toEqual([1, 2, 3]);
    expect(rubric.version).toBe(3);
    expect((await judged()).version).toBe(3);
  });

  it('moves flags to where their faults belong, drops what means nothing there, and undo takes all of it back', async () => {
    await ask(backend, 'flags.add', {
      clipId,
      criterion: 'setUp',
      fault: 'safetyArmsMissing',
      severity: 'stop',
      reps: 'set',
      frame: 30,
    });
    for (const criterion of ['depth', 'gaze']) {
      await ask(backend, 'ticks.set', { clipId, criterion, reps: 'set', fine: true });
    }
    const before = await judged();
    await judgeBy(1);
    expect((await historyOf(backend, sessionId)).undo).toBe('Judged by version 1 of the rubric');
    expect(await judged()).toEqual({ version: 1, flags: ['barPath safetyArmsMissing'], ticks: ['depth'] });
    await ask(backend, 'history.undo', { sessionId });
    expect(await judged()).toEqual(before);
    expect(before.flags).toEqual(['setUp safetyArmsMissing']);
  });

  it('is graded by that version, and takes flags on its criteria alone', async () => {
    const gaze = { clipId, criterion: 'gaze', severity: 'prefer', reps: 'set', frame: 30 } as const;
    await judgeBy(1);
    expect((await ask(backend, 'grade.get', { sessionId })).rubric.version).toBe(1);
    expect((await refusal(backend, 'flags.add', gaze)).sentence).toMatch(/gaze/i);
    await judgeBy(2);
    expect((await ask(backend, 'grade.get', { sessionId })).rubric.version).toBe(2);
    await ask(backend, 'flags.add', gaze);
    expect((await judged()).flags).toEqual(['gaze null']);
  });

  it('stays as it is when there is no such version', async () => {
    const { code, sentence } = await refusal(backend, 'sessions.rejudge', { sessionId, version: 7 });
    expect(code).toBe('not-found');
    expect(sentence).toMatch(/version 7/);
    expect((await refusal(backend, 'catalogue.get', { version: 7 })).code).toBe('not-found');
    expect((await judged()).version).toBe(3);
  });
});
