import { describe, expect, it } from 'vitest';
import { runCommand } from '../../../../renderer/commands/command.ts';
import { exercisesTyped } from '../../../../renderer/review/commands/choosingExercise.ts';
import { reviewBench } from '../../harness/reviewBench.ts';

describe('an exercise typed into the palette', () => {
  it('is offered by an everyday name, in either language, and judges the clip’s exercise as it', async () => {
    const bench = await reviewBench();
    for (const typed of ['military press', 'Schulterdrücken']) {
      const [first] = exercisesTyped(typed, bench.context);
      expect(first?.label()).toBe('Judge this as: Overhead press');
      if (first !== undefined) runCommand(first, bench.context);
    }
    expect(bench.rackside.askedFor('entries.update')).toEqual([
      { entryId: 'e1', exercise: 'overhead-press' },
      { entryId: 'e1', exercise: 'overhead-press' },
    ]);
  });

  it('waits for three letters, offers five at most, and never the one it is already', async () => {
    const bench = await reviewBench();
    expect(exercisesTyped('sq', bench.context)).toEqual([]);
    const offered = exercisesTyped('squat', bench.context).map(({ label }) => label());
    expect(offered).toHaveLength(5);
    expect(offered).not.toContain('Judge this as: Back squat');
  });
});
