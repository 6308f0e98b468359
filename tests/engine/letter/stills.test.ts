import { describe, expect, it } from 'vitest';
import type { Picture } from '../../../engine/document/document.ts';
import { toHtml } from '../../../engine/document/toHtml.ts';
import { type LetterStyle, letterDocument, type Stills } from '../../../engine/letter/letter.ts';
import { writeLetter } from '../../../engine/letter/writeLetter.ts';
import type { Review } from '../../../engine/review/review.ts';
import { htmlFaults } from '../document/checkHtml.ts';
import { draft, letterOf, planOf, sessionOf } from './sample.ts';

const style = (length: LetterStyle['length'], language: LetterStyle['language'] = 'en'): LetterStyle => ({
  length,
  tone: 'plain',
  language,
});

const short = { criterion: 'depth', fault: 'shortOfDepth' };
const review = sessionOf([
  draft({
    flags: [
      { ...short, severity: 'adjust', reps: [1] },
      { ...short, severity: 'correct', reps: [2] },
      { ...short, severity: 'correct', reps: [3] },
      { criterion: 'depth', severity: 'keep', reps: [4] },
    ],
  }),
]);

const stillsOf = (...ids: readonly string[]): Stills =>
  new Map(ids.map((id) => [id, { source: `stills/${id}.jpg`, widthPx: 1280, heightPx: 720 }]));

const picturesOf = (from: Review, stills: Stills, how: LetterStyle = style('full')): Picture[] =>
  letterDocument(writeLetter(planOf(from), how, stills)).blocks.filter((block) => block.kind === 'picture');

const everyStill = stillsOf('back-squat-0', 'back-squat-1', 'back-squat-2', 'back-squat-3');

describe('the still beside a priority', () => {
  it('is that of its heaviest remark, the first of several, in the full letter and in the short one', () => {
    for (const length of ['full', 'short'] as const) {
      const [picture, ...others] = picturesOf(review, everyStill, style(length));
      expect(others).toEqual([]);
      expect(picture).toMatchObject({
        source: 'stills/back-squat-1.jpg',
        size: { widthPx: 1280, heightPx: 720 },
        // Frame 41 of 30 a second.
        caption: 'Back squat, 0:01, rep 2 of 5',
      });
      expect(picture?.alt).toContain('rep 2 of 5');
    }
  });

  it('is that of another remark where the heaviest has none, and there is none without stills', () => {
    expect(picturesOf(review, stillsOf('back-squat-0')).map(({ source }) => source)).toEqual([
      'stills/back-squat-0.jpg',
    ]);
    expect(picturesOf(review, stillsOf('back-squat-3'))).toEqual([]);
    expect(letterDocument(writeLetter(planOf(review), style('full')))).toEqual(letterOf(review));
  });

  it('stands right under the priority’s heading, beside what is said of it', () => {
    const { blocks } = letterDocument(writeLetter(planOf(review), style('full'), everyStill));
    const at = blocks.findIndex(({ kind }) => kind === 'picture');
    expect(blocks[at - 1]).toMatchObject({ kind: 'heading', text: '1. Short of depth' });
    const [picture] = picturesOf(review, everyStill);
    expect(picture?.beside).toContain(blocks[at + 1]?.id);
  });

  it('is described in German too', () => {
    const [picture] = picturesOf(review, everyStill, style('full', 'de'));
    expect(picture?.alt).toMatch(/^Standbild aus dem Video: .*Wiederholung 2 von 5/);
  });

  it('leaves a page that an HTML checker has nothing to say about', async () => {
    expect(await htmlFaults(toHtml(letterDocument(writeLetter(planOf(review), style('full'), everyStill))))).toEqual(
      [],
    );
  });
});
