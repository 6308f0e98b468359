import { describe, expect, it } from 'vitest';
import { gradeSession } from '../../../engine/grading/gradeSession.ts';
import { letterDocument } from '../../../engine/letter/letter.ts';
import { planLetter } from '../../../engine/letter/planLetter.ts';
import { writeLetter } from '../../../engine/letter/writeLetter.ts';
import type { Review } from '../../../engine/review/review.ts';
import { catalogue, draft, linesOf, sessionOf } from './sample.ts';

const short = (reps: readonly number[]) => ({
  criterion: 'depth',
  fault: 'shortOfDepth',
  severity: 'correct' as const,
  reps: [...reps],
});
const on = (date: string, reps: readonly number[]): Review => {
  const review = sessionOf([draft({ flags: reps.length === 0 ? [] : [short(reps)] })]);
  return { ...review, session: { ...review.session, date } };
};
const planWith = (review: Review, earlier: readonly Review[]) =>
  planLetter(review, gradeSession(review, catalogue), catalogue, earlier);
const textWith = (review: Review, ...earlier: Review[]): string =>
  linesOf(letterDocument(writeLetter(planWith(review, earlier)))).join('\n');
const library = catalogue.exercises
  .find(({ id }) => id === 'back-squat')
  ?.faults.find(({ id }) => id === 'shortOfDepth');

describe('a letter that knows the sessions before', () => {
  it('says what is gone, better, unchanged and back, against the trainee’s own film', () => {
    expect(textWith(on('2026-03-08', []), on('2026-03-01', [1, 2]))).toContain(
      'gone. Last time it was on 2 of 5 reps.',
    );
    expect(textWith(on('2026-03-08', [1]), on('2026-03-01', [1, 2]))).toContain(
      'better. Now 1 of 5 reps, last time 2 of 5 reps.',
    );
    expect(textWith(on('2026-03-08', [4, 5]), on('2026-03-01', [1, 2]))).toContain(
      'unchanged. Now 2 of 5 reps, last time 2 of 5 reps.',
    );
    const back = textWith(on('2026-03-08', [1]), on('2026-02-22', [1]), on('2026-03-01', []));
    expect(back).toContain('back again, on 1 of 5 reps.');
  });

  it('says nothing of last time where there was none', () => {
    expect(textWith(on('2026-03-08', [1]))).not.toContain('Since last time');
  });

  // Three letters with one cue, then another: common practice, no source.
  it('changes the cue after three letters, and says so', () => {
    const three = ['2026-02-15', '2026-02-22', '2026-03-01'].map((date) => on(date, [1]));
    const [rotated] = planWith(on('2026-03-08', [1]), three).priorities;
    expect(rotated).toMatchObject({ cue: library?.cue.body, cueIsNew: true });
    const [kept] = planWith(on('2026-03-08', [1]), three.slice(1)).priorities;
    expect(kept).toMatchObject({ cue: library?.cue.outcome, cueIsNew: false });
    expect(textWith(on('2026-03-08', [1]), ...three)).toContain('This is a new cue');
  });
});

describe('the one choice', () => {
  it('is between two cues where one thing is asked, and between two things where there are more', () => {
    expect(planWith(on('2026-03-08', [1, 2]), []).choice).toEqual({ kind: 'cue', other: library?.cue.body });
    const two = sessionOf([
      draft({
        flags: [short([1]), { criterion: 'barPath', fault: 'barDriftsForward', severity: 'adjust', reps: [1] }],
      }),
    ]);
    expect(planWith(two, []).choice).toEqual({ kind: 'free' });
  });

  it('is not offered where something was unsafe', () => {
    const unsafe = sessionOf([draft({ flags: [{ criterion: 'spinePosition', severity: 'stop', reps: [1] }] })]);
    expect(planWith(unsafe, []).choice).toBeNull();
  });
});

describe('length and tone', () => {
  const review = sessionOf([draft({ flags: [short([1, 2, 3])] })], {
    session: { id: 's', title: '', date: '2026-03-08', notes: '', painNote: 'Left shoulder, 2 of 10' },
  });
  const plan = planWith(review, []);
  const words = (style: Parameters<typeof writeLetter>[1]): string =>
    linesOf(letterDocument(writeLetter(plan, style))).join('\n');

  it('a short letter keeps the grade, what was seen, the cue and every caution, and drops the rest', () => {
    const shortLetter = words({ length: 'short', tone: 'plain', language: 'en' });
    for (const kept of [
      'Overall grade',
      'What I saw.',
      'Your cue.',
      'Cautions',
      'Left shoulder, 2 of 10',
      'not medical advice',
    ]) {
      expect(shortLetter).toContain(kept);
    }
    for (const dropped of ['Why it matters.', 'Practise.', 'Exercise by exercise']) {
      expect(shortLetter).not.toContain(dropped);
    }
    expect(shortLetter.length).toBeLessThan(words({ length: 'full', tone: 'plain', language: 'en' }).length);
  });

  it('tones change how it sounds and never what it says', () => {
    const facts = (text: string): string[] => text.match(/\d+(\.\d+)?/g) ?? [];
    const plain = words({ length: 'full', tone: 'plain', language: 'en' });
    for (const tone of ['warm', 'direct'] as const) {
      const toned = words({ length: 'full', tone, language: 'en' });
      expect(toned).not.toBe(plain);
      expect(facts(toned)).toEqual(facts(plain));
      expect(toned).toContain('licensed clinician');
    }
  });
});
