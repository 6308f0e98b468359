import { describe, expect, it } from 'vitest';
import { alike, judged, session } from './session.ts';

const poor = ['D+', 'D', 'D-', 'F'];

/** Sessions that come up less often, with what a strength coach says of them, written down before anything was computed. */
describe('a coach judges', () => {
  it('a home session of a beginner by what is at home: no set of twelve is the heavy one, nothing from a gym', () => {
    const { kinds, letter, programme } = judged(
      session(
        [
          { exercise: 'bodyweight-squat', sets: alike(3, 20, 0) },
          { exercise: 'glute-bridge', sets: alike(3, 15, 0) },
          { exercise: 'reverse-lunge', sets: alike(2, 12, 0) },
        ],
        { experience: 'new', equipment: 'home' },
      ),
    );
    expect(kinds).not.toContain('load-order');
    for (const text of [letter, programme]) expect(text).not.toMatch(/cable|machine|barbell|dumbbell|choose a load/i);
  });

  it('push-ups with a band at home by the incline, whatever holds the band', () => {
    const { kinds, programme } = judged(
      session([{ exercise: 'band-push-up', sets: alike(3, 8, 0) }], { experience: 'new', equipment: 'home' }),
    );
    expect(kinds).toEqual(['ladder']);
    expect(programme).toMatch(/incline push-up/i);
  });

  it('a row that rounds and swings at the limit by the lower back first, and does not praise its range', () => {
    const { mark, letter } = judged(
      session([
        {
          exercise: 'bent-over-row',
          sets: alike(4, 8, 80, 0),
          seen: [
            { fault: 'trunkRises', severity: 'correct' },
            { fault: 'shortOfTop', severity: 'correct' },
            { fault: 'lowBackRounds', severity: 'correct' },
          ],
        },
      ]),
    );
    expect(poor).toContain(mark);
    expect(letter).toMatch(/1\. Low(?:er)? back rounds/);
    expect(letter).toMatch(/Take load off first/);
    expect(letter).not.toMatch(/Range\. [^.]*: reaches the end/);
  });

  it('an old injury that is fine now like no pain', () => {
    const { letter } = judged(
      session(
        [{ exercise: 'back-squat', sets: alike(3, 8, 90), seen: [{ fault: 'shortOfDepth', severity: 'correct' }] }],
        { pain: 'Torn meniscus five years ago, the knee is fine now.' },
      ),
    );
    expect(letter).toMatch(/1\. Short of depth/);
    expect(letter).not.toMatch(/settled|nothing to practise/);
  });

  it('kicking pull-ups in a park without sending anyone to a machine', () => {
    const { letter, programme } = judged(
      session([{ exercise: 'pull-up', sets: alike(4, 5, 0, 0), seen: [{ fault: 'legsKick', severity: 'correct' }] }], {
        equipment: 'park',
      }),
    );
    expect(letter).toMatch(/Legs kick/);
    for (const text of [letter, programme]) expect(text).not.toMatch(/machine|cable/i);
  });

  it('two painful places by holding both lifts back, and the third alone is coached', () => {
    const { letter } = judged(
      session(
        [
          { exercise: 'back-squat', sets: alike(3, 8, 90), seen: [{ fault: 'chestFalls', severity: 'adjust' }] },
          { exercise: 'bench-press', sets: alike(3, 8, 70), seen: [{ fault: 'shortOfDepth', severity: 'correct' }] },
          { exercise: 'leg-curl', sets: alike(3, 12, 40), seen: [{ fault: 'quickLowering', severity: 'adjust' }] },
        ],
        { pain: 'Left elbow 3/10 in the bench and my right hip pinches 4/10 in the squat.' },
      ),
    );
    expect(letter).toMatch(
      /Leave out the back squat and the bench press until it has settled, at least until the next morning/,
    );
    expect(letter).toMatch(/1\. Quick \w+ \(seated leg curl\)/);
    expect(letter).not.toMatch(/[12]\. [^.]*\((?:back squat|bench press)\)/);
  });

  it('a knee at two of ten that gets worse every week by stopping its lift', () => {
    const { letter } = judged(
      session(
        [{ exercise: 'split-squat', sets: alike(3, 10, 16), seen: [{ fault: 'shortOfDepth', severity: 'adjust' }] }],
        {
          pain: 'Knee 2/10 but it is getting worse every week.',
        },
      ),
    );
    expect(letter).toMatch(/Stop the split squat for now/);
    expect(letter).not.toMatch(/Your cue|biggest gain|points higher/);
  });

  it('cleans and jerks without a word on slow lowering, holds or few reps', () => {
    const { kinds, marks, letter } = judged(
      session(
        [
          { exercise: 'clean', sets: alike(5, 2, 80), seen: [{ fault: 'armsBendEarly', severity: 'adjust' }] },
          { exercise: 'jerk', sets: alike(5, 2, 80) },
        ],
        { goal: 'skill' },
      ),
    );
    expect(kinds).toEqual([]);
    expect(marks).toEqual(['A-', 'A+']);
    expect(letter).not.toMatch(/slow|seconds down/);
  });

  it('twelve sets for the triceps on four lifts as one thing, with each lift and its sets', () => {
    const { kinds, programme } = judged(
      session([
        { exercise: 'close-grip-bench-press', sets: alike(3, 8, 70, 1) },
        { exercise: 'triceps-pushdown', sets: alike(3, 12, 30, 1) },
        { exercise: 'overhead-triceps-extension', sets: alike(3, 12, 25, 1) },
        { exercise: 'lying-triceps-extension', sets: alike(3, 10, 30, 1) },
      ]),
    );
    expect(kinds).toEqual(['volume']);
    expect(programme).toMatch(/12 hard sets .* triceps/);
    for (const name of ['close-grip bench press', 'pushdown', 'overhead triceps', 'lying triceps']) {
      expect(programme).toContain(name);
    }
  });

  it('three seconds on the toes in a calf raise as seconds for the stretch', () => {
    const sets = alike(4, 12, 60, 1).map((set) => ({ ...set, tempo: '2-0-1-3' }));
    const { kinds, programme } = judged(session([{ exercise: 'standing-calf-raise', sets }]));
    expect(kinds).toEqual(['shortened-end-pause']);
    expect(programme).toMatch(/slower lowering and a stop in the stretch/);
  });

  it('a peak of three, two and one for strength with nothing to say', () => {
    const sets = [...alike(1, 3, 170), ...alike(1, 2, 185, 1), ...alike(1, 1, 200, 1)];
    const { kinds, mark } = judged(session([{ exercise: 'deadlift', sets }], { goal: 'strength' }));
    expect([kinds, mark]).toEqual([[], 'A+']);
  });

  it('an excellent session with one stop D+, without selling the stop as points', () => {
    const { mark, marks, letter } = judged(
      session(
        [
          {
            exercise: 'back-squat',
            sets: alike(3, 5, 120),
            seen: [{ fault: 'safetyArmsMissing', severity: 'stop', reps: [1] }],
          },
          { exercise: 'romanian-deadlift', sets: alike(3, 8, 100) },
        ],
        { goal: 'strength' },
      ),
    );
    expect([mark, ...marks]).toEqual(['D+', 'D+', 'A+']);
    expect(letter).toMatch(/Before your next set: stop/);
    expect(letter).not.toMatch(/points higher|biggest gain/);
  });
});
