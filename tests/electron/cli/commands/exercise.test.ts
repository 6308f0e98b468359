import { describe, expect, it } from 'vitest';
import { linesOf, run } from '../runCommand.ts';

describe('exercise show', () => {
  it.each(['overhead-press', 'Overhead Press', 'overheadpress'])('finds "%s"', async (name) => {
    const { code, stdout } = await run(['exercise', 'show', name]);
    expect([code, linesOf(stdout)[0]]).toEqual([0, 'Overhead press (overhead-press)']);
  });

  it('finds by the German name, and prints the English', async () => {
    const { code, stdout } = await run(['exercise', 'show', 'bankdruecken', '--json']);
    expect([code, JSON.parse(stdout).id]).toEqual([0, 'bench-press']);
  });

  it('shows criteria and faults as the newest rubric has them: a wedge is a matter of the set-up', async () => {
    const { stdout } = await run(['exercise', 'show', 'heel-raised-squat', '--json']);
    const { criteria, faults } = JSON.parse(stdout);
    expect(criteria.map(({ id }: { id: string }) => id)).toContain('setUp');
    expect(faults.find(({ id }: { id: string }) => id === 'wedgeTooHigh')).toMatchObject({ criterion: 'setUp' });
  });

  it('says what each view can judge, and what not', async () => {
    const { stdout } = await run(['exercise', 'show', 'bench-press']);
    expect(stdout).toMatch(/^View: Three-quarter +From here you can judge: range, eccentric tempo, .*; not: bar path/m);
    expect(stdout).toMatch(/^View: Front +From here you can judge: eccentric tempo, pauses, symmetry/m);
  });

  it('asks no time of a lowering that a lift has not', async () => {
    const { stdout } = await run(['exercise', 'show', 'power clean']);
    expect(stdout).toMatch(/^Clean \(clean\)/);
    expect(stdout).toMatch(/Eccentric +not judged/);
  });

  it('asks whether a near name was meant', async () => {
    const { code, stdout, stderr } = await run(['exercise', 'show', 'over head pres']);
    expect([code, stdout]).toEqual([1, '']);
    expect(stderr).toContain('nothing was shown; did you mean Overhead press (overhead-press)');
  });

  it('names the list where nothing is like it', async () => {
    const { code, stderr } = await run(['exercise', 'show', 'underwater basket']);
    expect([code, linesOf(stderr)]).toEqual([
      1,
      ['The library has no exercise "underwater basket", so nothing was shown; see rackside exercise list.'],
    ]);
  });
});

describe('exercise list', () => {
  it('lists those that go by a name like the one given', async () => {
    const { code, stdout } = await run(['exercise', 'list', 'split squat', '--json']);
    expect(code).toBe(0);
    const names: string[] = JSON.parse(stdout).map(({ name }: { name: string }) => name);
    expect(names.length).toBeGreaterThan(1);
    for (const name of names) expect(name).toMatch(/split squat/i);
  });

  it('says so where none does', async () => {
    const { code, stderr } = await run(['exercise', 'list', 'underwater basket']);
    expect([code, linesOf(stderr)]).toEqual([0, ['No exercise goes by a name like "underwater basket".']]);
  });
});
