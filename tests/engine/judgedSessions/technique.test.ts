import { describe, expect, it } from 'vitest';
import { alike, judged, session } from './session.ts';

/** What a strength coach says of a session's technique, written down before anything was computed. */
const bands = { top: ['A+'], good: ['A+', 'A', 'A-'], poor: ['D+', 'D', 'D-', 'F'] } as const;

describe('a coach grades', () => {
  it('a clean beginner session A+, and asks for nothing', () => {
    const { mark, kinds, letter } = judged(
      session([{ exercise: 'goblet-squat', sets: alike(3, 10, 20) }], { experience: 'new' }),
    );
    expect([mark, kinds]).toEqual(['A+', []]);
    expect(letter).not.toMatch(/biggest gain|points higher/);
  });

  it('every squat well short of depth C, beside a clean hinge', () => {
    const { marks, letter } = judged(
      session([
        {
          exercise: 'back-squat',
          sets: alike(3, 5, 100),
          seen: [{ fault: 'shortOfDepth', severity: 'correct' }],
        },
        { exercise: 'romanian-deadlift', sets: alike(3, 8, 80) },
      ]),
    );
    expect(marks).toEqual([expect.stringMatching(/^C/), 'A+']);
    expect(letter).toMatch(/1\. Short of depth/);
  });

  it('a back that rounds and hips that rise first, on every rep at the limit, D or F, and says to take load off first', () => {
    for (const exercise of ['back-squat', 'deadlift']) {
      const { mark, letter } = judged(
        session(
          [
            {
              exercise,
              sets: alike(3, 3, 160, 0),
              seen: [
                { fault: 'lowBackRounds', severity: 'correct' },
                { fault: 'hipsRiseFirst', severity: 'correct' },
              ],
            },
          ],
          { goal: 'strength' },
        ),
      );
      expect(bands.poor).toContain(mark);
      expect(letter).toMatch(/Take load off first/);
      expect(letter).not.toMatch(/can wait|slow counts|calm counts/);
    }
  });

  it('quick lowering on every rep of every lift A- throughout, told as one theme', () => {
    const seen = [{ fault: 'quickLowering', severity: 'adjust' }] as const;
    const { mark, marks, letter } = judged(
      session([
        { exercise: 'bench-press', sets: alike(3, 8, 70), seen },
        { exercise: 'seated-cable-row', sets: alike(3, 10, 55), seen },
        { exercise: 'leg-press', sets: alike(3, 12, 160), seen },
      ]),
    );
    expect([mark, ...marks]).toEqual(['A-', 'A-', 'A-', 'A-']);
    expect(letter.match(/Your cue/g)).toHaveLength(1);
  });

  it('a mere preference of the head A+', () => {
    const { marks } = judged(
      session([
        {
          exercise: 'overhead-press',
          sets: alike(3, 8, 40),
          seen: [{ fault: 'chinReaches', severity: 'prefer' }],
        },
      ]),
    );
    expect(marks).toEqual(['A+']);
  });

  it('a set that nobody opened not at all: half is looked at, and the grade is provisional', () => {
    const { kind, coverage } = judged(session([{ exercise: 'bench-press', sets: alike(2, 8, 80), opened: 1 }]));
    expect(kind).toBe('provisional');
    expect(coverage[0]).toBeCloseTo(0.5, 2);
  });

  it('a lift of many faults F, and tells a beginner one thing', () => {
    const { mark, letter } = judged(
      session(
        [
          {
            exercise: 'back-squat',
            sets: alike(3, 8, 100, 0),
            seen: [
              { fault: 'shortOfDepth', severity: 'correct' },
              { fault: 'chestFalls', severity: 'correct' },
              { fault: 'heelsLiftAtBottom', severity: 'adjust' },
              { fault: 'quickLowering', severity: 'correct' },
            ],
          },
        ],
        { experience: 'new' },
      ),
    );
    expect(mark).toBe('F');
    expect(letter.match(/Your cue/g)).toHaveLength(1);
  });
});

describe('something unsafe', () => {
  const alone = { fault: 'noSpotterOrArms', severity: 'stop' } as const;

  it('holds its lift and the session at D+, comes first, and is never sold as points', () => {
    const { mark, marks, letter } = judged(
      session(
        [
          { exercise: 'bench-press', sets: alike(3, 3, 110, 0), seen: [alone] },
          { exercise: 'bent-over-row', sets: alike(3, 8, 70) },
        ],
        { goal: 'strength' },
      ),
    );
    expect(bands.poor).toContain(mark);
    expect(bands.poor).toContain(marks[0]);
    expect(letter.indexOf('Before your next set: stop')).toBeLessThan(letter.indexOf('Overall grade'));
    expect(letter).not.toMatch(/points higher|biggest gain|cost you a point/);
  });

  it('twice, of two kinds, is told twice', () => {
    const { mark, letter } = judged(
      session(
        [
          { exercise: 'bench-press', sets: alike(2, 5, 100, 1), seen: [alone] },
          {
            exercise: 'back-squat',
            sets: alike(2, 5, 130, 1),
            seen: [{ fault: 'safetyArmsMissing', severity: 'stop' }],
          },
        ],
        { goal: 'strength' },
      ),
    );
    expect(bands.poor).toContain(mark);
    expect(letter).toMatch(/No spotter and no safety arms.*Safety arms missing/);
    expect(letter).not.toMatch(/cost you a point|points higher/);
  });
});

it('a session of small faults is good, with at most three things to work on and no heading twice', () => {
  const { mark, letter } = judged(
    session([
      {
        exercise: 'back-squat',
        sets: alike(2, 6, 100),
        seen: [{ fault: 'chestFalls', severity: 'adjust', reps: [5, 6] }],
      },
      { exercise: 'bench-press', sets: alike(2, 6, 80), seen: [{ fault: 'hipsLift', severity: 'adjust', reps: [6] }] },
      {
        exercise: 'standing-curl',
        sets: alike(2, 12, 12),
        seen: [{ fault: 'elbowsTravel', severity: 'adjust', reps: [11, 12] }],
      },
      {
        exercise: 'standing-calf-raise',
        sets: alike(2, 12, 60),
        seen: [{ fault: 'reboundsAtLongEnd', severity: 'adjust' }],
      },
    ]),
  );
  expect(bands.good).toContain(mark);
  const headings = [...letter.matchAll(/ \d\. [A-Z][^.]*?(?= \.\.\.)/g)].map(([heading]) => heading.slice(3));
  expect(headings.length).toBeGreaterThan(0);
  expect(headings.length).toBeLessThanOrEqual(3);
  expect(new Set(headings).size).toBe(headings.length);
});
