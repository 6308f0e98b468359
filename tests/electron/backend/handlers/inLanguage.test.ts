import { beforeEach, expect, it } from 'vitest';
import type { Backend } from '../../../../electron/contract/backend.ts';
import { ask, libraryWithClips } from '../workbench.ts';

let backend: Backend;
let clipId: string;
let sessionId: string;

beforeEach(async () => {
  ({ backend, clipId, sessionId } = await libraryWithClips());
});

const squatIn = async (language: 'en' | 'de') =>
  (await ask(backend, 'catalogue.get', { language })).exercises.find(({ id }) => id === 'back-squat');

it('gives the judging data in a language, with its names in the other one', async () => {
  const english = (await squatIn('en'))?.name ?? '';
  const german = (await squatIn('de'))?.name ?? '';
  expect(english).toBe('Back squat');
  expect(german).not.toBe(english);
  const { translations } = await ask(backend, 'catalogue.get', { language: 'de' });
  expect(translations.find(({ language }) => language === 'en')?.texts[german]).toBe(english);
  expect((await ask(backend, 'catalogue.get', {})).exercises.find(({ id }) => id === 'back-squat')?.name).toBe(english);
});

it('says the library’s own cue in a language, and leaves what was written', async () => {
  const [usual, own] = ['shortOfDepth', null].map((fault) => ({ fault, cue: fault === null ? 'Sit to the box' : '' }));
  for (const flag of [usual, own]) {
    await ask(backend, 'flags.add', {
      ...{ clipId, criterion: 'depth', severity: 'correct', reps: 'set', frame: 60 },
      ...(flag?.fault != null && { fault: flag.fault }),
      ...(flag?.cue !== '' && { cue: flag?.cue }),
    });
  }
  const fault = (await squatIn('de'))?.faults.find(({ id }) => id === 'shortOfDepth');
  const { review } = await ask(backend, 'review.get', { sessionId, language: 'de' });
  expect(review.entries[0]?.flags.map(({ cue }) => cue).sort()).toEqual([fault?.cue.outcome, 'Sit to the box'].sort());
});
