import type { Exercise } from '../../exercises/exercise.ts';
import type { Part } from '../joints/points.ts';
import type { FollowedPart } from '../measurement.ts';

/** Which joints show a part: one of `leads`, the first that is seen, gives its range; `helpers` bear it out where they move with it. */
export type PartJoints = { readonly leads: readonly (readonly Part[])[]; readonly helpers: readonly Part[] };

export const jointsOfPart: Readonly<Record<FollowedPart, PartJoints>> = {
  hands: { leads: [['wrist'], ['elbow']], helpers: ['elbow', 'shoulder', 'ear', 'nose', 'hip'] },
  shoulders: { leads: [['shoulder']], helpers: ['ear', 'nose', 'hip', 'elbow', 'wrist'] },
  hips: { leads: [['hip']], helpers: ['shoulder', 'ear', 'nose'] },
  head: { leads: [['ear', 'nose']], helpers: ['shoulder', 'hip'] },
  legs: { leads: [['ankle'], ['knee']], helpers: ['knee'] },
};

/** Patterns in which the bar lies on the shoulders, and one in which it lies on the hips. */
const onShoulders: readonly string[] = ['squat', 'lunge'];
const onHips = 'hip extension';
/** Machines that the legs move. */
const byLegs: readonly string[] = ['knee extension', 'knee flexion', 'sled press', 'calf raise'];
/** Lifts in which the whole body rises and sinks with the hands for most of the way. */
const wholeBody: readonly string[] = ['hinge', 'olympic lift'];

/**
 * The parts of the body that show where the load of an exercise is, the best first: what holds or carries it, then what
 * rises and sinks with that.
 */
export function partsOf({ trackedPoint, pattern, movesWith }: Exercise): readonly FollowedPart[] {
  if (movesWith) return [movesWith, ...alongside[movesWith]];
  switch (trackedPoint) {
    case 'hip':
      return ['hips', 'shoulders', 'head'];
    case 'head':
      return ['shoulders', 'head', 'hips'];
    case 'implement':
      return byLegs.includes(pattern)
        ? ['legs']
        : onShoulders.includes(pattern)
          ? ['shoulders', 'hips', 'head']
          : ['hands'];
    case 'disc':
    case 'bar-end':
      if (onShoulders.includes(pattern)) return ['shoulders', 'hips', 'head'];
      if (pattern === onHips) return ['hips'];
      break;
  }
  return wholeBody.includes(pattern) ? ['hands', 'shoulders', 'head'] : ['hands'];
}

const alongside: Readonly<Record<FollowedPart, readonly FollowedPart[]>> = {
  hands: [],
  shoulders: ['head', 'hips'],
  hips: ['shoulders', 'head'],
  head: ['shoulders'],
  legs: [],
};
