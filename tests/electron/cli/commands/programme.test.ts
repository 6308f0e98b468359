import { mkdtemp, rm } from 'node:fs/promises';
import os from 'node:os';
import path from 'node:path';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { run } from '../runCommand.ts';
import { writeJson } from '../squatReview.ts';

let folder = '';
beforeAll(async () => {
  folder = await mkdtemp(path.join(os.tmpdir(), 'rackside-programme-'));
});
afterAll(() => rm(folder, { recursive: true, force: true }));

const session = (date: string, sets: number, trainee: Record<string, unknown> = {}) => ({
  format: 'rackside-review',
  version: 4,
  rubric: { id: 'rackside', version: 3 },
  trainee: { name: 'Alva Brook', ...trainee },
  session: { date },
  entries: [{ id: 'squat', exercise: 'back-squat', plan: { sets, reps: 8 }, clips: [] }],
});

describe('earlier sessions', () => {
  it('are looked at by programme, grade and letter, short and full', async () => {
    const monday = await writeJson(folder, 'monday.json', session('2026-03-02', 9));
    const friday = await writeJson(folder, 'friday.json', session('2026-03-06', 9));
    const sunday = await writeJson(folder, 'sunday.json', session('2026-03-07', 9));
    const earlier = ['--earlier', monday, friday];
    const said = 'More than 20 hard sets this week went to the adductors, glutes and quadriceps.';
    for (const args of [
      ['programme', sunday],
      ['grade', sunday],
      ['letter', sunday, '--format', 'md', '--length', 'short'],
      ['letter', sunday, '--format', 'md'],
    ]) {
      const { code, stdout } = await run([...args, ...earlier]);
      expect([code, args[0], stdout.includes(said)]).toEqual([0, args[0], true]);
      expect((await run(args)).stdout).not.toContain(said);
    }
  });
});

describe('programme', () => {
  const findingsOf = async (content: unknown) => {
    const { stdout } = await run(['programme', await writeJson(folder, 'one.json', content), '--json']);
    return JSON.parse(stdout).findings;
  };

  it('prints what each finding rests on and asks for, as data', async () => {
    const [finding] = await findingsOf(session('2026-03-02', 10));
    expect(finding).toMatchObject({
      kind: 'volume',
      restsOn: 'plan',
      advice: { kind: 'sets', changes: [{ entryId: 'squat', to: 5 }] },
    });
  });

  it('sends nobody to what is not at hand', async () => {
    const thrusts = (equipment: string) => ({
      ...session('2026-03-02', 3, { equipment }),
      version: 2,
      entries: [{ id: 'bridge', exercise: 'glute-bridge', plan: { sets: [{ reps: 15 }, { reps: 15 }] }, clips: [] }],
    });
    const [atHome] = await findingsOf(thrusts('home'));
    expect(atHome.suggestion).not.toMatch(/cable|barbell|dumbbell|deadlift/);
    const [inGym] = await findingsOf(thrusts('fullGym'));
    expect(inGym.suggestion).toContain('the Romanian deadlift');
  });
});

describe('cautions', () => {
  const painful = { ...session('2026-03-08', 3), session: { date: '2026-03-08', painNote: 'Knee 7/10 and rising' } };

  it('stand around the plan: pain first, the closing line last', async () => {
    const file = await writeJson(folder, 'pain.json', painful);
    const { stdout } = await run(['programme', file]);
    expect(stdout).toMatch(/^! First, the pain you noted/);
    expect(stdout.trimEnd()).toMatch(/Coaching opinion from video; not medical advice\.$/);
    expect(stdout.indexOf('Safety arms')).toBeGreaterThan(stdout.indexOf('Muscle'));
  });

  it('are in the JSON, and no finding asks for more of a lift that pain holds back', async () => {
    const file = await writeJson(folder, 'few.json', {
      ...painful,
      entries: [{ id: 'squat', exercise: 'back-squat', plan: { sets: 3, reps: 2 }, clips: [] }],
    });
    const { findings, painNote, cautions, closing } = JSON.parse((await run(['programme', file, '--json'])).stdout);
    expect(painNote).toBe('Knee 7/10 and rising');
    expect(cautions.map(({ id }: { id: string }) => id)).toContain('see-a-clinician');
    expect(closing).toMatch(/not medical advice/);
    expect(findings.length).toBeGreaterThan(0);
    for (const { waitsForPain } of findings) expect(waitsForPain).toBe(true);
    expect((await run(['programme', file])).stdout).toContain(
      'Advice on this waits until a licensed clinician has cleared it.',
    );
  });
});
