import { describe, expect, it } from 'vitest';
import { linesOf, run } from '../runCommand.ts';

describe('how commands are used', () => {
  it.each([
    ['demo'],
    ['grade'],
    ['sheet'],
    ['handover'],
    ['programme'],
    ['exercise', 'show'],
    ['rubric', 'diff'],
    ['library'],
    ['library', 'import'],
    ['library', 'second-look'],
    ['library', 'verify'],
    ['about'],
  ])('%s %s explains itself', async (...command) => {
    const { code, stdout, stderr } = await run([...command.filter((word) => word !== undefined), '--help']);
    expect([code, stderr]).toEqual([0, '']);
    expect(stdout).toContain('Usage: rackside');
  });

  it.each([
    ['an unknown command', ['measurement']],
    ['an unknown option', ['grade', 'seeds/example-session.json', '--colour']],
    ['a missing argument', ['grade']],
    ['a missing option', ['library', 'verify']],
    ['an unknown format', ['letter', 'seeds/example-session.json', '--format', 'docx']],
    ['a letter as a table', ['letter', 'seeds/example-session.json', '--format', 'csv']],
    ['an unknown clip', ['sheet', 'seeds/example-session.json', '--format', 'vtt', '--clip', 'nowhere']],
  ])('%s is refused with one line', async (name, args) => {
    const { code, stdout, stderr } = await run(args);
    expect(code, name).toBeOneOf(name === 'an unknown clip' ? [1, 2] : [2]);
    expect(stdout).toBe('');
    expect(linesOf(stderr)).toHaveLength(1);
  });

  it('prints only the answer on standard output with --json', async () => {
    for (const args of [
      ['probe', 'seeds/footage/squat-side.mp4'],
      ['grade', 'seeds/example-session.json'],
      ['letter', 'seeds/example-session.json', '--format', 'md'],
      ['sheet', 'seeds/example-session.json', '--format', 'csv'],
      ['programme', 'seeds/demo/session.json'],
      ['agree', 'seeds/demo/session.json', 'seeds/demo/session.json'],
      ['exercise', 'show', 'back-squat'],
    ]) {
      const { code, stdout } = await run([...args, '--json']);
      expect(code).toBe(0);
      expect(typeof JSON.parse(stdout)).toBe('object');
    }
  });
});
