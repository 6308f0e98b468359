// @vitest-environment happy-dom
import { act, render, screen, within } from '@testing-library/react';
import { describe, expect, it } from 'vitest';
import { LoadAndSpeed } from '../../../renderer/trainee/LoadAndSpeed.tsx';
import type { SetSpeed } from '../../../renderer/trainee/speedLines.ts';
import { shipped } from '../../seeds/shippedCatalogue.ts';
import { fakeRackside } from '../harness/fakeRackside.ts';

const set = (clipId: string, date: string, loadKg: number, fastestMps: number): SetSpeed => ({
  clipId,
  sessionId: date,
  date,
  exercise: 'back-squat',
  loadKg,
  fastestMps,
});
const sets = [
  set('a', '2026-03-04', 60, 0.82),
  set('b', '2026-03-04', 100, 0.5),
  set('c', '2026-03-11', 60, 0.9),
  set('d', '2026-03-11', 100, 0.58),
];
const squat = shipped.exercises.find(({ id }) => id === 'back-squat')?.name ?? '';

describe('load and speed', () => {
  it('says every set, draws a line a session, and compares the first with the last at one speed', async () => {
    const page = fakeRackside({ 'trainees.speeds': () => sets });
    render(<LoadAndSpeed traineeId="t1" units="kg" catalogue={shipped} />);
    const chart = await screen.findByRole('img', { name: `${squat}: speed by load` });
    expect(page.asked).toEqual([{ name: 'trainees.speeds', params: { traineeId: 't1' } }]);
    const description = document.getElementById(chart.getAttribute('aria-describedby') ?? '');
    expect(description?.textContent).toMatch(/^4 Mar 2026: 60 kg, 0\.82 m\/s; 4 Mar 2026: 100 kg, 0\.5 m\/s; /);
    expect(chart.querySelectorAll('circle')).toHaveLength(4);
    expect(chart.querySelectorAll('.trend-line')).toHaveLength(2);
    expect(screen.getByText('At 0.7 m/s: 75 kg on 4 Mar 2026, 85 kg on 11 Mar 2026.')).toBeTruthy();
    const rows = within(screen.getByRole('table')).getAllByRole('row');
    expect(rows.at(-1)?.textContent).toBe('11 Mar 2026100 kg0.58 m/s');
  });

  it('speaks in pounds to who lifts in pounds', async () => {
    fakeRackside({ 'trainees.speeds': () => sets });
    render(<LoadAndSpeed traineeId="t1" units="lb" catalogue={shipped} />);
    await screen.findByRole('img');
    // 75 kg = 165.35 lb, 85 kg = 187.39 lb; a line through measures knows no half pounds.
    expect(screen.getByText('At 0.7 m/s: 165 lb on 4 Mar 2026, 187 lb on 11 Mar 2026.')).toBeTruthy();
  });

  it('is not there without two loads', async () => {
    const page = fakeRackside({ 'trainees.speeds': () => [] });
    await act(async () => {
      render(<LoadAndSpeed traineeId="t1" units="kg" catalogue={shipped} />);
    });
    expect(page.asked).toHaveLength(1);
    expect(document.body.textContent).toBe('');
  });
});
