import { describe, expect, it } from 'vitest';
import type { Backend } from '../../../../electron/contract/backend.ts';
import { ask, backendOn, historyOf, libraryWithClips, refusal } from '../workbench.ts';

/** A session with one rep and one flag. */
async function flagged() {
  const library = await libraryWithClips();
  const { backend, clipId } = library;
  await ask(backend, 'reps.mark', { clipId, edge: 'start', frame: 10 });
  await ask(backend, 'flags.add', {
    ...{ clipId, criterion: 'depth', fault: 'shortOfDepth', severity: 'correct', reps: [1], frame: 40 },
  });
  return library;
}

const letterOf = (backend: Backend, sessionId: string) => ask(backend, 'letters.get', { sessionId });
const idsOf = async (backend: Backend, sessionId: string) =>
  (await letterOf(backend, sessionId)).paragraphs.map(({ id }) => id);
const pageOf = async (backend: Backend, sessionId: string, document: 'letter' | 'filmingCard' = 'letter') =>
  (await ask(backend, 'documents.preview', { sessionId, document })).html;

describe('a paragraph of the letter', () => {
  it('is left out, listed with its words, and brought back; each is an act that undo takes back', async () => {
    const { backend, sessionId } = await flagged();
    const before = await pageOf(backend, sessionId);
    await ask(backend, 'letters.edit', { sessionId, paragraph: 'opening', words: 'What a week.' });
    const edited = await pageOf(backend, sessionId);
    await ask(backend, 'letters.leaveOut', { sessionId, paragraph: 'opening' });
    expect(await pageOf(backend, sessionId)).not.toContain('What a week.');
    expect((await letterOf(backend, sessionId)).leftOut).toMatchObject([{ id: 'opening', words: 'What a week.' }]);
    expect((await historyOf(backend, sessionId)).undo).toBe('Paragraph left out of the letter');
    await ask(backend, 'letters.bringBack', { sessionId, paragraph: 'opening' });
    expect(await pageOf(backend, sessionId)).toBe(edited);
    for (const _ of [1, 2, 3]) await ask(backend, 'history.undo', { sessionId });
    expect(await pageOf(backend, sessionId)).toBe(before);
  });

  it('is added by the coach where they ask for it, in no document until it has words', async () => {
    const { backend, sessionId } = await flagged();
    const before = await pageOf(backend, sessionId);
    const { paragraph } = await ask(backend, 'letters.add', { sessionId, after: 'overall' });
    const ids = await idsOf(backend, sessionId);
    expect(ids.indexOf(paragraph)).toBe(ids.indexOf('overall') + 1);
    expect(await pageOf(backend, sessionId)).toBe(before);
    await ask(backend, 'letters.edit', { sessionId, paragraph, words: 'Good luck on Sunday.\nCall me after.' });
    expect(await pageOf(backend, sessionId)).toMatch(
      /<p[^>]*>Good luck on Sunday\.<\/p>\n<p[^>]*>Call me after\.<\/p>/,
    );
    await ask(backend, 'letters.remove', { sessionId, paragraph });
    expect(await pageOf(backend, sessionId)).toBe(before);
  });

  it('that never got words is gone when it is left out, not listed', async () => {
    const { backend, sessionId } = await flagged();
    const { paragraph } = await ask(backend, 'letters.add', { sessionId, after: 'overall' });
    await ask(backend, 'letters.leaveOut', { sessionId, paragraph });
    const { paragraphs, leftOut } = await letterOf(backend, sessionId);
    expect([...paragraphs, ...leftOut].map(({ id }) => id)).not.toContain(paragraph);
  });

  it('is moved after another one, and stays there when the letter is written anew', async () => {
    const { backend, sessionId, clipId } = await flagged();
    await ask(backend, 'letters.move', { sessionId, paragraph: 'overall', after: 'sign-off' });
    const place = (ids: readonly string[]) => ids.indexOf('overall') - ids.indexOf('sign-off');
    expect(place(await idsOf(backend, sessionId))).toBe(1);
    await ask(backend, 'flags.add', { clipId, criterion: 'barPath', severity: 'adjust', reps: 'set', frame: 60 });
    expect(place(await idsOf(backend, sessionId))).toBe(1);
  });

  it('that asks for a clip is left out of the page on filming too', async () => {
    const { backend, sessionId } = await flagged();
    const ask1 = (await letterOf(backend, sessionId)).paragraphs.find(({ id }) => id.startsWith('film-'));
    expect(ask1?.kind).toBe('paragraph');
    const words = ask1?.words ?? '';
    expect(await pageOf(backend, sessionId, 'filmingCard')).toContain(words);
    await ask(backend, 'letters.leaveOut', { sessionId, paragraph: ask1?.id ?? '' });
    expect(await pageOf(backend, sessionId, 'filmingCard')).not.toContain(words);
  });

  it('tells the exercise it speaks of, and the letter the name it greets', async () => {
    const { backend, sessionId } = await flagged();
    const { paragraphs, name } = await letterOf(backend, sessionId);
    expect(name).toBe('Mira');
    expect(paragraphs.find(({ id }) => id.endsWith('-seen'))?.exercise).toBe('back squat');
  });
});

describe('cautions, pain and stop', () => {
  it.each(['pain-1', 'stop-1', 'basis', 'cautions-1', 'overall-heading'])('stay: %s', async (paragraph) => {
    const { backend, sessionId, clipId } = await flagged();
    await ask(backend, 'sessions.update', { sessionId, painNote: 'Left knee hurts, 3/10' });
    await ask(backend, 'flags.add', { clipId, criterion: 'spinePosition', severity: 'stop', reps: 'set', frame: 60 });
    for (const request of ['letters.leaveOut', 'letters.remove', 'letters.bringBack'] as const)
      expect((await refusal(backend, request, { sessionId, paragraph })).code).toMatch(/bad-request|not-found/);
    const after = 'sign-off';
    expect((await refusal(backend, 'letters.move', { sessionId, paragraph, after })).code).toMatch(
      /bad-request|not-found/,
    );
  });

  it('come before a paragraph of the coach’s own, which says that it was written before them', async () => {
    const { backend, sessionId } = await flagged();
    const { paragraph } = await ask(backend, 'letters.add', { sessionId, after: 'greeting' });
    await ask(backend, 'letters.edit', { sessionId, paragraph, words: 'Go heavy this week.' });
    const own = async () => (await letterOf(backend, sessionId)).paragraphs.find(({ id }) => id === paragraph);
    expect((await own())?.stale).toBe(false);
    await ask(backend, 'sessions.update', { sessionId, painNote: 'Left knee hurts, 3/10' });
    expect((await own())?.stale).toBe(true);
    const ids = await idsOf(backend, sessionId);
    expect(ids.indexOf(paragraph)).toBeGreaterThan(ids.indexOf('pain-1'));
    await ask(backend, 'letters.edit', { sessionId, paragraph, words: 'Easy this week.' });
    expect((await own())?.stale).toBe(false);
  });
});

describe('a letter that was sent', () => {
  it('stays in its order, and the desk knows whether anything has changed since', async () => {
    const { backend, sessionId } = await flagged();
    expect((await letterOf(backend, sessionId)).sentAlready).toBe(false);
    await ask(backend, 'letters.leaveOut', { sessionId, paragraph: 'opening' });
    await ask(backend, 'letters.send', { sessionId });
    const sent = await ask(backend, 'letters.sent', { sessionId, version: 1 });
    expect((await letterOf(backend, sessionId)).sentAlready).toBe(true);
    await ask(backend, 'letters.bringBack', { sessionId, paragraph: 'opening' });
    expect((await letterOf(backend, sessionId)).sentAlready).toBe(false);
    expect(await ask(backend, 'letters.sent', { sessionId, version: 1 })).toEqual(sent);
  });

  it('is kept with its order when the library is closed and opened again', async () => {
    const { folder, backend, sessionId } = await flagged();
    await ask(backend, 'letters.move', { sessionId, paragraph: 'overall', after: 'sign-off' });
    const ids = await idsOf(backend, sessionId);
    await backend.close();
    expect(await idsOf(backendOn(folder), sessionId)).toEqual(ids);
  });
});
