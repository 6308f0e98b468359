import { expect, it } from 'vitest';
import { createDraftKeeper } from '../../../renderer/drafts/drafts.ts';
import { FakeTimers } from '../player/fakeVideo.ts';

function keeperBench(save: (key: string, text: string) => Promise<boolean> = () => Promise.resolve(true)) {
  const timers = new FakeTimers();
  const saved: string[] = [];
  let drafts: Readonly<Record<string, string>> = {};
  const keeper = createDraftKeeper({
    save: (key, text) => {
      saved.push(`${key}: ${text}`);
      return save(key, text);
    },
    later: timers.later,
    idleMs: 500,
    onChange: (next) => {
      drafts = next;
    },
  });
  return { keeper, timers, saved, drafts: () => drafts };
}

it('saves once after a rest, not at every letter', async () => {
  const { keeper, timers, saved, drafts } = keeperBench();
  keeper.type('f1/note', 'K');
  keeper.type('f1/note', 'Kn');
  keeper.type('f1/note', 'Knee');
  expect(saved).toEqual([]);
  await timers.pass(500);
  expect(saved).toEqual(['f1/note: Knee']);
  expect(drafts()).toEqual({});
});

it('sends everything unsaved before a flush returns, as a closing window needs', () => {
  const { keeper, saved } = keeperBench();
  keeper.type('f1/note', 'Knee');
  keeper.type('f2/cue', 'Push the floor');
  void keeper.flush();
  expect(saved).toEqual(['f1/note: Knee', 'f2/cue: Push the floor']);
});

it('does not send the same text twice while its answer is awaited', () => {
  const { keeper, saved } = keeperBench(() => new Promise(() => {}));
  keeper.type('f1/note', 'Knee');
  void keeper.flush();
  void keeper.flush();
  expect(saved).toHaveLength(1);
});

it('keeps what is typed on while an older text is being saved', async () => {
  let answer = (_saved: boolean): void => {};
  const { keeper, saved, drafts } = keeperBench(
    () =>
      new Promise((resolve) => {
        answer = resolve;
      }),
  );
  keeper.type('f1/note', 'Knee');
  const first = keeper.flush();
  keeper.type('f1/note', 'Knees');
  answer(true);
  await first;
  expect(drafts()).toEqual({ 'f1/note': 'Knees' });
  void keeper.flush();
  expect(saved).toEqual(['f1/note: Knee', 'f1/note: Knees']);
});

it('keeps a text that could not be saved, and tries again', async () => {
  const { keeper, saved, drafts } = keeperBench(() => Promise.resolve(false));
  keeper.type('f1/note', 'Knee');
  await keeper.flush();
  expect(drafts()).toEqual({ 'f1/note': 'Knee' });
  await keeper.flush();
  expect(saved).toHaveLength(2);
});

it('forgets the texts of a flag that is gone', async () => {
  const { keeper, timers, saved } = keeperBench();
  keeper.type('f1/note', 'Knee');
  keeper.type('f2/note', 'Hip');
  keeper.forget('f1/');
  await timers.pass(500);
  expect(saved).toEqual(['f2/note: Hip']);
});
