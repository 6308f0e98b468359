import { copyFile, mkdtemp, rm } from 'node:fs/promises';
import os from 'node:os';
import path from 'node:path';
import { afterAll, beforeAll, expect, it } from 'vitest';
import { linesOf, rootFolder, run } from '../../runCommand.ts';
import { squatReview, writeJson } from '../../squatReview.ts';

let folder = '';
let library = '';
let sessionId = '';
beforeAll(async () => {
  folder = await mkdtemp(path.join(os.tmpdir(), 'rackside-second-look-'));
  library = path.join(folder, 'library');
  await run(['library', 'init', '--library', library, '--voice', 'coach']);
  await copyFile(path.join(rootFolder, 'seeds', 'footage', 'squat-side.mp4'), path.join(folder, 'set.mp4'));
  // The review's reps start up to 20 s in; the clip lasts 14 s.
  const text = JSON.stringify(squatReview([{ criterion: 'depth', severity: 'correct', reps: [1] }]))
    .replace('"name":"Set 1"', '"name":"Set 1","path":"set.mp4"')
    .replace(/"seconds":(\d+)/g, (_, seconds) => `"seconds":${Number(seconds) / 2}`);
  const file = await writeJson(folder, 'review.json', text);
  const { stdout } = await run(['library', 'import', file, '--library', library, '--json']);
  sessionId = JSON.parse(stdout).sessionId;
});
afterAll(() => rm(folder, { recursive: true, force: true }));

const secondLook = (...more: readonly string[]) =>
  run(['library', 'second-look', sessionId, '--library', library, ...more]);

it('is started once by the command, and compared when something was judged', async () => {
  const early = await secondLook('--compare');
  expect([early.code, linesOf(early.stderr).length]).toEqual([1, 1]);

  const started = await secondLook('--json');
  expect([started.code, started.stderr]).toEqual([0, '']);
  const look = JSON.parse(started.stdout).sessionId;
  const { stdout } = await run(['library', 'list', '--library', library, '--json']);
  expect(JSON.parse(stdout).sessions).toContainEqual(
    expect.objectContaining({ id: look, secondLookOf: sessionId, flags: 0, clips: 1 }),
  );

  const again = await secondLook();
  expect([again.code, again.stdout, linesOf(again.stderr).length]).toEqual([1, '', 1]);
  expect(again.stderr).toContain('under way');

  const compared = await secondLook('--compare', '--json');
  expect(JSON.parse(compared.stdout)).toMatchObject({ overall: { moments: 0 }, onlyFirst: 30, onlySecond: 0 });
  const words = await secondLook('--compare');
  expect(words.stdout).toContain('Looked at in one review only: 30 moments in the first, 0 in the second.');
});
