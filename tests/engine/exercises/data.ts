import { exercise, fault, shippedRubric } from '../catalogue.ts';

const six = ['depth', 'eccentricTempo', 'pauses', 'barPath', 'headPosition', 'spinePosition'];

/** Two faults for each criterion. */
export const sharedFaults = six.flatMap((criterion) => [
  fault(`${criterion}One`, criterion),
  fault(`${criterion}Two`, criterion),
]);

/** A squat without faults of its own; change what a test needs. */
export const squat = (change: Parameters<typeof exercise>[0] = {}) =>
  exercise({ pattern: 'squat', faults: [], cautions: [], ...change });

/** A file of the library as read, with one squat in it; change what a test needs. */
export const file = (change: Record<string, unknown> = {}, name = 'exercises/squat.json') => ({
  name,
  content: { pattern: 'squat', faults: sharedFaults, exercises: [squat()], ...change },
});

/** What a catalogue is built from, with these files. */
export const input = (...exerciseFiles: ReturnType<typeof file>[]) => ({
  rubric: shippedRubric(),
  exerciseFiles,
  cautions: [{ id: 'room', topic: 'Room', text: 'Keep clear.', source: 'common practice', applies: 'exercise' }],
});
