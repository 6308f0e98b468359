import { existsSync, mkdirSync, readdirSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import path from 'node:path';
import { getDocument } from 'pdfjs-dist/legacy/build/pdf.mjs';
import * as v from 'valibot';
import { expect, it } from 'vitest';
import { sheetSchema } from '../../../../engine/sheet/sheetJsonSchema.ts';
import { measuredLibrary } from '../measure/measuredLibrary.ts';
import { ask, libraryWithClips, refusal, temporaryFolder } from '../workbench.ts';

async function flaggedSession() {
  const library = await libraryWithClips();
  const { backend, clipId } = library;
  const flag = {
    clipId,
    criterion: 'depth',
    fault: 'shortOfDepth',
    severity: 'correct',
    reps: 'set',
    frame: 70,
  } as const;
  await ask(backend, 'flags.add', flag);
  return library;
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
    sentence: expect.stringMatching(/does not exist, so nothing was written/),
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

/** A page without its style, whose faces are long strings of any letters. */
const wordsOf = (html: string): string => html.replace(/<style>.*?<\/style>/s, '');

it('brings the faces that a PDF has along, and the scheme that the desk has chosen', async () => {
  const { backend, sessionId } = await flaggedSession();
  const { html } = await ask(backend, 'documents.preview', { sessionId, document: 'letter' });
  const faces = [...html.matchAll(/@font-face {([^}]*)}/g)].map(([, rules = '']) => rules);
  const named = (rules: string) =>
    /font-family: "([^"]*)"; font-weight: (\d+); font-style: (\w+)/.exec(rules)?.slice(1);
  // What the PDF embeds: Atkinson Hyperlegible Next in three cuts, its Mono for times.
  expect(faces.map(named)).toEqual([
    ['Atkinson Hyperlegible Next', '400', 'normal'],
    ['Atkinson Hyperlegible Next', '700', 'normal'],
    ['Atkinson Hyperlegible Next', '400', 'italic'],
    ['Atkinson Hyperlegible Mono', '400', 'normal'],
  ]);
  for (const rules of faces) {
    const [, base64 = ''] = /url\(data:font\/woff2;base64,([^)]*)\)/.exec(rules) ?? [];
    // WOFF File Format 2.0, 4.1: the signature.
    expect(Buffer.from(base64, 'base64').subarray(0, 4).toString('latin1')).toBe('wOF2');
  }
  expect(html).toContain('<html lang="en">');
  const dark = await ask(backend, 'documents.preview', { sessionId, document: 'letter', scheme: 'dark' });
  expect(dark.html).toContain('<html lang="en" data-scheme="dark">');
});

it.each(['letter', 'sheet', 'breakdown', 'filmingCard'] as const)(
  'names the trainee as they want to be in the %s, also once it was sent',
  async (document) => {
    const { backend, sessionId, traineeId } = await flaggedSession();
    await ask(backend, 'trainees.names', { traineeId, names: 'initials' });
    const { html } = await ask(backend, 'documents.preview', { sessionId, document });
    expect(wordsOf(html)).not.toMatch(/Mira|Holt/);
    await ask(backend, 'letters.send', { sessionId });
    const sent = await ask(backend, 'letters.sent', { sessionId, version: 1 });
    expect(wordsOf(sent.html)).not.toMatch(/Mira|Holt/);
  },
);

it('sets a PDF for the paper that was asked for', async () => {
  const { backend, sessionId } = await flaggedSession();
  const out = temporaryFolder();
  // ISO 216: A4 is 210 x 297 mm. ANSI/ASME Y14.1: size A, US Letter, is 8.5 x 11 in. In points of 1/72 in.
  const sizes = { a4: [(210 / 25.4) * 72, (297 / 25.4) * 72], letter: [8.5 * 72, 11 * 72] } as const;
  for (const paper of ['a4', 'letter'] as const) {
    const file = path.join(out, `${paper}.pdf`);
    await ask(backend, 'documents.write', { sessionId, document: 'letter', format: 'pdf', paper, path: file });
    const pdf = await getDocument({ data: new Uint8Array(readFileSync(file)) }).promise;
    const [, , width = 0, height = 0] = (await pdf.getPage(1)).view;
    expect(Math.abs(width - sizes[paper][0])).toBeLessThan(0.5);
    expect(Math.abs(height - sizes[paper][1])).toBeLessThan(0.5);
  }
});

it('tells in the sheet what was measured', async () => {
  const { backend, sessionId, clipId } = await measuredLibrary();
  const file = path.join(temporaryFolder(), 'sheet.json');
  await ask(backend, 'documents.write', { sessionId, document: 'sheet', format: 'json', path: file });
  const { measurement } = await ask(backend, 'measures.get', { clipId });
  const written: unknown = JSON.parse(readFileSync(file, 'utf8'));
  const [told, ...others] = v.parse(sheetSchema, written).measures;
  expect(others).toEqual([]);
  expect(told?.reps.length).toBeGreaterThan(0);
  expect(told?.reps.map(({ rep }) => rep)).toEqual(measurement?.reps.map(({ index }) => index));
});

it('shows in letter and sheet, as PDF and as HTML, what the remarks speak of, when asked to', async () => {
  const { backend, sessionId } = await flaggedSession();
  const out = temporaryFolder();
  for (const document of ['letter', 'sheet'] as const) {
    const write = async (format: 'html' | 'pdf' | 'md', stills: boolean) => {
      const file = path.join(out, `${document}-${stills}.${format}`);
      await ask(backend, 'documents.write', { sessionId, document, format, stills, path: file });
      return readFileSync(file, 'latin1');
    };
    expect((await write('html', true)).match(/<img [^>]*src="data:image\/jpeg;base64,/g)).toHaveLength(1);
    expect(await write('html', false)).not.toContain('<img');
    // ISO 32000-1, 8.9.5: a JPEG is an image of the filter DCTDecode.
    expect(await write('pdf', true)).toMatch(/\/DCTDecode/);
    expect(await write('pdf', false)).not.toMatch(/\/DCTDecode/);
    expect(await write('md', true)).not.toMatch(/!\[/);
  }
});

it('writes a letter without stills when the footage is gone', async () => {
  const { folder, backend, sessionId } = await flaggedSession();
  for (const clip of readdirSync(path.join(folder, 'clips'))) rmSync(path.join(folder, 'clips', clip));
  const file = path.join(temporaryFolder(), 'letter.html');
  const asked = { sessionId, document: 'letter', format: 'html', stills: true, path: file } as const;
  const { failed } = await ask(backend, 'documents.write', asked);
  expect(readFileSync(file, 'utf8')).toContain('Mira');
  expect(failed).toMatchObject([{ clip: 'squat-side.mp4', sentence: expect.stringMatching(/is not in the library/) }]);
});
