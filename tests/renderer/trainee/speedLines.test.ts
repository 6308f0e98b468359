import { describe, expect, it } from 'vitest';
import { progressAtSpeed, type SetSpeed, speedScales, speedsByExercise } from '../../../renderer/trainee/speedLines.ts';

let clips = 0;
const set = (date: string, loadKg: number, fastestMps: number, exercise = 'back-squat'): SetSpeed => {
  clips += 1;
  return { clipId: `c${clips}`, sessionId: `s${date}`, date, exercise, loadKg, fastestMps };
};

/** On the line 1.3 − 0.008 × load, and a week later on 1.38 − 0.008 × load: ten kilograms more at any speed. */
const squats = [
  set('2026-03-04', 60, 0.82),
  set('2026-03-04', 100, 0.5),
  set('2026-03-11', 60, 0.9),
  set('2026-03-11', 100, 0.58),
];

describe('the speeds of loads', () => {
  it('are set apart by exercise and session, with a line where a session has two loads', () => {
    const [squat, bench] = speedsByExercise([...squats, set('2026-03-04', 50, 0.6, 'bench-press')]);
    expect(squat?.sessions.map(({ date, sets }) => [date, sets.length])).toEqual([
      ['2026-03-04', 2],
      ['2026-03-11', 2],
    ]);
    expect(squat?.sessions[0]?.line?.slopeMpsPerKg).toBeCloseTo(-0.008, 10);
    expect(bench).toMatchObject({ exercise: 'bench-press', sessions: [{ line: null }] });
  });

  it('are compared at one speed, first against last', () => {
    const [squat] = speedsByExercise(squats);
    const progress = squat === undefined ? null : progressAtSpeed(squat);
    // The mean speed is 0.70 m/s: (1.3 − 0.7) / 0.008 = 75 kg, and ten more a week later.
    expect(progress?.speedMps).toBe(0.7);
    expect(progress?.first.loadKg).toBeCloseTo(75, 10);
    expect(progress?.last).toMatchObject({ date: '2026-03-11' });
    expect(progress?.last.loadKg).toBeCloseTo(85, 10);
  });

  it('are not compared with but one line', () => {
    const [squat] = speedsByExercise([...squats.slice(0, 2), set('2026-03-11', 60, 0.9)]);
    expect(squat === undefined ? undefined : progressAtSpeed(squat)).toBeNull();
  });

  it('lie by load and speed, in the trainee’s units, from no speed at the foot', () => {
    const [squat] = speedsByExercise(squats);
    if (squat === undefined) throw new Error('There are squats.');
    const metric = speedScales(squat, { width: 100, height: 50, units: 'kg' });
    expect([metric.load(60), metric.load(100), metric.speed(0)]).toEqual([0, 100, 50]);
    const imperial = speedScales(squat, { width: 100, height: 50, units: 'lb' });
    // 60 kg are 132.3 lb: the axis begins at a round number below.
    expect(imperial.load.domain()).toEqual([120, 240]);
  });
});
