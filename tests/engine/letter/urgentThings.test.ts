import { describe, expect, it } from 'vitest';
import { blocksOf, tones } from '../../../engine/letter/letter.ts';
import { writeLetter } from '../../../engine/letter/writeLetter.ts';
import { draft, letterOf, lettersText, planOf, sessionOf } from './sample.ts';

const stop = (criterion: string, fault: string | null = null) => ({
  severity: 'stop' as const,
  criterion,
  fault,
  reps: 'set' as const,
});
const headings = (review: Parameters<typeof letterOf>[0]): string[] =>
  letterOf(review).blocks.flatMap((block) => (block.kind === 'heading' && block.level === 3 ? [block.text] : []));

// A strength coach works through everything unsafe before anything else, and asks for one clip of each lift.
describe('two unsafe lifts', () => {
  const review = sessionOf([
    draft({ exercise: 'bench-press', flags: [stop('barPath')] }),
    draft({ exercise: 'back-squat', flags: [stop('barPath')] }),
  ]);

  it('are both worked through before everything else, each under its own heading', () => {
    expect(headings(review)).toEqual(['1. Bar path (bench press)', '2. Bar path (back squat)']);
    expect(lettersText(review)).toContain('This comes before everything else:');
  });

  it('are both left out; one alone is “this lift”', () => {
    expect(lettersText(review)).toContain('Leave these lifts out');
    expect(lettersText(review)).not.toContain('Leave this lift out');
    expect(lettersText(sessionOf(review.entries.slice(0, 1)))).toContain('Leave this lift out');
  });

  it('are each asked for in one clip, the light set, and in no other view', () => {
    const { film } = planOf(review);
    expect(film.map((request) => [request.kind, 'exercise' in request ? request.exercise : ''])).toEqual([
      ['afterStop', 'Bench press'],
      ['afterStop', 'Back squat'],
    ]);
  });
});

describe('clips that nobody has looked at', () => {
  it('are called that, and no new clip is asked for', () => {
    const review = sessionOf([draft(), draft({ exercise: 'leg-press', ticks: [] })]);
    expect(lettersText(review)).toContain('Leg press: I have not looked at these clips yet.');
    expect(lettersText(review)).not.toMatch(/The next clip/);
  });

  it('of which a part is judged leave the rest open, without a new clip', () => {
    const text = lettersText(sessionOf([draft({ ticks: ['depth', 'barPath'] })]));
    expect(text).toMatch(/^The film I had shows more than I have judged\. Still open: /m);
  });
});

describe('pain that can need help at once', () => {
  const painNote = 'Pressure in my chest and dizzy after the last set.';
  const review = sessionOf([draft({ flags: [{ ...stop('depth'), severity: 'keep' }] })], {
    session: { id: 's', title: '', date: '2026-03-01', notes: '', painNote },
  });

  it('leaves room for nothing but the notice, the table and the cautions', () => {
    for (const tone of tones) {
      for (const length of ['full', 'short'] as const) {
        const letter = writeLetter(planOf(review), { length, tone, language: 'en' });
        expect(letter.sections.map(({ id }) => id)).toEqual(['opening', 'pain', 'exercises', 'cautions', 'closing']);
        expect(blocksOf(letter, 'pain')).not.toEqual([]);
      }
    }
  });
});
