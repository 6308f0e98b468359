import { mkdtemp, readdir, readFile, rm } from 'node:fs/promises';
import os from 'node:os';
import path from 'node:path';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { run } from '../runCommand.ts';
import { squatReview, writeJson } from '../squatReview.ts';

let folder = '';
let file = '';
beforeAll(async () => {
  folder = await mkdtemp(path.join(os.tmpdir(), 'rackside-names-'));
  const [entry] = [squatReview([]).entries].flat();
  const clip = { id: 'alva-1', name: 'Alva Kniebeuge.mov'.normalize('NFD'), view: 'side' };
  file = await writeJson(folder, 'review.json', {
    ...squatReview([]),
    trainee: { name: 'Alva Brook' },
    session: { date: '2026-03-01', title: 'Alvas Beine, brook' },
    entries: [{ ...(typeof entry === 'object' ? entry : {}), clips: [clip], flags: [], ticks: [] }],
  });
});
afterAll(() => rm(folder, { recursive: true, force: true }));

describe('a hidden name in a review file', () => {
  it('stops a document while a word may be it, and quotes the word', async () => {
    const out = path.join(folder, 'sheet.json');
    const { code, stdout, stderr } = await run(['sheet', file, '--names', 'none', '--out', out]);
    expect([code, stdout]).toEqual([1, '']);
    expect(stderr).toMatch(/^1 word may be the hidden name or not, so nothing was written: “lvas Beine, \[brook\]”/m);
    expect(await readdir(folder)).toEqual(['review.json']);
  });

  it('is in no word, name or id of it where such words are told to be hidden', async () => {
    const out = path.join(folder, 'hidden.json');
    const { code } = await run(['sheet', file, '--names', 'none', '--unsure-names', 'hide', '--out', out]);
    expect(code).toBe(0);
    expect((await readFile(out, 'utf8')).normalize('NFC')).not.toMatch(/alva|brook/i);
  });
});
