import { copyFile, mkdtemp, readdir, rename, rm, writeFile } from 'node:fs/promises';
import os from 'node:os';
import path from 'node:path';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { linesOf, rootFolder, run } from '../runCommand.ts';
import { squatReview, writeJson } from '../squatReview.ts';

const squat = path.join(rootFolder, 'seeds', 'footage', 'squat-side.mp4');
const hevc = path.join(rootFolder, 'tests', 'footage', 'hinge-hevc.mp4');
let folder = '';
let library = '';
beforeAll(async () => {
  folder = await mkdtemp(path.join(os.tmpdir(), 'rackside-library-'));
  library = path.join(folder, 'library');
});
afterAll(() => rm(folder, { recursive: true, force: true }));

const ask = async (...args: readonly string[]) => {
  const { code, stdout, stderr } = await run(['library', ...args, '--library', library, '--json']);
  expect([code, stderr]).toEqual([0, '']);
  return JSON.parse(stdout);
};
const refused = async (...args: readonly string[]) => {
  const { code, stdout, stderr } = await run(['library', ...args, '--library', library]);
  expect(stdout).toBe('');
  expect(linesOf(stderr)).toHaveLength(1);
  return { code, line: stderr };
};
const trainees = async (): Promise<string[]> =>
  (await ask('list')).trainees.map(({ name }: { readonly name: string }) => name);
const sessions = async (): Promise<{ id: string; traineeName: string; date: string; clips: number }[]> =>
  (await ask('list')).sessions;

// One library's life, in order: each step builds on the one before.
describe('a library', () => {
  it('is made once, empty', async () => {
    expect(await refused('list')).toMatchObject({ code: 1 });
    expect(await ask('init', '--voice', 'coach', '--coach', 'Jo Harwick')).toEqual({
      folder: library,
      voice: 'coach',
      coach: 'Jo Harwick',
    });
    expect((await refused('init')).code).toBe(1);
    expect(await sessions()).toEqual([]);
  });

  it('takes clips in as a new session of a new trainee, a playable copy included', async () => {
    const who = ['--trainee', 'Alva Brook', '--date', '2026-03-01', '--exercise', 'back-squat', '--view', 'side'];
    expect(await ask('import', squat, hevc, ...who)).toMatchObject({ clips: 2 });
    expect(await sessions()).toMatchObject([{ traineeName: 'Alva Brook', date: '2026-03-01', clips: 2 }]);
    expect(await ask('verify')).toMatchObject({ sound: true, clips: 2, sessions: 1 });
  });

  it('measures its clips and says what each shows; those without reps get the measured ones', async () => {
    const [session] = await sessions();
    const measured = await ask('measure', '--session', session?.id ?? '', '--no-joints');
    expect(measured).toMatchObject([
      { name: 'squat-side.mp4', reps: 3 },
      { name: 'hinge-hevc.mp4', reps: 2 },
    ]);
    const again = await ask('measure', '--no-joints');
    expect(again).toEqual(measured);
  });

  it('takes further clips into that session', async () => {
    const [session] = await sessions();
    const press = path.join(rootFolder, 'seeds', 'footage', 'press-portrait.mov');
    await ask('import', press, '--session', session?.id ?? '', '--exercise', 'overhead-press');
    expect(await sessions()).toMatchObject([{ clips: 3 }]);
  });

  it('takes a review file and its clip in as a session of its own', async () => {
    await copyFile(squat, path.join(folder, 'set.mp4'));
    // The review's reps start up to 20 s in; the clip lasts 14 s.
    const text = JSON.stringify(squatReview([]))
      .replace('"name":"Set 1"', '"name":"Set 1","path":"set.mp4"')
      .replace(/"seconds":(\d+)/g, (_, seconds) => `"seconds":${Number(seconds) / 2}`);
    const file = await writeJson(folder, 'review.json', text);
    expect(await ask('import', file)).toMatchObject({ clips: 1 });
    expect(await sessions()).toHaveLength(2);
  });

  it('takes nothing when one of the clips is bad', async () => {
    const words = path.join(folder, 'words.mp4');
    await writeFile(words, 'words');
    const { code, line } = await refused('import', squat, words, '--trainee', 'Some Body', '--exercise', 'back-squat');
    expect([code, line]).toEqual([1, expect.stringContaining('words.mp4')]);
    expect(await sessions()).toHaveLength(2);
  });

  it('keeps no empty session and no new trainee when an import fails after the check', async () => {
    const clips = path.join(library, 'clips');
    await rename(clips, `${clips}-away`);
    await writeFile(clips, 'in the way of a folder');
    const { code } = await refused('import', squat, '--trainee', 'Some Body', '--exercise', 'back-squat');
    await rm(clips);
    await rename(`${clips}-away`, clips);
    expect(code).toBe(1);
    expect(await sessions()).toHaveLength(2);
    expect(await trainees()).toEqual(['Alva Brook']);
  });

  it.each([
    ['a day that is none', ['--trainee', 'A', '--exercise', 'back-squat', '--date', '2026-02-31'], 2],
    ['nobody', ['--exercise', 'back-squat'], 2],
    ['no exercise', ['--trainee', 'A'], 2],
    ['an unknown exercise', ['--trainee', 'A', '--exercise', 'moon-squat'], 1],
    ['a session and a trainee', ['--trainee', 'A', '--session', 'x', '--exercise', 'back-squat'], 2],
    ['an unknown session', ['--session', 'x', '--exercise', 'back-squat'], 1],
    ['an unknown view', ['--trainee', 'A', '--exercise', 'back-squat', '--view', 'above'], 2],
  ])('is left alone by an import for %s', async (_what, args, code) => {
    expect((await refused('import', squat, ...args)).code).toBe(code);
    expect(await sessions()).toHaveLength(2);
  });

  it('is found unsound when a clip was changed', async () => {
    const [clip] = await readdir(path.join(library, 'clips'));
    await writeFile(path.join(library, 'clips', clip ?? ''), 'something else');
    const { code, stdout, stderr } = await run(['library', 'verify', '--library', library]);
    expect(code).toBe(1);
    expect(stdout).toContain(clip);
    expect(linesOf(stderr)).toEqual(['The library is not sound (1 finding); nothing was changed.']);
  });
});
