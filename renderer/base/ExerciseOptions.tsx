import type { Exercise } from '../../engine/exercises/exercise.ts';

type ExerciseOptionsProps = {
  readonly exercises: readonly Exercise[];
  /** An id to offer even when the library doesn't hold it. */
  readonly kept?: string;
};

/** The exercise library as options, by movement pattern. */
export function ExerciseOptions({ exercises, kept = '' }: ExerciseOptionsProps) {
  const patterns = [...new Set(exercises.map((exercise) => exercise.pattern))];
  const unknown = kept !== '' && !exercises.some((exercise) => exercise.id === kept);
  return (
    <>
      {unknown && <option value={kept}>{kept} (not in the library)</option>}
      {patterns.map((pattern) => (
        <optgroup key={pattern} label={pattern}>
          {exercises
            .filter((exercise) => exercise.pattern === pattern)
            .map((exercise) => (
              <option key={exercise.id} value={exercise.id}>
                {exercise.name}
              </option>
            ))}
        </optgroup>
      ))}
    </>
  );
}
