import { mkdtemp, readdir, readFile, rm, writeFile } from 'node:fs/promises';
import os from 'node:os';
import path from 'node:path';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { linesOf, run } from '../runCommand.ts';
import { squatReview, writeJson } from '../squatReview.ts';

const session = 'seeds/demo/session.json';
let folder = '';
beforeAll(async () => {
  folder = await mkdtemp(path.join(os.tmpdir(), 'rackside-documents-'));
});
afterAll(() => rm(folder, { recursive: true, force: true }));

/** How a file of each format begins. */
const beginnings: Readonly<Record<string, RegExp>> = {
  md: /^# /,
  html: /^<!doctype html>/i,
  pdf: /^%PDF-1/,
  txt: /^\S/,
  csv: /^\S+,/,
  vtt: /^WEBVTT/,
  srt: /^1\r\n/,
  json: /^\{/,
  jsonld: /^\{/,
};

describe('a document', () => {
  it.each([
    ...['md', 'html', 'pdf', 'txt'].map((format) => ['letter', format]),
    ...['md', 'html', 'pdf', 'txt'].map((format) => ['breakdown', format]),
    ...['md', 'html', 'pdf', 'txt', 'csv', 'vtt', 'srt', 'json', 'jsonld'].map((format) => ['sheet', format]),
  ])('%s is written as %s', async (document = '', format = '') => {
    const out = path.join(folder, `${document}.${format}`);
    const clip = format === 'vtt' || format === 'srt' ? ['--clip', 'squat-side'] : [];
    const { code, stdout, stderr } = await run([document, session, '--format', format, ...clip, '--out', out]);
    expect([code, stdout]).toEqual([0, '']);
    expect(linesOf(stderr)).toHaveLength(1);
    expect((await readFile(out, 'latin1')).replace(/^\u00ef\u00bb\u00bf/, '')).toMatch(beginnings[format] ?? /never/);
  });

  it('goes to standard output without --out, the same to the byte', async () => {
    const out = path.join(folder, 'same.md');
    await run(['letter', session, '--out', out]);
    const { code, stdout, stderr } = await run(['letter', session]);
    expect([code, stderr]).toEqual([0, '']);
    expect(stdout).toBe(await readFile(out, 'utf8'));
  });

  it('has the format that the name of the file says', async () => {
    const out = path.join(folder, 'by-name.html');
    const { stdout } = await run(['sheet', session, '--out', out, '--json']);
    expect(JSON.parse(stdout)).toMatchObject({ document: 'sheet', format: 'html', file: out });
    expect(await readFile(out, 'utf8')).toMatch(/^<!doctype html>/i);
  });

  it('is not printed as JSON when it is a PDF', async () => {
    const { code, stdout, stderr } = await run(['letter', session, '--format', 'pdf', '--json']);
    expect([code, stdout]).toEqual([2, '']);
    expect(linesOf(stderr)).toHaveLength(1);
  });

  it('takes no place of a folder, and needs one that is there', async () => {
    const before = await readdir(folder);
    for (const out of [folder, path.join(folder, 'nowhere', 'letter.md')]) {
      const { code, stdout, stderr } = await run(['letter', session, '--out', out]);
      expect([code, stdout]).toEqual([1, '']);
      expect(linesOf(stderr)).toHaveLength(1);
    }
    expect(await readdir(folder)).toEqual(before);
  });

  it('leaves the former file when the review is refused', async () => {
    const out = path.join(folder, 'former.md');
    await writeFile(out, 'former');
    expect((await run(['letter', 'package.json', '--out', out])).code).toBe(1);
    expect(await readFile(out, 'utf8')).toBe('former');
  });

  it('of several sessions go into one folder, and a bad session keeps none of the others back', async () => {
    const bad = path.join(folder, 'bad.json');
    await writeFile(bad, '{}');
    const out = path.join(folder, 'many');
    const { code, stdout, stderr } = await run(['letter', session, bad, session, '--format', 'txt', '--out', out]);
    expect([code, stdout]).toEqual([1, '']);
    expect(linesOf(stderr).at(-1)).toMatch(/^1 of 3 sessions failed \(".*bad\.json"\); the others were written\.$/);
    expect((await readdir(out)).sort()).toEqual([
      'letter-robin-thale-2026-10-18-2.txt',
      'letter-robin-thale-2026-10-18.txt',
    ]);
  });

  it('of several sessions are told in one JSON document, the bad one with its problem', async () => {
    const bad = path.join(folder, 'worse.json');
    await writeFile(bad, '{}');
    const out = path.join(folder, 'many-told');
    const { code, stdout } = await run(['sheet', session, bad, '--format', 'csv', '--out', out, '--json']);
    expect(code).toBe(1);
    const file = path.join(out, 'sheet-robin-thale-2026-10-18.csv');
    expect(JSON.parse(stdout)).toEqual([
      { document: 'sheet', format: 'csv', file, bytes: (await readFile(file)).length },
      { document: 'sheet', format: 'csv', file: null, problem: expect.stringMatching(/worse\.json: .*\.$/) },
    ]);
  });

  it('leave no folder behind when none of several sessions could be written', async () => {
    const bad = path.join(folder, 'no-review.json');
    await writeFile(bad, '{}');
    expect((await run(['letter', bad, bad, '--out', path.join(folder, 'never', 'made')])).code).toBe(1);
    expect(await readdir(folder)).not.toContain('never');
  });

  it('of several sessions need a folder', async () => {
    const { code, stdout } = await run(['sheet', session, session, '--format', 'csv']);
    expect([code, stdout]).toEqual([2, '']);
  });

  it('is shorter when asked to, and says every flag all the same', async () => {
    const full = (await run(['sheet', session])).stdout;
    const short = (await run(['sheet', session, '--length', 'short'])).stdout;
    expect(short.length).toBeLessThan(full.length);
    const { entries } = JSON.parse(await readFile(session, 'utf8'));
    const notes = entries.flatMap(({ flags }: { flags: { note: string }[] }) => flags.map(({ note }) => note));
    for (const note of notes) if (note !== '') expect(short).toContain(note.slice(0, 20));
  });

  it('shows what to change in pictures when asked to', async () => {
    const { code, stdout } = await run([
      'letter',
      session,
      '--format',
      'html',
      '--stills',
      '--names',
      'initials',
      '--footage-outside',
    ]);
    expect(code).toBe(0);
    // The demo's letter has three things to change, each with a remark on film.
    expect(stdout.match(/<img [^>]*src="data:image\/jpeg;base64,/g)).toHaveLength(3);
    expect(stdout).not.toMatch(/Robin|Thale/);
  });

  it('is written without the pictures of a clip whose footage is gone, and ends with 1', async () => {
    const review = squatReview([{ criterion: 'depth', severity: 'correct', reps: [3] }]);
    const text = JSON.stringify(review).replace('"name":"Set 1"', '"name":"Set 1","path":"gone.mp4"');
    const file = await writeJson(folder, 'gone.json', text);
    const out = path.join(folder, 'gone.html');
    const { code, stdout, stderr } = await run(['sheet', file, '--stills', '--out', out]);
    expect([code, stdout]).toEqual([1, '']);
    expect(linesOf(stderr)).toEqual([
      expect.stringMatching(/^Wrote .*gone\.html/),
      expect.stringMatching(/^Set 1: .*gone\.mp4/),
      'Written, but without the pictures or measures of "Set 1".',
    ]);
    expect(await readFile(out, 'utf8')).toMatch(/^<!doctype html>/i);
  });

  it('tells what was measured when asked to', async () => {
    const { code, stdout } = await run(['sheet', session, '--format', 'json', '--measured', '--footage-outside']);
    expect(code).toBe(0);
    const { measures } = JSON.parse(stdout);
    // Three clips of three reps each, as the demo's footage was made.
    expect(measures.map(({ reps }: { reps: unknown[] }) => reps.length)).toEqual([3, 3, 3]);
  });
});
