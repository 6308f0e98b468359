import { describe, expect, it } from 'vitest';
import { alike, judged, type Lift, session } from './session.ts';

const shortSquat: Lift = {
  exercise: 'back-squat',
  sets: alike(3, 6, 95, 1),
  seen: [{ fault: 'shortOfDepth', severity: 'correct' }],
};
const shortBench: Lift = {
  exercise: 'bench-press',
  sets: alike(3, 8, 75),
  seen: [{ fault: 'shortOfDepth', severity: 'correct' }],
};
const leaningPulldown: Lift = {
  exercise: 'pulldown',
  sets: alike(2, 10, 55),
  seen: [{ fault: 'leansBack', severity: 'adjust' }],
};

/** The letter without the cautions that stand at the foot of every letter. */
const letterOf = (lifts: readonly Lift[], pain: string, language: 'en' | 'de' = 'en'): string =>
  judged(session(lifts, { pain }), { language }).letter.split(/ (?:Cautions What|Sicherheitshinweise Was) /)[0] ?? '';

describe('pain comes first', () => {
  it.each([
    ['Left knee 6/10 and it gets worse with each set.', [shortSquat]],
    ['Tingling down my left leg after the squats, about 3 of 10.', [shortSquat]],
    ['My knee wakes me at night, 3/10.', [shortSquat]],
    ['Pressure in my chest and dizzy after the last set.', [shortSquat]],
    ['Shoulder 7/10 in the bench press.', [shortBench]],
  ] as const)('and %j stops the lift: no cue, drill, clip or gain of it', (pain, lifts) => {
    const letter = letterOf(lifts, pain);
    expect(letter.split('Overall grade')[0]).toContain('You wrote');
    expect(letter).toMatch(/Stop the (back squat|bench press) for now/);
    expect(letter).toMatch(/licensed clinician/);
    expect(letter).not.toMatch(/Your cue|Practise\.|biggest gain|points higher|How we’ll know/);
    expect(letter).not.toMatch(/add a clip|film the hardest|Film the hardest/);
  });

  it('and at four of ten the lift waits for the next morning, while another may be coached', () => {
    const letter = letterOf([shortBench, shortSquat], 'Right shoulder 4/10 at the bottom of the bench.');
    expect(letter).toMatch(/Leave out the bench press until it has settled, at least until the next morning/);
    expect(letter).toMatch(/1\. Short of depth \(back squat\)/);
    expect(letter).not.toMatch(/\d\. [^.]*\(bench press\)/);
  });

  it('and where the place is not named every lift waits, in German too', () => {
    const letter = letterOf([shortSquat, shortBench], 'Irgendwas zwickt seit gestern, so 4 von 10.', 'de');
    expect(letter).toMatch(/frühestens am nächsten Morgen/);
    expect(letter).not.toMatch(/Dein Hinweis|Punkte höher/);
  });

  it('and while it settles sets are halved, and none is added back', () => {
    const many: readonly Lift[] = ['bench-press', 'incline-dumbbell-press', 'dip'].map((exercise) => ({
      exercise,
      sets: alike(4, 10, 40, 1),
    }));
    expect(letterOf(many, '')).toMatch(/Halve them.* add one set at a time/);
    const sore = letterOf(many, 'Right shoulder 3/10 since Tuesday.');
    expect(sore).toMatch(/Halve them/);
    expect(sore).not.toMatch(/add one set at a time/);
  });

  it('also before something unsafe', () => {
    const letter = letterOf(
      [
        {
          exercise: 'bench-press',
          sets: alike(2, 3, 105, 0),
          seen: [{ fault: 'noSpotterOrArms', severity: 'stop' }],
        },
      ],
      'Elbow 5/10 since last week.',
    );
    expect(letter.indexOf('Elbow 5/10')).toBeLessThan(letter.indexOf('Before your next set: stop'));
    expect(letter).not.toMatch(/points higher|biggest gain/);
  });

  it('and spares a lift that does not load the place', () => {
    const letter = letterOf([shortSquat, leaningPulldown], 'Left knee 6/10.');
    expect(letter).toMatch(/Stop the back squat for now/);
    expect(letter).toMatch(/1\. Leans into a row \(pulldown\)/);
  });

  it('and is none where the note says that nothing hurts', () => {
    const letter = letterOf([shortSquat], 'No pain at all, felt great.');
    expect(letter).not.toMatch(/You wrote|settled|clinician/);
    expect(letter).toMatch(/Your cue/);
  });
});
