import { expect, test, vi } from 'vitest';
import type { Backend } from '../../../../electron/backend/port.ts';
import type { PathChooser } from '../../../../electron/main/bridge/chosenPaths.ts';
import { windowAnswers } from '../../../../electron/main/bridge/windowAnswers.ts';

const params = { sessionId: 's1', document: 'letter', format: 'pdf', suggestedName: 'Letter: one/two' } as const;

function answers(save: string | null, reply: unknown = { ok: true, value: { path: save, bytes: 9 } }) {
  const whereToSave = vi.fn<PathChooser['whereToSave']>(async () => save);
  const ask = vi.fn(async () => reply);
  const chooser: PathChooser = { whereToSave, whichClips: async () => ['/a.mp4', '/b.mov'] };
  return { whereToSave, ask, answer: windowAnswers(chooser, ask as unknown as Backend['ask']) };
}

test('asks where with a safe name, then has the document written there', async () => {
  const { whereToSave, ask, answer } = answers('/home/letter.pdf');
  expect(await answer('documents.save', params)).toEqual({ ok: true, value: { path: '/home/letter.pdf' } });
  expect(whereToSave).toHaveBeenCalledWith({ name: 'Letter one two', extension: 'pdf' });
  expect(ask).toHaveBeenCalledWith('documents.write', {
    sessionId: 's1',
    document: 'letter',
    format: 'pdf',
    path: '/home/letter.pdf',
  });
});

test('a suggested name that brings its extension keeps one', async () => {
  const { whereToSave, answer } = answers('/home/letter.pdf');
  await answer('documents.save', { ...params, suggestedName: 'letter-2026-03-02.PDF' });
  expect(whereToSave).toHaveBeenCalledWith({ name: 'letter-2026-03-02', extension: 'pdf' });
});

test('writes nothing when the person changed their mind', async () => {
  const { ask, answer } = answers(null);
  expect(await answer('documents.save', params)).toEqual({ ok: true, value: { path: null } });
  expect(ask).not.toHaveBeenCalled();
});

test('hands on why writing failed', async () => {
  const problem = { ok: false, problem: { code: 'disk', sentence: 'The disk is full.' } };
  expect(await answers('/x.pdf', problem).answer('documents.save', params)).toEqual(problem);
});

test('gives the clips a person chose', async () => {
  expect(await answers(null).answer('clips.choose', {})).toEqual({ ok: true, value: { paths: ['/a.mp4', '/b.mov'] } });
});
