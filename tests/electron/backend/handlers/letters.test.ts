import { readFileSync } from 'node:fs';
import path from 'node:path';
import Database from 'better-sqlite3';
import { describe, expect, it } from 'vitest';
import type { Backend } from '../../../../electron/contract/backend.ts';
import { alterLibrary } from '../alterLibrary.ts';
import {
  ask,
  backendOn,
  historyOf,
  nameInWords,
  newLibrary,
  preparedLibrary,
  refusal,
  sessionWithClips,
  temporaryFolder,
} from '../workbench.ts';

const bySelf = { score: 88, reason: 'First heavy day after a long break.' };

/** A clip with one rep and one flag that stands in the letter. */
async function flagged(backend: Backend) {
  const session = await sessionWithClips(backend);
  const { clipId } = session;
  await ask(backend, 'reps.mark', { clipId, edge: 'start', frame: 10 });
  const flag = {
    clipId,
    criterion: 'depth',
    fault: 'shortOfDepth',
    severity: 'correct' as const,
    reps: [1],
    frame: 40,
  };
  const { flagId } = await ask(backend, 'flags.add', flag);
  return { ...session, flagId };
}

const lineOf = async (backend: Backend, sessionId: string, id: string) =>
  (await ask(backend, 'letters.get', { sessionId })).paragraphs.find((line) => line.id === id);

describe('what is fixed in a letter', () => {
  it.each(['basis', 'cautions-1'])('can’t be put in other words: %s', async (paragraph) => {
    const backend = await newLibrary();
    const { sessionId } = await flagged(backend);
    expect(await lineOf(backend, sessionId, paragraph)).toMatchObject({ kind: 'fixed' });
    const problem = await refusal(backend, 'letters.edit', { sessionId, paragraph, words: 'Go heavy.' });
    expect(problem.code).toBe('bad-request');
    const { html } = await ask(backend, 'documents.preview', { sessionId, document: 'letter' });
    expect(html).toContain('not medical advice');
    expect(html).not.toContain('Go heavy.');
  });
});

describe('a grade set by hand', () => {
  it('counts on every screen, is one act, and can be taken back', async () => {
    const backend = await newLibrary();
    const { sessionId, entryId } = await flagged(backend);
    await ask(backend, 'grades.override', { sessionId, entryId, override: bySelf });
    expect((await historyOf(backend, sessionId)).undo).toBe('Grade set by hand: Back squat');
    const grade = await ask(backend, 'grade.get', { sessionId });
    expect(grade.entries[0]).toMatchObject({ state: { score: 88 }, override: { reason: bySelf.reason } });
    const { html } = await ask(backend, 'documents.preview', { sessionId, document: 'letter' });
    expect(html).toContain(bySelf.reason);
    expect((await ask(backend, 'documents.preview', { sessionId, document: 'sheet' })).html).toContain(bySelf.reason);
    const { review } = await ask(backend, 'review.get', { sessionId });
    expect(review.entries[0]?.override).toEqual(bySelf);
    await ask(backend, 'grades.override', { sessionId, entryId, override: null });
    expect((await ask(backend, 'grade.get', { sessionId })).entries[0]?.override).toBeNull();
  });

  it('of the session itself is kept apart from its exercises’', async () => {
    const backend = await newLibrary();
    const { sessionId } = await flagged(backend);
    await ask(backend, 'grades.override', { sessionId, entryId: null, override: bySelf });
    const grade = await ask(backend, 'grade.get', { sessionId });
    expect(grade).toMatchObject({ state: { mark: 'B+' }, override: { reason: bySelf.reason } });
    expect(grade.entries[0]?.override).toBeNull();
    const { sessions } = await ask(backend, 'desk.sessions', {});
    expect(sessions[0]).toMatchObject({ mark: 'B+', byHand: true });
  });

  it('is refused without a reason', async () => {
    const backend = await newLibrary();
    const { sessionId } = await flagged(backend);
    const override = { score: 88, reason: '  ' };
    expect((await refusal(backend, 'grades.override', { sessionId, entryId: null, override })).code).toBe(
      'bad-request',
    );
  });
});

describe('a letter in the library', () => {
  it('keeps the coach’s words over new flags, and says when what they rest on has changed', async () => {
    const backend = await newLibrary();
    const { sessionId, flagId } = await flagged(backend);
    const paragraph = 'priority-depth-shortOfDepth-back-squat-seen';
    const before = await lineOf(backend, sessionId, paragraph);
    await ask(backend, 'letters.edit', { sessionId, paragraph, words: 'Rep 1 turns round a hand too high.' });
    expect(await lineOf(backend, sessionId, paragraph)).toMatchObject({ edited: true, stale: false });
    await ask(backend, 'flags.update', { flagId, change: { frame: 60 } });
    const after = await lineOf(backend, sessionId, paragraph);
    expect(after).toMatchObject({ words: 'Rep 1 turns round a hand too high.', edited: true, stale: true });
    expect(after?.own).not.toBe(before?.own);
    const { html } = await ask(backend, 'documents.preview', { sessionId, document: 'letter' });
    expect(html).toContain('Rep 1 turns round a hand too high.');
    await ask(backend, 'letters.edit', { sessionId, paragraph, words: null });
    expect(await lineOf(backend, sessionId, paragraph)).toMatchObject({ edited: false, words: after?.own });
  });

  it('brings an edit back with its paragraph', async () => {
    const backend = await newLibrary();
    const { sessionId, flagId } = await flagged(backend);
    const paragraph = 'priority-depth-shortOfDepth-back-squat-why';
    await ask(backend, 'letters.edit', { sessionId, paragraph, words: 'Because we agreed on it.' });
    await ask(backend, 'flags.remove', { flagId });
    expect((await ask(backend, 'letters.get', { sessionId })).waiting).toEqual([
      { id: paragraph, words: 'Because we agreed on it.' },
    ]);
    await ask(backend, 'history.undo', { sessionId });
    expect(await lineOf(backend, sessionId, paragraph)).toMatchObject({ words: 'Because we agreed on it.' });
  });

  it('is written in the language, length and tone that were chosen for it', async () => {
    const backend = await newLibrary();
    const { sessionId } = await flagged(backend);
    await ask(backend, 'letters.style', { sessionId, style: { language: 'de', length: 'short' } });
    const { html } = await ask(backend, 'documents.preview', { sessionId, document: 'letter' });
    expect(html).toContain('<html lang="de">');
    expect(html).toContain('Hallo Mira,');
    const { style } = await ask(backend, 'letters.get', { sessionId });
    expect(style).toEqual({ language: 'de', length: 'short', tone: 'plain' });
  });

  it('stays as it was sent, whatever is judged afterwards; sent again it is version 2', async () => {
    const { folder } = await preparedLibrary();
    const backend = backendOn(folder);
    const { sessionId } = await flagged(backend);
    const first = await ask(backend, 'letters.send', { sessionId });
    expect(first).toMatchObject({ version: 1, rubricVersion: 3 });
    const sent = await ask(backend, 'letters.sent', { sessionId, version: 1 });
    const { clipId } = await ask(backend, 'review.get', { sessionId }).then(({ media }) => ({
      clipId: media[0]?.clipId ?? '',
    }));
    await ask(backend, 'flags.add', { clipId, criterion: 'pauses', severity: 'correct', reps: 'set', frame: 50 });
    await ask(backend, 'sessions.rejudge', { sessionId, version: 1 });
    expect(await ask(backend, 'letters.sent', { sessionId, version: 1 })).toEqual(sent);
    const second = await ask(backend, 'letters.send', { sessionId });
    expect(second).toMatchObject({ version: 2, rubricVersion: 1 });
    expect(second.sha256).not.toBe(first.sha256);
    expect((await ask(backend, 'letters.get', { sessionId })).sent.map(({ version }) => version)).toEqual([1, 2]);
    const acts = await ask(backend, 'history.list', { sessionId });
    expect(acts.map(({ name }) => nameInWords(name))).toContain('Letter sent, version 2');
    const database = new Database(path.join(folder, 'rackside.sqlite'), { readonly: true });
    expect(database.prepare('SELECT count(*) FROM sent_letter').pluck().get()).toBe(2);
    database.close();
  });

  it('is written to a file as it was sent, and not shown once its words were changed from outside', async () => {
    const { folder } = await preparedLibrary();
    const backend = backendOn(folder);
    const { sessionId } = await flagged(backend);
    await ask(backend, 'letters.send', { sessionId });
    await ask(backend, 'letters.edit', { sessionId, paragraph: 'greeting', words: 'Written later.' });
    const file = path.join(temporaryFolder(), 'sent.md');
    const written = { sessionId, document: 'letter', format: 'md', sentVersion: 1, path: file } as const;
    await ask(backend, 'documents.write', written);
    expect(readFileSync(file, 'utf8')).toContain('Hello Mira,');
    expect(readFileSync(file, 'utf8')).not.toContain('Written later.');
    alterLibrary(
      folder,
      `DROP TRIGGER sent_letter_frozen;
       UPDATE sent_letter SET document = replace(document, 'Hello Mira', 'Hello Nobody')`,
    );
    const problem = await refusal(backend, 'letters.sent', { sessionId, version: 1 });
    expect(problem.sentence).toMatch(/^Version 1 of this letter is no longer what was sent/);
    expect((await refusal(backend, 'documents.write', written)).sentence).toBe(problem.sentence);
  });

  it('is not sent back by undo, which takes back edit, style and grade one by one', async () => {
    const backend = await newLibrary();
    const { sessionId } = await flagged(backend);
    const first = await ask(backend, 'letters.get', { sessionId });
    await ask(backend, 'letters.edit', { sessionId, paragraph: 'greeting', words: 'Dear Mira,' });
    await ask(backend, 'letters.style', { sessionId, style: { tone: 'warm' } });
    await ask(backend, 'grades.override', { sessionId, entryId: null, override: bySelf });
    await ask(backend, 'letters.send', { sessionId });
    for (const name of ['Grade set by hand: the session', 'Style of the letter', 'Letter edited']) {
      expect((await historyOf(backend, sessionId)).undo).toBe(name);
      await ask(backend, 'history.undo', { sessionId });
    }
    const { sent, ...now } = await ask(backend, 'letters.get', { sessionId });
    const { sent: _, ...before } = first;
    expect(now).toEqual(before);
    expect(sent.map(({ version }) => version)).toEqual([1]);
  });

  it('is no longer edited once the words are what it says by itself', async () => {
    const backend = await newLibrary();
    const { sessionId } = await flagged(backend);
    await ask(backend, 'letters.edit', { sessionId, paragraph: 'greeting', words: 'Dear Mira,' });
    expect(await lineOf(backend, sessionId, 'greeting')).toMatchObject({ edited: true });
    await ask(backend, 'letters.edit', { sessionId, paragraph: 'greeting', words: 'Hello Mira,' });
    expect(await lineOf(backend, sessionId, 'greeting')).toMatchObject({ edited: false, words: 'Hello Mira,' });
  });

  it('keeps its words as typed and refuses none at all', async () => {
    const backend = await newLibrary();
    const { sessionId } = await flagged(backend);
    await ask(backend, 'letters.edit', { sessionId, paragraph: 'greeting', words: 'Dear ' });
    expect(await lineOf(backend, sessionId, 'greeting')).toMatchObject({ words: 'Dear ' });
    const problem = await refusal(backend, 'letters.edit', { sessionId, paragraph: 'greeting', words: ' \n' });
    expect(problem.code).toBe('bad-request');
  });

  it('of a second look is never written, shown or sent', async () => {
    const backend = await newLibrary();
    const { sessionId } = await flagged(backend);
    const second = await ask(backend, 'secondLook.start', { sessionId });
    expect((await refusal(backend, 'letters.send', { sessionId: second.sessionId })).code).toBe('conflict');
    expect((await refusal(backend, 'letters.get', { sessionId: second.sessionId })).sentence).toMatch(/has no letter/);
    const preview = { sessionId: second.sessionId, document: 'letter' } as const;
    expect((await refusal(backend, 'documents.preview', preview)).code).toBe('conflict');
  });

  it('refuses to edit a paragraph it does not have', async () => {
    const backend = await newLibrary();
    const { sessionId } = await flagged(backend);
    const problem = await refusal(backend, 'letters.edit', { sessionId, paragraph: 'nowhere', words: 'x' });
    expect(problem.code).toBe('not-found');
  });
});
