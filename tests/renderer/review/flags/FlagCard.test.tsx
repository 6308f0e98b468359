// @vitest-environment happy-dom
import { screen, within } from '@testing-library/react';
import { userEvent } from '@testing-library/user-event';
import { describe, expect, it } from 'vitest';
import type { Flag } from '../../../../engine/review/review.ts';
import { FlagCard } from '../../../../renderer/review/flags/FlagCard.tsx';
import { renderReview } from '../../harness/renderReview.tsx';
import { depthFlag, type ReviewBench, reviewBench, squatEntry } from '../../harness/reviewBench.ts';

async function cardOf(flag: Flag): Promise<ReviewBench> {
  const bench = await reviewBench({ entries: [squatEntry({ flags: [flag] })] });
  const { stage } = bench.context;
  if (stage === null) throw new Error('No clip is on the stage.');
  renderReview(bench, <FlagCard flag={flag} entry={stage.entry} exercise={stage.exercise} where="Depth" />);
  return bench;
}

describe('the card of a flag', () => {
  it('is named after criterion and severity, and shows reps, note and cue', async () => {
    await cardOf(depthFlag({ note: 'Two fingers high' }));
    const card = screen.getByRole('article', { name: 'Flag: Depth, adjust' });
    expect(within(card).getByRole('button', { name: 'Rep 2', pressed: true })).toBeTruthy();
    expect(within(card).getByRole('textbox', { name: 'Note' })).toHaveProperty('value', 'Two fingers high');
    expect(within(card).getByRole('textbox', { name: 'Cue' })).toHaveProperty('value', '');
  });

  it('changes its severity and its reps where they stand', async () => {
    const user = userEvent.setup();
    const bench = await cardOf(depthFlag());
    await user.selectOptions(screen.getByRole('combobox', { name: 'Severity' }), 'correct');
    await user.click(screen.getByRole('button', { name: 'Rep 3' }));
    await user.click(screen.getByRole('button', { name: 'Rep 2' }));
    await user.click(screen.getByRole('button', { name: 'Set' }));
    expect(bench.rackside.askedFor('flags.update')).toEqual([
      { flagId: 'f1', change: { severity: 'correct' } },
      { flagId: 'f1', change: { reps: [2, 3] } },
      { flagId: 'f1', change: { reps: 'set' } },
      { flagId: 'f1', change: { reps: 'set' } },
    ]);
  });

  it('goes to its moment and its cell', async () => {
    const bench = await cardOf(depthFlag());
    await userEvent.click(screen.getByRole('button', { name: /^Go to/ }));
    expect(bench.player.log).toEqual(['seek 80']);
    expect(bench.context.cursor).toMatchObject({ criterion: 'depth', column: { clipId: 'c1', rep: 2 }, flagId: 'f1' });
  });

  it('opens the list of faults, unless it is praise', async () => {
    const bench = await cardOf(depthFlag());
    await userEvent.click(screen.getByRole('button', { name: 'Name the fault' }));
    expect(bench.context.cursor.namingFlagId).toBe('f1');
  });

  it('has no fault to name when it is praise', async () => {
    await cardOf(depthFlag({ severity: 'keep' }));
    expect(screen.queryByRole('button', { name: 'Name the fault' })).toBeNull();
  });

  it('saves a note when it is left, and is taken away by its button', async () => {
    const user = userEvent.setup();
    const bench = await cardOf(depthFlag());
    await user.type(screen.getByRole('textbox', { name: 'Note' }), 'High');
    await user.tab();
    expect(bench.rackside.askedFor('flags.update')).toEqual([{ flagId: 'f1', change: { note: 'High' } }]);
    await user.click(screen.getByRole('button', { name: 'Remove this flag' }));
    expect(bench.rackside.askedFor('flags.remove')).toEqual([{ flagId: 'f1' }]);
  });
});
