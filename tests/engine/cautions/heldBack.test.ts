import { describe, expect, it } from 'vitest';
import type { RacksideDocument } from '../../../engine/document/document.ts';
import { type Edition, editionOf } from '../../../engine/edition/edition.ts';
import type { Review } from '../../../engine/review/review.ts';
import { shippedUnder } from '../../seeds/shippedCatalogue.ts';
import { type Draft, draft, linesOf, sessionOf } from '../letter/sample.ts';

const catalogue = shippedUnder(3);

type Remark = NonNullable<Draft['flags']>[number];

const short: Remark = { criterion: 'depth', severity: 'correct', reps: [4], note: 'High.' };
const round: Remark = { criterion: 'spinePosition', severity: 'stop', reps: [2], note: 'Rounds.' };

/** A squat planned with too few reps for growth, a curl beside it; remarks on both. */
function sessionWith(painNote: string, flags: readonly Remark[] = [short]): Review {
  const squat = draft({ flags: [...flags] });
  const curl = draft({ exercise: 'standing-curl', flags: [short] });
  const sets = [2, 2, 2].map((reps) => ({ reps, loadKg: 100 }));
  const session = sessionOf([{ ...squat, plan: { sets } }, curl]);
  return { ...session, session: { ...session.session, painNote } };
}

const editionWith = (review: Review, language: 'en' | 'de' = 'en'): Edition =>
  editionOf({ review, catalogue, style: { length: 'full', tone: 'plain', language }, names: 'full' });
const wordsOf = (document: RacksideDocument): string => linesOf(document).join('\n');

describe('advice and gains of a lift that pain holds back', () => {
  it('stand on sheet and breakdown without pain, and wait with it', () => {
    const free = editionWith(sessionWith('No pain today.'));
    const held = editionWith(sessionWith('Knee 4/10'));
    expect(wordsOf(free.sheet('full'))).not.toMatch(/waits until|left out here/);
    const gains = (edition: Edition): string => {
      const sheet = edition.sheet('full');
      return wordsOf({ ...sheet, blocks: sheet.blocks.filter(({ id }) => id === 'raises-table') });
    };
    expect(gains(free)).toContain('Back squat');
    expect(gains(held)).not.toContain('Back squat');
    expect(gains(held)).toContain('Standing curl');
    expect(wordsOf(held.sheet('full'))).toContain('What pain holds back is left out here.');
    expect(wordsOf(held.sheet('full'))).toContain('Advice on this waits until the pain has settled.');
    expect(wordsOf(held.breakdown())).toContain('What would raise it: nothing for now: the pain comes first.');
  });

  it('wait for a clinician where pain stops the lift, in every document', () => {
    const edition = editionWith(sessionWith('Knee 7/10 and rising'));
    for (const document of [edition.letter().document, edition.sheet('full')]) {
      expect(wordsOf(document)).not.toContain('when the pain has settled');
      expect(wordsOf(document)).not.toContain('until the pain has settled');
      expect(wordsOf(document)).toContain('until a licensed clinician has cleared it');
    }
  });
});

describe('something unsafe in a lift that pain holds back', () => {
  it.each([
    ['en', /load that can be stopped at any height|start again light|I see nothing to change/],
    ['de', /auf jeder Höhe|leicht wieder an|nichts zu ändern/],
  ] as const)('asks for no light sets of it: %s', (language, lightSets) => {
    const edition = editionWith(sessionWith('Knee 7/10 and rising', [round]), language);
    for (const document of [edition.letter().document, edition.sheet('full'), edition.filmingCard()])
      expect(wordsOf(document)).not.toMatch(lightSets);
  });
});

describe('the end of a letter', () => {
  it.each([
    ['', [short], /Train well/],
    ['', [round], /^First put right what was unsafe\./m],
    ['Knee 4/10', [round], /^Look after the pain first/m],
  ])('with the pain note “%s” asks for what comes first', (painNote, flags, last) => {
    expect(wordsOf(editionWith(sessionWith(painNote, flags)).letter().document)).toMatch(last);
  });

  it('speaks of a far lighter start where a rounded back was unsafe on most reps', () => {
    const everyRep = { ...round, reps: [1, 2, 3, 4, 5] };
    const words = (severity: 'stop' | 'correct') => {
      const deadlift = draft({ exercise: 'deadlift', flags: [{ ...everyRep, severity }] });
      const sets = [{ reps: 5, loadKg: 200 }];
      return wordsOf(editionWith(sessionOf([{ ...deadlift, plan: { sets } }])).letter().document);
    };
    expect(words('stop')).toMatch(/far lighter, with a load that you can stop at any height/);
    expect(words('stop')).not.toMatch(/a tenth to a fifth lighter/);
    expect(words('correct')).toMatch(/a tenth to a fifth lighter/);
  });
});

describe('a self-review', () => {
  it.each(['en', 'de'] as const)('names nobody in the titles of sheet and breakdown: %s', (language) => {
    const review: Review = { ...sessionWith(''), voice: 'self' };
    const edition = editionWith(review, language);
    for (const { title } of [edition.sheet('full'), edition.breakdown()]) {
      expect(title).not.toContain(review.trainee.name);
      expect(title).toMatch(/my training|meinem Training/);
    }
  });
});
