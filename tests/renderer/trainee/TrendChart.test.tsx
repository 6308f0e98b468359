// @vitest-environment happy-dom

import { render, screen, within } from '@testing-library/react';
import { userEvent } from '@testing-library/user-event';
import { beforeEach, describe, expect, it } from 'vitest';
import type { HistoryPoint } from '../../../electron/contract/comparing.ts';
import { linesOf, spanOf, TrendChart, trendScales } from '../../../renderer/trainee/TrendChart.tsx';
import { fakeRackside } from '../harness/fakeRackside.ts';

const criterion = (id: string, name: string) => ({ id, name, question: '', partOf: null, anchors: {} }) as never;
const on = (date: string, score: number | null, criteria: Record<string, number>): HistoryPoint => ({
  sessionId: `s${date}`,
  date,
  title: '',
  grade: score === null ? null : { mark: 'B', score },
  criteria: Object.entries(criteria).map(([id, value]) => ({ criterion: id, score: value })),
  changes: [],
});
const history = [on('2026-03-01', 80, { depth: 70 }), on('2026-03-04', null, {}), on('2026-03-11', 90, { depth: 85 })];

describe('the lines of a trend', () => {
  it('leave out sessions without the score, and criteria that were never looked at', () => {
    const lines = linesOf(history, [criterion('depth', 'Depth'), criterion('gaze', 'Gaze')]);
    expect(lines.map(({ name, points }) => [name, points.map(({ score }) => score)])).toEqual([
      ['Session', [80, 90]],
      ['Depth', [70, 85]],
    ]);
  });

  it('lie by the day, from the first session to the last, the same in every chart', () => {
    const span = spanOf(history);
    expect(span).toEqual({ from: '2026-03-01', to: '2026-03-11' });
    const { x, y } = trendScales(span ?? { from: '', to: '' }, { width: 100, height: 40 });
    // Three days of ten are 30 of 100 across; 25 points are a quarter from the ground.
    expect([x(Date.parse('2026-03-04')), x(Date.parse('2026-03-11'))]).toEqual([30, 100]);
    expect([y(100), y(25)]).toEqual([0, 30]);
  });

  it('put a single day in the middle', () => {
    const { x, y } = trendScales({ from: '2026-03-04', to: '2026-03-04' }, { width: 100, height: 40 });
    expect([x(Date.parse('2026-03-04')), y(50)]).toEqual([50, 20]);
  });
});

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
