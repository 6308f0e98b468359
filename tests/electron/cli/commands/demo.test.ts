import { mkdir, mkdtemp, readdir, readFile, rm, writeFile } from 'node:fs/promises';
import os from 'node:os';
import path from 'node:path';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { linesOf, type Ran, run } from '../runCommand.ts';

let folder = '';
let demo = '';
let ran: Ran;
beforeAll(async () => {
  folder = await mkdtemp(path.join(os.tmpdir(), 'rackside-demo-'));
  demo = path.join(folder, 'out');
  // As an earlier version left it: a demo that has a file more.
  await mkdir(demo);
  const entries = ['letter.html', 'no-longer.html'];
  for (const name of entries) await writeFile(path.join(demo, name), 'of an earlier demo');
  await writeFile(path.join(demo, '.rackside-demo.json'), JSON.stringify({ format: 'rackside-demo', entries }));
  ran = await run(['demo', '--out', demo]);
});
afterAll(() => rm(folder, { recursive: true, force: true }));

describe('the demo', () => {
  it('prints the grade table', () => {
    expect(ran.code).toBe(0);
    for (const words of ['Back squat', 'Romanian deadlift', 'Overhead press', 'What would raise it']) {
      expect(ran.stdout).toContain(words);
    }
  });

  it('leaves a whole handover, with clips and notes', async () => {
    const files = await readdir(demo);
    for (const file of ['letter.html', 'letter.pdf', 'sheet.html', 'sheet.csv', 'session.json']) {
      expect(files).toContain(file);
    }
    for (const file of [
      'index.html',
      'sheet.pdf',
      'breakdown.pdf',
      'measures.csv',
      'next-filming.ics',
      'manifest.json',
    ]) {
      expect(files).toContain(file);
    }
    const [clips, originals] = await Promise.all(['clips', 'originals'].map((name) => readdir(path.join(demo, name))));
    expect(originals?.filter((file) => file.endsWith('-reps.vtt'))).toHaveLength(3);
    expect(originals?.filter((file) => file.endsWith('.mp4'))).toHaveLength(3);
    expect(clips?.filter((file) => /^(?:(?!-rep-).)*\.mp4$/.test(file))).toHaveLength(3);
    expect((await readFile(path.join(demo, 'letter.pdf'))).subarray(0, 5).toString()).toBe('%PDF-');
    expect(await readFile(path.join(demo, 'letter.html'), 'utf8')).toContain('not medical advice');
  });

  it('leaves a sound library with the session and one before it', async () => {
    const { stdout } = await run(['library', 'verify', '--library', path.join(demo, 'library'), '--json']);
    expect(JSON.parse(stdout)).toMatchObject({ sound: true, clips: 4, sessions: 2 });
  });

  it('tells in the letter what became of the session before', async () => {
    const letter = await readFile(path.join(demo, 'letter.txt'), 'utf8');
    expect(letter).toContain('Since last time');
    expect(letter).toMatch(/Quick lowering[^.]*: better\./);
    expect(letter).toContain('First, the pain you noted');
  });

  it('leaves a review file that grades to the same session score', async () => {
    const { stdout } = await run(['grade', path.join(demo, 'session.json'), '--json']);
    const { state } = JSON.parse(stdout);
    const line = ran.stdout.split('\n').find((one) => one.startsWith('Session '));
    expect(line?.split(/\s+/)[1]).toBe(state.mark.letter);
  });

  it('replaces an earlier demo, and nothing else', async () => {
    expect(await readdir(demo)).not.toContain('no-longer.html');
    expect(await readFile(path.join(demo, 'letter.html'), 'utf8')).not.toContain('of an earlier demo');
    const precious = path.join(folder, 'precious');
    await mkdir(precious);
    await writeFile(path.join(precious, 'thesis.txt'), 'mine');
    const { code, stderr } = await run(['demo', '--out', precious]);
    expect(code).toBeOneOf([1, 2]);
    expect(linesOf(stderr)).toHaveLength(1);
    expect(await readdir(precious)).toEqual(['thesis.txt']);
  });
});
