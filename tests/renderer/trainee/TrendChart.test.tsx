// @vitest-environment happy-dom
import { render, screen, within } from '@testing-library/react';
import { userEvent } from '@testing-library/user-event';
import { beforeEach, describe, expect, it } from 'vitest';
import { TrendChart } from '../../../renderer/trainee/TrendChart.tsx';
import { fakeRackside } from '../harness/fakeRackside.ts';

const span = { from: '2026-03-01', to: '2026-03-11' };
const depth = {
  name: 'Depth',
  points: [
    { sessionId: 'a', date: '2026-03-01', score: 70 },
    { sessionId: 'b', date: '2026-03-06', score: 100 },
    { sessionId: 'c', date: '2026-03-11', score: 85 },
  ],
};

describe('a trend chart', () => {
  beforeEach(() => {
    fakeRackside({});
  });

  it('is a picture whose name says the change and whose description says every point', () => {
    render(<TrendChart line={depth} span={span} />);
    const chart = screen.getByRole('img', { name: 'Depth: from 70.0 to 85.0' });
    const description = document.getElementById(chart.getAttribute('aria-describedby') ?? '');
    expect(description?.textContent).toBe('1 Mar 2026: 70.0; 6 Mar 2026: 100.0; 11 Mar 2026: 85.0');
  });

  it('draws one dot a session, by its day and its score', () => {
    render(<TrendChart line={depth} span={span} />);
    const places = [...screen.getByRole('img').querySelectorAll('circle')].map((dot) =>
      ['cx', 'cy'].map((name) => Number(dot.getAttribute(name))),
    );
    // The middle day lies in the middle; 100 points lie at the top, 70 three tenths of the height below it.
    const [first, middle, last] = places;
    expect(middle?.[0]).toBe(((first?.[0] ?? 0) + (last?.[0] ?? 0)) / 2);
    expect(middle?.[1]).toBe(0);
    expect((first?.[1] ?? 0) / (last?.[1] ?? 0)).toBeCloseTo(2, 10);
  });

  it('opens a table of the same by the keyboard', async () => {
    const user = userEvent.setup();
    render(<TrendChart line={depth} span={span} />);
    const summary = screen.getByLabelText('Depth as a table');
    await user.click(summary);
    const rows = within(screen.getByRole('table')).getAllByRole('row');
    expect(rows.map(({ textContent }) => textContent)).toEqual([
      'SessionPoints',
      '1 Mar 202670.0',
      '6 Mar 2026100.0',
      '11 Mar 202685.0',
    ]);
  });

  it('says when there is but one session', () => {
    render(<TrendChart line={{ name: 'Depth', points: depth.points.slice(0, 1) }} span={span} />);
    expect(screen.getByRole('img', { name: 'Depth: one session so far' })).toBeTruthy();
  });
});
