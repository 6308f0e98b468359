// @vitest-environment happy-dom
import { render } from '@testing-library/react';
import { describe, expect, it, onTestFinished } from 'vitest';
import { gradeSession } from '../../../../engine/grading/gradeSession.ts';
import { equalSets } from '../../../../engine/review/plan.ts';
import type { Entry } from '../../../../engine/review/review.ts';
import { GradePanel } from '../../../../renderer/review/scorecard/GradePanel.tsx';
import { deskLanguage } from '../../../../renderer/words/deskLanguage.ts';
import { catalogueOf, exercise, shippedRubric } from '../../../engine/catalogue.ts';
import { allSix, clip, entry, flag, reps, review, ticks } from '../../../engine/reviews.ts';

const catalogue = { ...catalogueOf(exercise()), rubric: shippedRubric(3) };

function showPanel(...entries: readonly Entry[]): string {
  const session = gradeSession(review(...entries), catalogue);
  const [grade] = session.entries;
  if (grade === undefined) throw new Error('no exercise');
  const { container } = render(
    <GradePanel grade={grade} session={session} exercise={null} catalogue={catalogue}>
      {null}
    </GradePanel>,
  );
  return container.textContent ?? '';
}

describe('the grade panel under version 3', () => {
  it('says how many cells were looked at: one of two sets of five reps, by six criteria', () => {
    const words = showPanel(entry({ clips: [clip(), clip({ id: 'b' })], ticks: ticks(...allSix) }));
    expect(words).toContain('Looked at50% 30 of 60 cells');
  });

  it('shows the sum: depth at 40 with a quarter takes 7.5, and as the lowest 0.325 × 59', () => {
    const words = showPanel(
      entry({ flags: [flag({ criterion: 'depth', severity: 'correct' })], ticks: ticks(...allSix) }),
    );
    expect(words).toContain('100 − 7.5 − 19.18 = 73.3');
  });

  it('lists what the session gains by its plan under what the exercise gains by its remarks', () => {
    const words = showPanel(
      entry({
        flags: [flag({ criterion: 'headPosition', severity: 'prefer', fault: 'headUp' })],
        ticks: ticks(...allSix),
        plan: equalSets({ sets: 3, reps: 60 }),
      }),
    );
    expect(words).toMatch(
      /What would raise the grade.*headUp.*What would raise the session’s grade\+[\d.]+.*Programme: /,
    );
  });

  it('leaves out a gain that reads +0.0', () => {
    // One rep of 50 with a head preference: criterion 99.84, 0.5 × 0.16 × 0.1 = 0.008, and nothing under 99.
    const words = showPanel(
      entry({
        clips: [clip({ reps: reps(50) })],
        flags: [flag({ criterion: 'headPosition', severity: 'prefer', reps: [7] })],
        ticks: ticks(...allSix),
      }),
    );
    expect(words).not.toContain('What would raise the grade');
  });

  it('tells the stops of two exercises as one', () => {
    const stopped = (id: string): Entry =>
      entry({
        id,
        clips: [clip({ id })],
        flags: [flag({ id: `${id}-f`, clip: id, criterion: 'spinePosition', severity: 'stop', reps: [1] })],
        ticks: allSix.map((criterion) => ({ clip: id, criterion, reps: 'set' as const })),
      });
    expect(showPanel(stopped('one'), stopped('two'))).toContain('+31.0 stop Both stops together');
  });

  it('speaks German on a German desk, with commas in its sum', () => {
    deskLanguage.getState().choose('de');
    onTestFinished(() => deskLanguage.getState().choose('en'));
    const words = showPanel(
      entry({ flags: [flag({ criterion: 'depth', severity: 'correct' })], ticks: ticks(...allSix) }),
    );
    expect(words).toContain('100 − 7,5 − 19,18 = 73,3');
    expect(words).toContain('Was die Note heben würde');
    expect(words).toContain('Angesehen100\u00A0% 30 von 30 Feldern');
  });

  it('calls a criterion by the name it has on the exercise: the depth of a press is its range', () => {
    const press = exercise({ pattern: 'horizontal press', implement: 'dumbbells' });
    const session = gradeSession(
      review(entry({ flags: [flag({ criterion: 'depth', severity: 'correct' })], ticks: ticks(...allSix) })),
      { ...catalogueOf(press), rubric: shippedRubric(3) },
    );
    const [grade] = session.entries;
    if (grade === undefined) throw new Error('no exercise');
    const { container } = render(
      <GradePanel
        grade={grade}
        session={session}
        exercise={press}
        catalogue={{ ...catalogueOf(press), rubric: shippedRubric(3) }}
      >
        {null}
      </GradePanel>,
    );
    expect(container.textContent).toContain('points off: mean of all criteria, Range');
    expect(container.textContent).not.toContain('Depth');
  });
});
