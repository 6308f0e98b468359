import { mkdtemp, rm } from 'node:fs/promises';
import os from 'node:os';
import path from 'node:path';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { run } from '../runCommand.ts';
import { writeJson } from '../squatReview.ts';

let folder = '';
beforeAll(async () => {
  folder = await mkdtemp(path.join(os.tmpdir(), 'rackside-pounds-'));
});
afterAll(() => rm(folder, { recursive: true, force: true }));

/** Bench press, 5 reps with 135 lb, weighed as 61.2 kg; curls from heavy to light, one of the four sets on film. */
const session = (units: 'kg' | 'lb') => ({
  format: 'rackside-review',
  version: 4,
  trainee: { name: 'Alva Brook', units, equipment: 'barAndBench' },
  session: { date: '2026-03-01' },
  entries: [
    { id: 'b', exercise: 'bench-press', plan: { sets: 3, reps: 5, loadKg: 61.2, repsInReserve: 0 }, clips: [] },
    {
      id: 'c',
      exercise: 'standing-curl',
      plan: {
        sets: [
          { reps: 10, loadKg: 20 },
          { reps: 15, loadKg: 12 },
          { reps: 20, loadKg: 0 },
          { reps: 20, loadKg: 0 },
        ],
      },
      clips: [{ id: 'a', name: 'Set 1', view: 'side' }],
    },
    { id: 'p', exercise: 'pull-up', plan: { sets: 3, reps: 5, loadKg: 10 }, clips: [] },
  ],
});

const printed = async (command: readonly string[], units: 'kg' | 'lb'): Promise<string> => {
  const file = await writeJson(folder, `${units}.json`, session(units));
  const [name = '', ...options] = command;
  const { code, stdout, stderr } = await run([name, file, ...options]);
  expect(stderr).toBe('');
  expect(code).toBe(0);
  return stdout.replaceAll('\u00A0', ' ');
};

describe('where the trainee uses pounds', () => {
  it('the programme tells volume and estimate in pounds, and its JSON stays in kilograms', async () => {
    const text = await printed(['programme'], 'lb');
    // 3 × 5 × 61.2 kg = 918 kg = 2023.8 lb. Lowest formula for five reps: 1 + 0.025 × 5 = 1.125, 68.85 kg = 151.8 lb.
    expect(text).toMatch(/Bench press +2024 lb +152 lb to \d+ lb/);
    expect(text).not.toMatch(/\d kg/);
    expect(text).toContain('The one-rep max is an estimate, not a load to test alone.');
    const { work, equipment } = JSON.parse(await printed(['programme', '--json'], 'lb'));
    expect(equipment).toBe('barAndBench');
    expect(work[0].volumeLoadKg).toBeCloseTo(918, 9);
    expect(work[0].oneRepMax.lowKg).toBeCloseTo(68.85, 9);
    expect(work[0].oneRepMax.note).toBe('an estimate, not a load to test alone');
    // What hangs on a belt says nothing of the whole that is pulled up.
    expect(work[2].oneRepMax).toBeNull();
  });

  it('the programme says what there is to train with, and each planned set', async () => {
    const text = await printed(['programme'], 'lb');
    expect(text).toMatch(/^Equipment: barbell, rack and bench\n/);
    expect(text).toContain('4 sets planned, 1 filmed: 10 × 44 lb, 15 × 26.5 lb, 2 of 20 × body weight');
  });

  it.each([['letter', '--format', 'md'], ['sheet', '--format', 'md'], ['grade']])(
    '%s prints every planned set in pounds',
    async (...command) => {
      const text = await printed(command, 'lb');
      expect(text).toContain('3 sets × 5 reps × 135 lb planned');
      // 20 kg = 44.09 lb, 12 kg = 26.46 lb, to the nearest half pound.
      expect(text).toContain('4 sets planned, 1 filmed: 10 × 44 lb, 15 × 26.5 lb, 2 of 20 × body weight');
      expect(text).toContain('body weight + 22 lb');
      expect(text).not.toMatch(/\d kg/);
    },
  );
});

it('where the trainee uses kilograms, all of it is in kilograms', async () => {
  expect(await printed(['letter', '--format', 'txt'], 'kg')).not.toMatch(/\d lb/);
  expect(await printed(['programme'], 'kg')).toMatch(/Bench press +918 kg +69 kg to \d+ kg/);
});
