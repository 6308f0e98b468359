import { describe, expect, it } from 'vitest';
import { shipped } from './shippedCatalogue.ts';

const ids = new Set(shipped.exercises.map((exercise) => exercise.id));

// The lifts a technique desk is asked about most, by family; common practice, no source.
const families = {
  squat: ['back-squat', 'front-squat', 'goblet-squat', 'bodyweight-squat', 'guided-rail-squat', 'leg-press'],
  'squat, other ways': ['heel-raised-squat', 'box-squat', 'pause-squat', 'sissy-squat', 'guided-rail-squat-reversed'],
  hinge: ['deadlift', 'romanian-deadlift', 'stiff-legged-deadlift', 'sumo-deadlift', 'trap-bar-deadlift'],
  'hinge, other ways': ['dumbbell-romanian-deadlift', 'single-leg-romanian-deadlift', 'good-morning'],
  'stiff legs, dumbbells': ['dumbbell-stiff-legged-deadlift'],
  hips: ['hip-thrust', 'glute-bridge', 'back-extension', 'prone-back-raise', 'level-bench-back-raise'],
  'one leg': ['split-squat', 'rear-foot-raised-split-squat', 'reverse-lunge', 'walking-lunge', 'step-up'],
  'one leg, other ways': ['forward-lunge', 'guided-rail-split-squat'],
  press: ['bench-press', 'incline-dumbbell-press', 'close-grip-bench-press', 'dumbbell-bench-press', 'floor-press'],
  'press on the hands': ['push-up', 'incline-push-up', 'decline-push-up', 'dip', 'pike-push-up', 'handstand-push-up'],
  overhead: ['overhead-press', 'seated-dumbbell-press', 'push-press', 'lateral-raise', 'cable-lateral-raise'],
  fly: ['cable-fly', 'dumbbell-fly', 'face-pull', 'rear-deltoid-fly'],
  row: ['bent-over-row', 'seated-cable-row', 'chest-supported-row', 'inverted-row', 'one-arm-dumbbell-row'],
  pull: ['pull-up', 'chin-up', 'pulldown', 'assisted-pull-up', 'band-assisted-pull-up', 'jump-and-lower-pull-up'],
  arms: ['standing-curl', 'hammer-curl', 'incline-curl', 'preacher-curl', 'cable-curl'],
  'back of the arms': ['triceps-pushdown', 'overhead-triceps-extension', 'lying-triceps-extension'],
  'knee and ankle': ['leg-extension', 'leg-curl', 'lying-leg-curl', 'kneeling-hamstring-lowering'],
  calves: ['standing-calf-raise', 'seated-calf-raise', 'single-leg-calf-raise'],
  trunk: ['cable-crunch', 'crunch', 'hanging-knee-raise', 'hanging-leg-raise', 'roll-out', 'anti-rotation-press'],
  'from floor to overhead': ['thruster', 'clean', 'jerk', 'snatch'],
  hold: ['front-plank', 'side-plank', 'loaded-carry', 'uneven-carry'],
} as const;

describe('the reach of the exercise library', () => {
  it.each(Object.entries(families))('covers the family "%s"', (_, wanted) => {
    expect(wanted.filter((id) => !ids.has(id))).toEqual([]);
  });

  it('ships 60 exercises or more', () => {
    expect(ids.size).toBeGreaterThanOrEqual(60);
  });

  it('gives no two exercises one name', () => {
    const names = shipped.exercises.map((exercise) => exercise.name.toLowerCase());
    expect(names.filter((name, at) => names.indexOf(name) !== at)).toEqual([]);
  });

  it('never sends somebody to the same exercise that they do', () => {
    const round = shipped.exercises.filter(({ id, ladder }) =>
      [...ladder.easier, ...ladder.harder, ...ladder.betterSuited].some(({ exercise }) => exercise === id),
    );
    expect(round.map(({ id }) => id)).toEqual([]);
  });

  it('says of every exercise what it takes, and how people call it in both languages', () => {
    const silent = shipped.exercises.filter(
      ({ needs, aliases }) => needs === undefined || !aliases?.en.length || !aliases.de.length,
    );
    expect(silent.map(({ id }) => id)).toEqual([]);
  });

  it('gives a reason for every rung of every ladder', () => {
    const bare = shipped.exercises.flatMap(({ id, ladder }) =>
      [...ladder.easier, ...ladder.harder, ...ladder.betterSuited]
        .filter(({ why }) => !/^[A-Z].*\.$/.test(why))
        .map(({ exercise }) => `${id}: ${exercise}`),
    );
    expect(bare).toEqual([]);
  });

  // Even help first, then what trains the same muscles, then a partner; a band helps most where least is needed.
  it('leads from a pull-up that cannot be done yet to a machine first, and to a band last', () => {
    const easier = shipped.exercises.find(({ id }) => id === 'pull-up')?.ladder.easier.map(({ exercise }) => exercise);
    const inOrder = ['assisted-pull-up', 'pulldown', 'inverted-row', 'partner-assisted-pull-up'];
    expect(easier?.slice(0, 4)).toEqual(inOrder);
    expect(easier?.at(-1)).toBe('band-assisted-pull-up');
  });

  // Raised hands keep the press hard where the chest is long; a band takes load away just there.
  it('leads from a push-up that cannot be done yet to raised hands before a band', () => {
    const easier = shipped.exercises.find(({ id }) => id === 'push-up')?.ladder.easier.map(({ exercise }) => exercise);
    expect(easier?.[0]).toBe('incline-push-up');
    expect(easier?.at(-1)).toBe('band-push-up');
  });

  it('never calls one exercise both easier and harder than another', () => {
    const both = shipped.exercises.filter(({ ladder }) =>
      ladder.easier.some((easier) => ladder.harder.some((harder) => harder.exercise === easier.exercise)),
    );
    expect(both.map(({ id }) => id)).toEqual([]);
  });

  it('judges a guided rail by its path too, leaning one way for each facing', () => {
    const rails = shipped.exercises.filter((exercise) => exercise.implement === 'guided rail');
    const tilts = rails.map((exercise) => Math.sign(exercise.targets.path.railTiltDeg ?? 0));
    expect(new Set(tilts)).toEqual(new Set([-1, 1]));
    for (const { id, targets, criteria } of rails) {
      expect(targets.path.shape, id).toBe('rail');
      expect(criteria.map((criterion) => criterion.id)).toContain('barPath');
      // Many machines lean by about 7 degrees, from 5 to 12; common practice, from memory.
      expect(Math.abs(targets.path.railTiltDeg ?? 0)).toBeGreaterThanOrEqual(5);
      expect(Math.abs(targets.path.railTiltDeg ?? 90)).toBeLessThanOrEqual(12);
    }
  });

  it('has names without commas, which would cut a sentence or a list in two', () => {
    expect(shipped.exercises.map(({ name }) => name).filter((name) => name.includes(','))).toEqual([]);
  });

  it('names a guided-rail squat by where its rail takes the bar', () => {
    // A rail whose top leans back, behind the lifter, brings the bar forward as it lowers: the tilt is then negative.
    const squats = shipped.exercises.filter(({ id }) => id.startsWith('guided-rail-squat'));
    const ways = squats.map(({ name, targets }) => [
      /bar travels (\w+) as it lowers/.exec(name)?.[1],
      Math.sign(targets.path.railTiltDeg ?? 0),
    ]);
    expect(ways).toEqual([
      ['backward', 1],
      ['forward', -1],
    ]);
  });

  it('explains a back that rounds at the bottom by the facing, where the rail takes the bar back', () => {
    const squat = shipped.exercises.find(({ id }) => id === 'guided-rail-squat');
    const rounds = squat?.faults.find(({ id }) => id === 'lowBackRounds');
    expect(rounds?.why).toMatch(/face this way/);
    expect(squat?.faults.map(({ id }) => id)).toContain('facesTheOtherWay');
    expect(squat?.ladder.betterSuited[0]?.exercise).toBe('guided-rail-squat-reversed');
  });

  it('speaks of no load to lighten where the body is the load', () => {
    const body = shipped.exercises.filter((exercise) => exercise.implement === 'body weight');
    expect(body.length).toBeGreaterThan(10);
    const wrong = body.flatMap(({ id, faults }) =>
      faults
        .filter(({ seen, drill }) =>
          /lighter load|off the load|drop the load|less load|the load (rebound|mov)/i.test(`${seen} ${drill}`),
        )
        .map((fault) => `${id} ${fault.id}`),
    );
    expect(wrong).toEqual([]);
  });

  it('speaks of no bar where there is none', () => {
    const hung = new Set(['pullUpBar', 'lowBar', 'dipBars']);
    const barless = shipped.exercises.filter(
      ({ implement, needs = [] }) => /^(dumbbell|body weight)/.test(implement) && !needs.some((item) => hung.has(item)),
    );
    expect(barless.length).toBeGreaterThan(20);
    const wrong = barless.flatMap(({ id, faults }) =>
      faults
        .filter(({ name, seen, cue, drill, proof }) =>
          /\b(the|a) bar\b/i.test([name, seen, cue.outcome, cue.body, drill, proof].join(' ')),
        )
        .map((fault) => `${id} ${fault.id}`),
    );
    expect(wrong).toEqual([]);
  });
});
