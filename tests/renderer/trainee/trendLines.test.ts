import { describe, expect, it } from 'vitest';
import type { HistoryPoint } from '../../../electron/contract/comparing.ts';
import { linesOf, spanOf, trendScales } from '../../../renderer/trainee/trendLines.ts';

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
