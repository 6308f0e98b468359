import { mkdtemp, rm } from 'node:fs/promises';
import os from 'node:os';
import path from 'node:path';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { linesOf, runProgram } from '../runCommand.ts';
import { squatReview, writeJson } from '../squatReview.ts';

let folder = '';
beforeAll(async () => {
  folder = await mkdtemp(path.join(os.tmpdir(), 'rackside-hostile-'));
});
afterAll(() => rm(folder, { recursive: true, force: true }));

const text = (flags: Parameters<typeof squatReview>[0] = []): string => JSON.stringify(squatReview(flags));

const hostile: readonly (readonly [string, string, RegExp])[] = [
  ['an unknown criterion', text([{ criterion: 'gripWidth', severity: 'adjust', reps: [1] }]), /gripWidth/],
  ['rep 9 of 5', text([{ criterion: 'depth', severity: 'adjust', reps: [9] }]), /rep 9.*5 reps/],
  ['a number that is none', text().replace('"seconds":4', '"seconds":NaN'), /./],
  ['a ten-megabyte string', text().replace('Alva Brook', 'a'.repeat(10_000_000)), /./],
  ['a __proto__ key', text().replace('{"format"', '{"__proto__":{"polluted":true},"format"'), /field/],
  ['an unknown exercise', text().replace('back-squat', 'moon-squat'), /moon-squat/],
  ['a list where an object belongs', '[]', /./],
  ['no JSON at all', 'hello', /./],
  ['nothing', '', /./],
  ['another format', text().replace('rackside-review', 'something-else'), /format/],
  ['deep nesting', `${'['.repeat(200_000)}${']'.repeat(200_000)}`, /./],
];

describe('a hostile or contradictory review file', () => {
  it.each(hostile)('%s: one sentence, exit code 1, no stack trace', async (_name, content, words) => {
    const file = await writeJson(folder, 'session.json', content);
    const { code, stdout, stderr } = await runProgram(['grade', file]);
    expect([code, stdout]).toEqual([1, '']);
    expect(linesOf(stderr)).toHaveLength(1);
    expect(stderr).toMatch(words);
    expect(stderr).not.toMatch(/\bat .*:\d+:\d+|Error:/);
    expect(stderr.length).toBeLessThan(600);
  });

  it.each(['letter', 'sheet'])('%s refuses it alike', async (command) => {
    const file = await writeJson(folder, 'session.json', hostile[1]?.[1]);
    const { code, stdout, stderr } = await runProgram([command, file, '--format', 'md']);
    expect([code, stdout]).toEqual([1, '']);
    expect(linesOf(stderr)).toHaveLength(1);
  });
});
