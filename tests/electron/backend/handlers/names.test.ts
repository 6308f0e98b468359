import { readdirSync, readFileSync } from 'node:fs';
import path from 'node:path';
import { expect, it } from 'vitest';
import type { Backend } from '../../../../electron/contract/backend.ts';
import { ask, historyOf, newLibrary, refusal, temporaryFolder } from '../workbench.ts';

/** A session whose trainee wants no name shown and is called like two words. */
async function nameless() {
  const backend = await newLibrary();
  const trainee = { name: 'Mark Will', goal: 'growth', experience: 'new', units: 'kg', minor: false } as const;
  const { traineeId } = await ask(backend, 'trainees.add', { ...trainee, names: 'none' });
  const { sessionId } = await ask(backend, 'sessions.add', { traineeId, title: 'Mark Will', date: '2026-03-04' });
  await ask(backend, 'entries.add', { sessionId, exercise: 'back-squat' });
  await ask(backend, 'letters.edit', { sessionId, paragraph: 'greeting', words: 'Mark the floor, you will see.' });
  return { backend, sessionId, traineeId };
}

const doubtsOf = async (backend: Backend, sessionId: string) =>
  (await ask(backend, 'names.doubts', { sessionIds: [sessionId] })).flatMap(({ doubts }) => doubts);

const placesOf = async (backend: Backend, sessionId: string) =>
  (await doubtsOf(backend, sessionId)).map(({ place, before, word, after }) => ({ place, before, word, after }));

it('lets nothing leave while a word may be the hidden name, and shows where it stands', async () => {
  const { backend, sessionId } = await nameless();
  expect(await doubtsOf(backend, sessionId)).toEqual([
    {
      kind: 'letter',
      place: 'letter/greeting',
      before: '',
      word: 'Mark',
      after: ' the floor, you will see.',
      clip: null,
    },
    {
      kind: 'letter',
      place: 'letter/greeting',
      before: 'Mark the floor, you ',
      word: 'will',
      after: ' see.',
      clip: null,
    },
  ]);
  const out = temporaryFolder();
  const document = { sessionId, document: 'sheet', format: 'json', path: path.join(out, 'sheet.json') } as const;
  const refused = [
    await refusal(backend, 'documents.write', document),
    await refusal(backend, 'letters.send', { sessionId }),
    await refusal(backend, 'handover.start', { sessionIds: [sessionId], folder: out }),
  ];
  for (const { code, sentence } of refused) {
    expect(code).toBe('conflict');
    expect(sentence).toMatch(/^2 places in the session of Mark Will \(2026-03-04\) may hold the hidden name/);
  }
  expect(readdirSync(out)).toEqual([]);
  expect(await ask(backend, 'names.doubts', { sessionIds: [sessionId], names: 'full' })).toEqual([]);
});

it('hides the name and leaves the word, as it was said, until the words change or that is undone', async () => {
  const { backend, sessionId } = await nameless();
  const [first, second] = await placesOf(backend, sessionId);
  if (first === undefined || second === undefined) throw new Error('Two places were expected.');
  await ask(backend, 'names.decide', { sessionId, places: [first], is: 'noName' });
  expect(await placesOf(backend, sessionId)).toEqual([second]);
  await ask(backend, 'names.decide', { sessionId, places: [second], is: 'name' });
  expect(await doubtsOf(backend, sessionId)).toEqual([]);
  const file = path.join(temporaryFolder(), 'letter.md');
  await ask(backend, 'documents.write', { sessionId, document: 'letter', format: 'md', path: file });
  const words = readFileSync(file, 'utf8');
  expect(words).toContain('Mark the floor, you Trainee see.');
  expect(words).not.toContain('Mark Will');
  await ask(backend, 'names.decide', { sessionId, places: [second], is: 'noName' });
  await ask(backend, 'documents.write', { sessionId, document: 'letter', format: 'md', path: file });
  expect(readFileSync(file, 'utf8')).toContain('Mark the floor, you will see.');
  expect((await historyOf(backend, sessionId)).undo).toBe('A word marked as not a name');
  for (const _ of [1, 2]) await ask(backend, 'history.undo', { sessionId });
  expect(await placesOf(backend, sessionId)).toEqual([second]);
  await ask(backend, 'letters.edit', { sessionId, paragraph: 'greeting', words: 'Mark the wall.' });
  expect((await placesOf(backend, sessionId)).map(({ word }) => word)).toEqual(['Mark']);
});

it('asks in every text that a person wrote', async () => {
  const { backend, sessionId } = await nameless();
  await ask(backend, 'letters.edit', { sessionId, paragraph: 'greeting', words: null });
  await ask(backend, 'sessions.update', {
    sessionId,
    title: 'Mark one',
    notes: 'Rest, Mark.',
    painNote: 'Will it hurt?',
  });
  expect((await doubtsOf(backend, sessionId)).map(({ kind, word }) => [kind, word])).toEqual([
    ['title', 'Mark'],
    ['notes', 'Mark'],
    ['painNote', 'Will'],
  ]);
});

it('keeps names composed, whichever way they come', async () => {
  const backend = await newLibrary();
  const trainee = { goal: 'growth', experience: 'new', units: 'kg', minor: false } as const;
  await ask(backend, 'trainees.add', { ...trainee, name: 'Zoë Müller'.normalize('NFD') });
  const trainees = await ask(backend, 'desk.trainees', {});
  expect(trainees.map(({ name }) => name)).toEqual(['Zoë Müller'.normalize('NFC')]);
});
