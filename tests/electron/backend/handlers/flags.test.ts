import { beforeEach, expect, it } from 'vitest';
import type { Backend } from '../../../../electron/contract/backend.ts';
import { ask, historyOf, libraryWithClips, refusal, sessionWithClips } from '../workbench.ts';

let backend: Backend;
let clipId: string;
let sessionId: string;

beforeEach(async () => {
  ({ backend, clipId, sessionId } = await libraryWithClips());
  await ask(backend, 'reps.mark', { clipId, edge: 'start', frame: 24 });
  await ask(backend, 'reps.mark', { clipId, edge: 'start', frame: 141 });
});

const flags = async () => (await ask(backend, 'review.get', { sessionId })).review.entries[0]?.flags ?? [];
const onRep2 = (more: { fault?: string | null; severity?: 'keep' | 'correct'; cue?: string }) =>
  ({ clipId, criterion: 'depth', severity: 'correct', reps: [2], frame: 200, ...more }) as const;
const usualCue = async (faultId: string) => {
  const { exercises } = await ask(backend, 'catalogue.get', {});
  const squat = exercises.find((exercise) => exercise.id === 'back-squat');
  return squat?.faults.find((fault) => fault.id === faultId)?.cue.outcome;
};

it('stores a judgement at the exact frame and names the act as people would', async () => {
  const { flagId } = await ask(backend, 'flags.add', {
    ...onRep2({ fault: 'shortOfDepth', cue: 'Sit to the box' }),
    reps: [2],
    note: 'a hand short',
  });
  const { table } = await ask(backend, 'clips.frameTable', { clipId });
  expect(await flags()).toEqual([
    {
      id: flagId,
      clip: clipId,
      criterion: 'depth',
      fault: 'shortOfDepth',
      severity: 'correct',
      reps: [2],
      at: { frame: 200, ticks: table.ticks[200] },
      note: 'a hand short',
      cue: 'Sit to the box',
    },
  ]);
  expect((await historyOf(backend, sessionId)).undo).toBe('Flag: Short of depth, rep 2');
});

it('gives a named fault its usual cue when the coach gave none', async () => {
  await ask(backend, 'flags.add', { ...onRep2({ fault: 'shortOfDepth' }), reps: [2] });
  expect((await flags())[0]?.cue).toBe(await usualCue('shortOfDepth'));
});

it('lets the usual cue follow a change of fault, but never a cue of the coach', async () => {
  const usual = await ask(backend, 'flags.add', { ...onRep2({ fault: 'shortOfDepth' }), reps: [2] });
  const own = await ask(backend, 'flags.add', { ...onRep2({ fault: 'shortOfDepth', cue: 'Mine' }), reps: [2] });
  for (const { flagId } of [usual, own])
    await ask(backend, 'flags.update', { flagId, change: { fault: 'depthVaries' } });
  const cues = new Map((await flags()).map((flag) => [flag.id, flag.cue]));
  expect(cues.get(usual.flagId)).toBe(await usualCue('depthVaries'));
  expect(cues.get(own.flagId)).toBe('Mine');
});

it('lets praise name no fault', async () => {
  const { flagId } = await ask(backend, 'flags.add', { ...onRep2({ severity: 'keep' }), reps: [1, 2] });
  expect((await historyOf(backend, sessionId)).undo).toBe('Praise: Depth, reps 1 and 2');
  await ask(backend, 'flags.update', { flagId, change: { severity: 'adjust', fault: 'shortOfDepth' } });
  await ask(backend, 'flags.update', { flagId, change: { severity: 'keep' } });
  expect((await flags())[0]).toMatchObject({ severity: 'keep', fault: null });
});

it('changes what is asked and nothing else', async () => {
  const { flagId } = await ask(backend, 'flags.add', { ...onRep2({ fault: 'shortOfDepth', cue: 'Mine' }), reps: [2] });
  const [before] = await flags();
  await ask(backend, 'flags.update', { flagId, change: { reps: 'set', note: 'all of them' } });
  expect(await flags()).toEqual([{ ...before, reps: 'set', note: 'all of them' }]);
  expect((await historyOf(backend, sessionId)).undo).toBe('Flag changed: Short of depth, whole set');
  await ask(backend, 'flags.remove', { flagId });
  expect(await flags()).toEqual([]);
});

it('drops a fault that the new criterion does not know', async () => {
  const { flagId } = await ask(backend, 'flags.add', { ...onRep2({ fault: 'shortOfDepth' }), reps: [2] });
  await ask(backend, 'flags.update', { flagId, change: { criterion: 'barPath' } });
  expect((await flags())[0]).toMatchObject({ criterion: 'barPath', fault: null, cue: '' });
});

it.each([
  ['a rep that is not marked', { reps: [3] }, 'conflict', /Rep 3 is not marked.*has 2 reps/],
  ['a frame beyond the footage', { frame: 5000 }, 'conflict', /has no frame 5000/],
  ['a criterion the exercise is not judged by', { criterion: 'gripWidth' }, 'bad-request', /is not judged by/],
  ['a fault of another criterion', { fault: 'barTilts' }, 'bad-request', /is not a fault of/],
  ['a severity nobody knows', { severity: 'awful' }, 'bad-request', /\bseverity\b/],
] as const)('refuses %s and changes nothing', async (_, wrong, code, sentence) => {
  const params = { ...onRep2({}), reps: [2], ...wrong };
  const problem = await refusal(backend, 'flags.add', params as never);
  expect(problem.code).toBe(code);
  expect(problem.sentence).toMatch(sentence);
  expect(await flags()).toEqual([]);
});

it('answers for a flag that is gone', async () => {
  expect((await refusal(backend, 'flags.remove', { flagId: 'gone' })).code).toBe('not-found');
});

it('keeps a plain note, which names no fault and counts for nothing, and makes it a flag when it gets a severity', async () => {
  const grade = async () =>
    (await ask(backend, 'desk.sessions', { list: 'newest', after: null })).sessions[0]?.coverage;
  const before = await grade();
  const { flagId } = await ask(backend, 'flags.add', {
    ...{ clipId, criterion: 'depth', severity: null, fault: 'shortOfDepth', reps: [2], frame: 200, note: 'belt on' },
  });
  expect(await flags()).toMatchObject([{ severity: null, fault: null, note: 'belt on', cue: '' }]);
  expect((await historyOf(backend, sessionId)).undo).toBe('Note: Depth, rep 2');
  expect(await grade()).toBe(before);
  await ask(backend, 'flags.update', { flagId, change: { severity: 'correct', fault: 'shortOfDepth' } });
  expect(await flags()).toMatchObject([{ severity: 'correct', fault: 'shortOfDepth', note: 'belt on' }]);
  await ask(backend, 'flags.update', { flagId, change: { severity: null } });
  expect(await flags()).toMatchObject([{ severity: null, fault: null }]);
});

it('copies a flag to several places in one act, each at its own frame', async () => {
  const { flagId } = await ask(backend, 'flags.add', { ...onRep2({ fault: 'shortOfDepth' }), reps: [2], note: 'high' });
  await ask(backend, 'flags.copy', {
    flagId,
    to: [
      { clipId, reps: [1], frame: 83 },
      { clipId, reps: 'set', frame: 90 },
    ],
  });
  const alike = { criterion: 'depth', fault: 'shortOfDepth', severity: 'correct', note: 'high' };
  expect(await flags()).toMatchObject([
    { ...alike, reps: [1], at: { frame: 83 } },
    { ...alike, reps: 'set', at: { frame: 90 } },
    { ...alike, reps: [2], at: { frame: 200 } },
  ]);
  expect((await historyOf(backend, sessionId)).undo).toBe('Flag copied: Short of depth, to 2 places');
  await ask(backend, 'history.undo', { sessionId });
  expect(await flags()).toHaveLength(1);
});

it('copies no flag to a clip of another session', async () => {
  const { flagId } = await ask(backend, 'flags.add', { ...onRep2({}), reps: [2] });
  const other = await sessionWithClips(backend);
  const refused = await refusal(backend, 'flags.copy', {
    flagId,
    to: [{ clipId: other.clipId, reps: 'set', frame: 3 }],
  });
  expect(refused.message.id).toBe('copyElsewhere');
});
