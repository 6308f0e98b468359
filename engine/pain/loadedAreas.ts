import type { Exercise } from '../exercises/exercise.ts';
import { type BodyArea, bodyAreas } from './bodyAreas.ts';

/** The joints and regions that every lift of a pattern loads, generously (common practice). */
const byPattern: Readonly<Record<string, readonly BodyArea[]>> = {
  squat: ['lowerBack', 'hip', 'groin', 'glutes', 'thigh', 'hamstring', 'knee', 'calf', 'ankle'],
  lunge: ['hip', 'groin', 'glutes', 'thigh', 'hamstring', 'knee', 'calf', 'ankle'],
  'sled press': ['lowerBack', 'hip', 'groin', 'glutes', 'thigh', 'hamstring', 'knee', 'calf', 'ankle'],
  hinge: ['lowerBack', 'hip', 'groin', 'glutes', 'hamstring', 'wrist'],
  'hip extension': ['lowerBack', 'hip', 'groin', 'glutes', 'hamstring'],
  'knee extension': ['thigh', 'knee'],
  'knee flexion': ['hamstring', 'knee', 'calf'],
  'calf raise': ['calf', 'ankle'],
  'horizontal press': ['shoulder', 'chest', 'elbow', 'wrist'],
  'vertical press': ['neck', 'shoulder', 'upperBack', 'lowerBack', 'elbow', 'wrist'],
  'chest fly': ['shoulder', 'chest', 'elbow', 'wrist'],
  'horizontal row': ['shoulder', 'upperBack', 'elbow', 'wrist'],
  'vertical pull': ['neck', 'shoulder', 'upperBack', 'elbow', 'wrist'],
  'rear shoulder pull': ['neck', 'shoulder', 'upperBack', 'elbow', 'wrist'],
  'lateral raise': ['neck', 'shoulder', 'elbow', 'wrist'],
  curl: ['shoulder', 'elbow', 'wrist'],
  'elbow extension': ['shoulder', 'elbow', 'wrist'],
  trunk: ['neck', 'lowerBack', 'abdomen', 'hip', 'groin'],
  hold: ['neck', 'shoulder', 'lowerBack', 'abdomen', 'hip', 'elbow', 'wrist'],
  'anti-rotation press': ['shoulder', 'lowerBack', 'abdomen', 'hip', 'elbow', 'wrist'],
  'olympic lift': bodyAreas.filter((area) => area !== 'chest'),
};

/** Where a muscle lies; a muscle that is not known may lie anywhere. */
const byMuscle: Readonly<Record<string, readonly BodyArea[]>> = {
  quadriceps: ['thigh', 'knee'],
  hamstrings: ['hamstring'],
  glutes: ['glutes', 'hip'],
  adductors: ['groin', 'hip'],
  'hip flexors': ['hip', 'groin'],
  calves: ['calf', 'ankle'],
  'spinal erectors': ['lowerBack'],
  'upper back': ['upperBack'],
  lats: ['upperBack', 'shoulder'],
  chest: ['chest', 'shoulder'],
  'front deltoids': ['shoulder'],
  'middle deltoids': ['shoulder'],
  'rear deltoids': ['shoulder'],
  biceps: ['elbow', 'shoulder'],
  triceps: ['elbow', 'shoulder'],
  forearms: ['wrist', 'elbow'],
  abdominals: ['abdomen'],
  obliques: ['abdomen'],
  serratus: ['shoulder', 'chest'],
};

/** Muscles that strain an area even where they only help. */
const strainedAsHelpers = new Set(['spinal erectors', 'adductors', 'hip flexors', 'hamstrings', 'calves']);

/** Areas that a lift loads beyond those of its pattern, as where the load is carried. */
const beyondPattern: Readonly<Record<string, readonly BodyArea[]>> = {
  'back-squat': ['neck', 'upperBack'],
  'box-squat': ['neck', 'upperBack'],
  'pause-squat': ['neck', 'upperBack'],
  'front-squat': ['wrist', 'upperBack'],
  'loaded-carry': ['knee', 'ankle', 'upperBack'],
  'uneven-carry': ['knee', 'ankle', 'upperBack'],
  'push-press': ['knee', 'hip'],
  deadlift: ['knee', 'upperBack'],
  'sumo-deadlift': ['knee', 'upperBack'],
  'trap-bar-deadlift': ['knee', 'upperBack'],
  'good-morning': ['neck', 'upperBack'],
  'guided-rail-squat': ['neck', 'upperBack'],
  'guided-rail-squat-reversed': ['neck', 'upperBack'],
  'guided-rail-split-squat': ['neck', 'upperBack'],
  'kneeling-hamstring-lowering': ['shoulder', 'wrist'],
};

/** The parts of the body that an exercise loads, generously; all of them for an exercise of an unknown pattern. */
export function loadedAreas(exercise: Exercise): ReadonlySet<BodyArea> {
  const ofPattern = byPattern[exercise.pattern];
  const muscles = [
    ...exercise.muscles.direct,
    ...exercise.muscles.indirect.filter((muscle) => strainedAsHelpers.has(muscle)),
  ];
  const ofMuscles = muscles.map((muscle) => byMuscle[muscle]);
  if (ofPattern === undefined || ofMuscles.some((areas) => areas === undefined)) return new Set(bodyAreas);
  return new Set([...ofPattern, ...ofMuscles.flatMap((areas) => areas ?? []), ...(beyondPattern[exercise.id] ?? [])]);
}
