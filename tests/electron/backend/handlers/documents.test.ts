import { existsSync, mkdirSync, readdirSync, readFileSync, writeFileSync } from 'node:fs';
import path from 'node:path';
import { expect, it } from 'vitest';
import { ask, newLibrary, refusal, sessionWithClips, temporaryFolder } from '../workbench.ts';

async function flaggedSession() {
  const folder = temporaryFolder();
  const backend = await newLibrary(folder);
  const session = await sessionWithClips(backend);
  const { clipId } = session;
  const flag = {
    clipId,
    criterion: 'depth',
    fault: 'shortOfDepth',
    weight: 'correct',
    reps: 'set',
    frame: 70,
  } as const;
  await ask(backend, 'flags.add', flag);
  return { folder, backend, ...session };
}

it('writes a document whole under its name and tells how long it is', async () => {
  const { backend, sessionId } = await flaggedSession();
  const out = temporaryFolder();
  const target = path.join(out, 'letter.html');
  writeFileSync(target, 'what was here before');
  const written = await ask(backend, 'documents.write', {
    sessionId,
    document: 'letter',
    format: 'html',
    path: target,
  });
  const { html } = await ask(backend, 'documents.preview', { sessionId, document: 'letter' });
  expect(readFileSync(target, 'utf8')).toBe(html);
  expect(html).toContain('Mira');
  expect(written).toEqual({ path: target, bytes: readFileSync(target).length });
  expect(readdirSync(out)).toEqual(['letter.html']);
});

it('writes every format of the sheet', async () => {
  const { backend, sessionId, clipId } = await flaggedSession();
  const out = temporaryFolder();
  const heads: Readonly<Record<string, RegExp>> = {
    pdf: /^%PDF-/,
    vtt: /^WEBVTT/,
    srt: /^1\r\n/,
    json: /^\{/,
    jsonld: /^\{/,
    html: /^<!doctype html>/i,
    csv: /,/,
    md: /^# /,
  };
  for (const format of ['pdf', 'vtt', 'srt', 'json', 'jsonld', 'html', 'csv', 'md'] as const) {
    const file = path.join(out, `sheet.${format}`);
    const only = format === 'vtt' || format === 'srt' ? { clipId } : {};
    await ask(backend, 'documents.write', { sessionId, document: 'sheet', format, path: file, ...only });
    expect(readFileSync(file, 'latin1')).toMatch(heads[format] ?? /never/);
  }
});

it('refuses a folder that is not there, a folder for a name, and the library itself', async () => {
  const { folder, backend, sessionId } = await flaggedSession();
  const out = temporaryFolder();
  mkdirSync(path.join(out, 'letters'));
  const write = (target: string) =>
    refusal(backend, 'documents.write', { sessionId, document: 'letter', format: 'md', path: target });
  expect(await write(path.join(out, 'gone', 'letter.md'))).toMatchObject({
    code: 'not-found',
    sentence: expect.stringMatching(/is not there, so nothing was written/),
  });
  expect(existsSync(path.join(out, 'gone'))).toBe(false);
  expect((await write(path.join(out, 'letters'))).code).toBe('conflict');
  const before = readFileSync(path.join(folder, 'rackside.sqlite'));
  for (const owned of ['rackside.sqlite', 'rackside.sqlite-wal', 'clips/letter.md', 'pictures/../clips/x.md']) {
    expect((await write(path.join(folder, owned))).code).toBe('conflict');
  }
  expect(readFileSync(path.join(folder, 'rackside.sqlite')).equals(before)).toBe(true);
});

it('leaves nothing half written when the name can not be had', async () => {
  const { backend, sessionId } = await flaggedSession();
  const out = temporaryFolder();
  const tooLong = path.join(out, `${'letter'.repeat(60)}.md`);
  const params = { sessionId, document: 'letter', format: 'md', path: tooLong } as const;
  expect(await refusal(backend, 'documents.write', params)).toMatchObject({
    code: 'disk',
    sentence: expect.stringMatching(/could not be written/),
  });
  expect(readdirSync(out)).toEqual([]);
});
