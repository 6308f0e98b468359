import { searchExercises } from '../../../engine/exercises/searchExercises.ts';
import { mutate } from '../../bridge/mutate.ts';
import type { Command } from '../../commands/command.ts';
import { sayCommandPanels } from '../../words/sayCommandPanels.ts';
import { isOnStage, type ReviewContext } from './reviewContext.ts';

/** Shorter than this, what is typed is about to become the name of a command. */
const fewestLetters = 3;
const mostOffered = 5;

/** Judging the clip on the stage as each of the exercises whose names answer what is typed, the best match first. */
export function exercisesTyped(typed: string, { stage }: ReviewContext): readonly Command<ReviewContext>[] {
  if (stage === null || typed.trim().length < fewestLetters) return [];
  return searchExercises(stage.catalogue, typed)
    .filter(({ id }) => id !== stage.entry.exercise)
    .slice(0, mostOffered)
    .map(({ id, name }) => ({
      id: `judgeAs:${id}`,
      group: 'scorecard',
      label: () => sayCommandPanels('judgeAs', { exercise: name }),
      keys: [],
      readOnly: 'refused',
      when: isOnStage,
      run: async () => {
        await mutate('entries.update', { entryId: stage.entry.id, exercise: id });
      },
    }));
}
