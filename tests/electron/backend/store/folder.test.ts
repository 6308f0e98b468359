import { existsSync, mkdirSync, readdirSync, symlinkSync } from 'node:fs';
import path from 'node:path';
import { expect, it } from 'vitest';
import { ask, newLibrary, newSession, refusal, temporaryFolder } from '../workbench.ts';

async function sessionIn(folder: string) {
  const backend = await newLibrary(folder);
  const { sessionId } = await newSession(backend);
  const write = { sessionId, document: 'letter', format: 'html' } as const;
  return { backend, sessionId, write };
}

it('writes nothing into the library, also not through a link to one of its folders', async () => {
  const folder = temporaryFolder();
  const { backend, sessionId, write } = await sessionIn(folder);
  const link = path.join(temporaryFolder(), 'desk');
  symlinkSync(path.join(folder, 'clips'), link);
  for (const target of [path.join(folder, 'clips', 'letter.html'), path.join(link, 'letter.html')]) {
    const { code, sentence } = await refusal(backend, 'documents.write', { ...write, path: target });
    expect([code, sentence]).toEqual(['conflict', expect.stringMatching(/inside the library itself/)]);
  }
  const handed = { sessionIds: [sessionId], folder: path.join(link, 'new', 'place') };
  expect((await refusal(backend, 'handover.start', handed)).code).toBe('conflict');
  expect(readdirSync(path.join(folder, 'clips'))).toEqual([]);
});

it('knows its own folders when the library itself is reached through a link', async () => {
  const folder = temporaryFolder();
  const link = path.join(temporaryFolder(), 'library');
  symlinkSync(folder, link);
  const { backend, write } = await sessionIn(link);
  const target = path.join(folder, 'backups', 'letter.html');
  expect((await refusal(backend, 'documents.write', { ...write, path: target })).code).toBe('conflict');
});

it('writes beside the library’s own folders, and through links that lead elsewhere', async () => {
  const folder = temporaryFolder();
  const { backend, write } = await sessionIn(folder);
  const elsewhere = temporaryFolder();
  mkdirSync(path.join(elsewhere, 'letters'));
  const link = path.join(folder, 'letters');
  symlinkSync(path.join(elsewhere, 'letters'), link);
  await ask(backend, 'documents.write', { ...write, path: path.join(link, 'letter.html') });
  expect(existsSync(path.join(elsewhere, 'letters', 'letter.html'))).toBe(true);
});
