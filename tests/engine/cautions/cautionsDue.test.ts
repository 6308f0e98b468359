import { describe, expect, it } from 'vitest';
import { asksToHoldBreath, speaksOfHeldBreath } from '../../../engine/cautions/breathHeld.ts';
import { cautionsDue } from '../../../engine/cautions/cautionsDue.ts';
import { findExercise } from '../../../engine/exercises/catalogue.ts';
import type { Equipment } from '../../../engine/exercises/equipment.ts';
import type { Flag } from '../../../engine/review/review.ts';
import { shippedUnder } from '../../seeds/shippedCatalogue.ts';
import { entry, flag, review } from '../reviews.ts';

const catalogue = shippedUnder(3);

type Case = { readonly flags?: readonly Flag[]; readonly equipment?: Equipment; readonly painNote?: string };

function due(exercise: string, { flags = [], equipment, painNote = '' }: Case = {}): string[] {
  const one = review();
  const trainee = equipment === undefined ? one.trainee : { ...one.trainee, equipment };
  const session = { ...one.session, painNote };
  const entries = [entry({ exercise, flags: [...flags] })];
  return cautionsDue({ ...one, trainee, session, entries }, catalogue).map(({ id }) => id);
}

describe('home-made equipment', () => {
  it.each([
    ['nothing is stated', undefined, false],
    ['in a gym', 'fullGym', false],
    ['in a park', 'park', false],
    ['in a list with a cable', ['dumbbells', 'cable'], false],
    ['at home', 'home', true],
    ['at home with dumbbells', 'homeWithDumbbells', true],
    ['in a list of dumbbells and a box', ['dumbbells', 'box'], true],
  ] as const)('is warned of where it may be: %s', (_, equipment, expected) => {
    const stated =
      equipment === undefined ? {} : { equipment: typeof equipment === 'string' ? equipment : [...equipment] };
    expect(due('goblet-squat', stated).includes('improvised-equipment')).toBe(expected);
  });

  it('is warned of in a gym where the film shows it', () => {
    const flags = [flag({ criterion: 'setUp', severity: 'stop', fault: 'improvisedEquipment' })];
    expect(due('goblet-squat', { equipment: 'fullGym', flags })).toContain('improvised-equipment');
  });

  it('is not warned of where a lift needs nothing', () => {
    expect(due('bodyweight-squat', { equipment: 'home' })).not.toContain('improvised-equipment');
  });
});

// Lifts before which a coach has the trunk braced (common practice), one of each kind.
const braced = [
  ...['back-squat', 'front-squat', 'goblet-squat', 'pause-squat', 'deadlift', 'romanian-deadlift', 'sumo-deadlift'],
  ...['good-morning', 'hip-thrust', 'bench-press', 'dumbbell-bench-press', 'overhead-press', 'push-press', 'clean'],
  ...[
    'snatch',
    'thruster',
    'bent-over-row',
    'leg-press',
    'split-squat',
    'walking-lunge',
    'loaded-carry',
    'front-plank',
  ],
];

describe('the caution on breath', () => {
  it.each(braced)('goes with the %s, which is braced', (exercise) => {
    expect(due(exercise)).toContain('breath');
  });

  it('doesn’t go with a lift that needs no brace', () => {
    for (const exercise of ['standing-curl', 'leg-extension', 'calf-raise', 'lateral-raise'])
      expect(due(exercise)).not.toContain('breath');
  });

  it('goes with a fault whose cue or drill says to hold the breath', () => {
    const asks = (exercise: string, fault: string, severity: 'adjust' | 'keep' = 'adjust') =>
      asksToHoldBreath(flag({ criterion: 'bracing', severity, fault }), findExercise(catalogue, exercise));
    expect(asks('pause-squat', 'slackensInPause')).toBe(true);
    expect(asks('jerk', 'leansBack')).toBe(true);
    expect(asks('jerk', 'leansBack', 'keep')).toBe(false);
    expect(asks('clean', 'noStillStart')).toBe(false);
  });

  it.each(['Hold your breath through the sticking point', 'Halt die Luft an, bis die Stange oben ist'])(
    'goes with the coach’s own “%s”',
    (cue) => {
      expect(due('standing-curl', { flags: [flag({ cue, criterion: 'depth', severity: 'adjust' })] })).toContain(
        'breath',
      );
    },
  );

  it('knows words of a held breath from other words on breathing', () => {
    for (const words of ['with a breath held', 'Keep the breath in', 'Luft anhalten', 'den Atem anhalten'])
      expect(speaksOfHeldBreath(words)).toBe(true);
    for (const words of ['One breath, then the next rep', 'Breathe out as you lift', 'Atme oben aus'])
      expect(speaksOfHeldBreath(words)).toBe(false);
  });
});

describe('lying presses and hip thrusts', () => {
  // Lombardi and Troxel 2003: most deaths in the files were under a press done lying down.
  it.each(['bench-press', 'floor-press', 'dumbbell-bench-press', 'incline-dumbbell-press'])(
    'the %s has the caution of a lying press',
    (exercise) => {
      expect(due(exercise)).toContain('lying-press-alone');
    },
  );

  it('the hip thrust asks for collars', () => {
    expect(due('hip-thrust')).toContain('collars');
  });
});

describe('the pain scale', () => {
  it.each([
    ['', false],
    ['Knee 2/10', true],
    ['Knee 4/10', true],
    ['Knee 7/10', false],
    ['Knee 2/10 and getting worse', false],
    ['Back 3/10, tingling down the leg', false],
  ])('of “%s”: %s', (painNote, expected) => {
    expect(due('back-squat', { painNote }).includes('pain-scale')).toBe(expected);
  });
});
