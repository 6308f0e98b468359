// @vitest-environment happy-dom
import { screen, within } from '@testing-library/react';
import { userEvent } from '@testing-library/user-event';
import { describe, expect, it } from 'vitest';
import type { RepMeasurement } from '../../../../engine/motion/measurement.ts';
import { OfferedReps } from '../../../../renderer/review/measures/OfferedReps.tsx';
import { renderReview } from '../../harness/renderReview.tsx';
import { type ReviewBench, reviewBench } from '../../harness/reviewBench.ts';
import { rep } from './rep.ts';

const offered: readonly RepMeasurement[] = [
  { ...rep, index: 1, startS: 1, endS: 2.5, sureness: 0.3, doubts: ['maybeSetUp', 'short'] },
  { ...rep, index: 2, startS: 6, endS: 8, sureness: 0.2, doubts: ['cutOffAtEnd'] },
  { ...rep, index: 3, startS: 8.5, endS: 9, sureness: 0.2, doubts: [] },
];

async function shown(list: readonly RepMeasurement[]): Promise<ReviewBench> {
  const bench = await reviewBench();
  renderReview(bench, <OfferedReps offered={list} />);
  return bench;
}

describe('movements that were not counted', () => {
  it('are not on the page where there are none', async () => {
    await shown([]);
    expect(screen.queryByRole('region')).toBeNull();
    expect(screen.queryByRole('button')).toBeNull();
  });

  it('stand under how many they are, each with its times and every reason', async () => {
    await shown(offered);
    const list = screen.getByRole('region', { name: '3 movements were not counted as reps' });
    const items = within(list).getAllByRole('listitem');
    expect(items.map((item) => item.querySelector('.soft')?.textContent)).toEqual([
      'it may be setting up before the set; it covers much less range than the reps',
      'the clip ends in the middle of it',
      'the clip has too few movements like it',
    ]);
    expect(items[0]?.textContent).toMatch(/0:01(\.0+)? to 0:02\.50*/);
  });

  it('are counted by a button of which a screen reader says which movement it counts', async () => {
    const user = userEvent.setup();
    const bench = await shown(offered);
    const buttons = screen.getAllByRole('button', { name: /^Count the movement from .+ to .+ as a rep$/ });
    expect(buttons.map(({ textContent }) => textContent)).toEqual(['Count it', 'Count it', 'Count it']);
    expect(new Set(buttons.map((button) => button.getAttribute('aria-label'))).size).toBe(3);
    await user.click(buttons[1] as HTMLElement);
    expect(bench.rackside.askedFor('measures.addOffered')).toEqual([{ clipId: 'c1', offered: 2 }]);
  });

  it('are reached and counted by the keyboard, and shown by the button before', async () => {
    const user = userEvent.setup();
    const bench = await shown(offered);
    await user.tab();
    await user.keyboard('{Enter}');
    // A second after the clip's start, at 30 frames a second.
    expect(bench.player.log).toEqual(['pause', 'seek 30']);
    await user.tab();
    expect(document.activeElement?.getAttribute('aria-label')).toMatch(/^Count the movement from 0:01/);
    await user.keyboard('{Enter}');
    await user.tab();
    await user.tab();
    await user.keyboard(' ');
    expect(bench.rackside.askedFor('measures.addOffered')).toEqual([
      { clipId: 'c1', offered: 1 },
      { clipId: 'c1', offered: 2 },
    ]);
  });
});
