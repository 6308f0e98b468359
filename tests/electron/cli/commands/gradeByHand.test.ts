import { mkdtemp, rm } from 'node:fs/promises';
import os from 'node:os';
import path from 'node:path';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { run } from '../runCommand.ts';
import { squatReview, writeJson } from '../squatReview.ts';

const reason = 'First heavy day after a long break.';

let folder = '';
let file = '';
beforeAll(async () => {
  folder = await mkdtemp(path.join(os.tmpdir(), 'rackside-by-hand-'));
  const review = squatReview([{ criterion: 'depth', severity: 'correct', reps: [1, 2, 3, 4, 5] }]);
  file = await writeJson(folder, 'session.json', {
    ...review,
    session: { date: '2026-03-01', override: { score: 88, reason } },
  });
});
afterAll(() => rm(folder, { recursive: true, force: true }));

describe('a review file whose grade was set by hand', () => {
  // 88 is a B+ on the common American scale, 87 to 89.9; the flags alone give a C (five reps well short: the vignette).
  it('shows that grade, the reason and what the flags alone give, wherever a grade is printed', async () => {
    const grade = await run(['grade', file]);
    expect(grade.stdout).toMatch(/^Session +B\+ +88/m);
    expect(grade.stdout).toContain(reason);
    expect(grade.stdout).toMatch(/C 7\d(\.\d+)? by the flags alone/);
    for (const command of ['letter', 'sheet']) {
      const { stdout } = await run([command, file]);
      expect(stdout, command).toContain(reason);
      expect(stdout, command).toMatch(/B\\?\+/);
      expect(stdout, command).toMatch(/alone.* C /);
    }
  });

  it('says both in German too', async () => {
    for (const command of ['letter', 'sheet']) {
      const { stdout } = await run([command, file, '--language', 'de']);
      expect(stdout, command).toContain(reason);
      expect(stdout, command).toMatch(/Notizen allein.* C /);
    }
  });
});
