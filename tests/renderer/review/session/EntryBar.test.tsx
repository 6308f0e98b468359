// @vitest-environment happy-dom
import { screen, waitFor } from '@testing-library/react';
import { userEvent } from '@testing-library/user-event';
import { expect, it } from 'vitest';
import type { View } from '../../../../engine/exercises/exercise.ts';
import { EntryBar } from '../../../../renderer/review/session/EntryBar.tsx';
import { reviewWithFlagIds } from '../../../../renderer/state/reviewState.ts';
import { pm, setOf } from '../../../engine/motion/suggest/sets.ts';
import { shipped } from '../../../seeds/shippedCatalogue.ts';
import { renderReview } from '../../harness/renderReview.tsx';
import { reviewAnswer } from '../../harness/reviewAnswer.ts';
import { reviewBench, squatClip, squatEntry } from '../../harness/reviewBench.ts';

const fromBehind = {
  ...setOf([]),
  view: { view: 'oblique', facing: 'right', azimuthDeg: pm(137, 11), sureness: 0.99 },
} as const;

async function shownFor(view: View | null) {
  const clip = squatClip({ view });
  const entry = squatEntry({ clips: [clip] });
  const bench = await reviewBench({
    entries: [entry],
    measures: { recordedAt: '2026-03-04T10:00:00Z', measurement: fromBehind },
  });
  renderReview(
    bench,
    <EntryBar entry={entry} clip={clip} catalogue={shipped} review={reviewWithFlagIds(reviewAnswer([entry]).review)} />,
  );
  return bench;
}

it('offers the view that the joints show for one click, where the coach chose none', async () => {
  const bench = await shownFor(null);
  expect(screen.getByRole('combobox', { name: 'View' })).toHaveProperty('value', '');
  await userEvent.click(screen.getByRole('button', { name: /Use view: three-quarter from behind/ }));
  await waitFor(() =>
    expect(bench.rackside.askedFor('clips.update')).toEqual([{ clipId: 'c1', change: { view: 'oblique' } }]),
  );
});

it('offers nothing where the coach chose one', async () => {
  await shownFor('side');
  expect(screen.getByRole('combobox', { name: 'View' })).toHaveProperty('value', 'side');
  expect(screen.queryByRole('button', { name: /Take:/ })).toBeNull();
});
