// @vitest-environment happy-dom
import { screen } from '@testing-library/react';
import { userEvent } from '@testing-library/user-event';
import { expect, it } from 'vitest';
import type { SetMeasurement } from '../../../../engine/motion/measurement.ts';
import { MeasureTable } from '../../../../renderer/review/measures/MeasureTable.tsx';
import { measureColumns } from '../../../../renderer/review/measures/repCells.ts';
import { renderReview } from '../../harness/renderReview.tsx';
import { type ReviewBench, reviewBench } from '../../harness/reviewBench.ts';
import { rep } from './rep.ts';

const measurement: SetMeasurement = {
  calibration: null,
  follows: 'disc',
  followsBecause: 'discMovesWithLifter',
  track: { frames: 300, lost: 0, meanConfidence: 1 },
  facing: null,
  nearSide: null,
  view: null,
  reps: [
    rep,
    { ...rep, index: 2, startS: 5, durationsS: { ...rep.durationsS, eccentric: { value: 3.1, plusMinus: 0.03 } } },
  ],
  offered: [],
  set: { speedLossPct: null, romSpreadM: null, eccentricSpreadS: null },
  curves: { timesS: [], positionPx: [], heightM: [], forwardM: [], speedMps: [], heightPlusMinusM: null },
  warnings: [],
};

async function table(): Promise<ReviewBench> {
  const bench = await reviewBench();
  renderReview(bench, <MeasureTable measurement={measurement} columns={measureColumns} tempo={null} current={2} />);
  return bench;
}

it('has a column a rep and a row a measure; arrows walk over it, Enter goes to the moment', async () => {
  const user = userEvent.setup();
  const bench = await table();
  expect(screen.getAllByRole('columnheader').map(({ textContent }) => textContent)).toEqual(['Rep', '1', '2']);
  const [first] = screen.getAllByRole('gridcell');
  expect(first?.textContent).toBe('2.00 ± 0.03');
  first?.focus();
  await user.keyboard('{ArrowRight}');
  expect(document.activeElement?.textContent).toBe('3.10 ± 0.03');
  expect(document.activeElement?.getAttribute('data-current')).toBe('true');
  await user.keyboard('{ArrowDown}{ArrowLeft}{Enter}');
  // Rep 1 waits at its stretched end from 3 s on: frame 90 of thirty a second.
  expect(bench.player.log.at(-1)).toBe('seek 90');
});
