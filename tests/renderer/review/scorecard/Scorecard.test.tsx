// @vitest-environment happy-dom
import { screen, within } from '@testing-library/react';
import { userEvent } from '@testing-library/user-event';
import { describe, expect, it, onTestFinished } from 'vitest';
import { Scorecard } from '../../../../renderer/review/scorecard/Scorecard.tsx';
import { SeverityBar } from '../../../../renderer/review/scorecard/SeverityBar.tsx';
import { deskLanguage } from '../../../../renderer/words/deskLanguage.ts';
import { renderReview } from '../../harness/renderReview.tsx';
import { depthFlag, type ReviewBench, reviewBench, squatEntry } from '../../harness/reviewBench.ts';

function showCard(bench: ReviewBench): void {
  const { stage } = bench.context;
  if (stage === null) throw new Error('No clip is on the stage.');
  renderReview(
    bench,
    <>
      <Scorecard entry={stage.entry} grade={stage.grade} catalogue={stage.catalogue} />
      <SeverityBar />
    </>,
  );
}

const judged = () =>
  reviewBench({
    entries: [
      squatEntry({
        flags: [depthFlag(), depthFlag({ id: 'f2', criterion: 'barPath', reps: 'set', severity: 'prefer' })],
        ticks: [{ clip: 'c1', criterion: 'depth', reps: [1] }],
      }),
    ],
  });

describe('the scorecard', () => {
  it('is a grid with a row for each criterion, and a column for the set and each rep', async () => {
    showCard(await judged());
    const grid = screen.getByRole('grid', { name: 'Scorecard' });
    const row = within(grid).getByRole('row', { name: /^Depth/ });
    expect(within(row).getAllByRole('gridcell')).toHaveLength(4);
    expect(
      within(grid)
        .getAllByRole('button')
        .map((head) => head.getAttribute('aria-label')),
    ).toEqual(['Go to whole set', 'Go to rep 1', 'Go to rep 2', 'Go to rep 3']);
  });

  it('says in words what each cell holds', async () => {
    showCard(await judged());
    expect(screen.getByRole('gridcell', { name: /^Depth, rep 1: fine/ })).toBeTruthy();
    expect(screen.getByRole('gridcell', { name: /^Depth, rep 2: adjust, / })).toBeTruthy();
    expect(screen.getByRole('gridcell', { name: /^Depth, rep 3: nothing yet/ })).toBeTruthy();
    expect(screen.getByRole('gridcell', { name: /^Bar path, rep 1: prefer on the whole set/ })).toBeTruthy();
  });

  it('speaks German on a German desk: criteria, cells and severities', async () => {
    deskLanguage.getState().choose('de');
    onTestFinished(() => deskLanguage.getState().choose('en'));
    showCard(await judged());
    expect(screen.getByRole('grid', { name: 'Wertungskarte' })).toBeTruthy();
    expect(screen.getByRole('gridcell', { name: /^Tiefe, Wiederholung 1: passt/ })).toBeTruthy();
    expect(screen.getByRole('gridcell', { name: /^Tiefe, Wiederholung 2: anpassen, \d+,\d$/ })).toBeTruthy();
    expect(screen.getByRole('gridcell', { name: /^Tiefe, Wiederholung 3: noch nichts/ })).toBeTruthy();
    expect(screen.getByRole('button', { name: 'Gehe zu: Wiederholung 3' })).toBeTruthy();
  });

  it('goes to a cell that is clicked, and shows its moment', async () => {
    const bench = await judged();
    showCard(bench);
    await userEvent.click(screen.getByRole('gridcell', { name: /^Depth, rep 3/ }));
    expect(bench.context.cursor).toMatchObject({ criterion: 'depth', column: { clipId: 'c1', rep: 3 } });
    expect(bench.player.log).toEqual(['seek 130']);
    const cell = screen.getByRole('gridcell', { name: /^Depth, rep 3/, selected: true });
    expect(document.activeElement).toBe(cell);
    expect(cell.tabIndex).toBe(0);
  });
});

describe('the bar of severities', () => {
  it('marks the cell of the cursor, each severity with its key', async () => {
    const bench = await judged();
    bench.moveTo('depth', 3);
    showCard(bench);
    await userEvent.click(screen.getByRole('button', { name: 'Correct' }));
    expect(bench.rackside.askedFor('flags.add')).toMatchObject([
      { criterion: 'depth', severity: 'correct', reps: [3] },
    ]);
  });

  it('says why nothing can be marked, and asks for nothing', async () => {
    const bench = await reviewBench({ frame: null });
    bench.moveTo('depth', 3);
    showCard(bench);
    const button = screen.getByRole('button', { name: /^Adjust/ });
    expect(button.getAttribute('aria-disabled')).toBe('true');
    expect(button.getAttribute('aria-description')).toMatch(/isn’t on screen yet/);
    expect(button.title).toBe(button.getAttribute('aria-description'));
    await userEvent.click(button);
    expect(bench.rackside.askedFor('flags.add')).toEqual([]);
    expect(screen.getByRole('button', { name: /^Fine/ }).getAttribute('aria-disabled')).toBeNull();
  });
});
