import { describe, expect, it } from 'vitest';
import type { Backend } from '../../../../electron/contract/backend.ts';
import { ask, newLibrary, refusal, sessionWithClips } from '../workbench.ts';

/** A session of one clip with two reps; depth of rep 1 a correction, of rep 2 fine. */
async function judged(backend: Backend): Promise<string> {
  const { sessionId, clipId } = await sessionWithClips(backend);
  for (const frame of [10, 100]) await ask(backend, 'reps.mark', { clipId, edge: 'start', frame });
  await ask(backend, 'flags.add', { clipId, criterion: 'depth', severity: 'correct', reps: [1], frame: 40 });
  await ask(backend, 'ticks.set', { clipId, criterion: 'depth', reps: [2], fine: true });
  return sessionId;
}

/** A colleague's review of the same two reps, written by hand: depth a preference on rep 1, fine on rep 2. */
const colleague = (exercise = 'back-squat') => ({
  format: 'rackside-review',
  version: 4,
  trainee: { name: 'Mira Holt' },
  session: { date: '2026-03-04' },
  entries: [
    {
      id: 'theirs',
      exercise,
      clips: [
        {
          id: 'their-clip',
          name: 'Set 1',
          view: 'side',
          reps: [1, 2].map((index) => ({ index, start: { seconds: index * 3 - 2.7 } })),
        },
      ],
      flags: [{ clip: 'their-clip', criterion: 'depth', severity: 'prefer', reps: [1], at: { seconds: 1 } }],
      ticks: [{ clip: 'their-clip', criterion: 'depth', reps: [2] }],
    },
  ],
});

describe('a session beside a colleague’s review file', () => {
  it('agrees on one of two moments, and the other is told by the session’s own clip', async () => {
    const backend = await newLibrary();
    const sessionId = await judged(backend);
    const text = JSON.stringify(colleague());
    const { agreement, clips } = await ask(backend, 'agreement.compareFile', { sessionId, name: 'ines.json', text });
    expect(agreement).toMatchObject({ overall: { moments: 2, percent: 0.5 }, onlyFirst: 0, onlySecond: 0 });
    expect(agreement.differences).toMatchObject([
      { clip: clips[0]?.id, rep: 1, first: { severity: 'correct' }, second: { severity: 'prefer' } },
    ]);
    expect((await ask(backend, 'desk.sessions', {})).sessions).toHaveLength(1);
  });

  it('is refused in one sentence when the file is no review, or shows another exercise', async () => {
    const backend = await newLibrary();
    const sessionId = await judged(backend);
    const sentence = async (text: string) =>
      (await refusal(backend, 'agreement.compareFile', { sessionId, name: 'ines.json', text })).sentence;
    expect(await sentence('{')).toBe('“ines.json” is not valid JSON, so it can’t be read as a review.');
    expect(await sentence('{"format": "another"}')).toMatch(/^[^\n]+\.$/);
    expect(await sentence(JSON.stringify(colleague('romanian-deadlift')))).toMatch(
      /no clip of the same exercise in common/,
    );
  });
});
