import { describe, expect, it } from 'vitest';
import { plainText } from '../../../engine/document/document.ts';
import { type EditionSource, editionOf, withFootage } from '../../../engine/edition/edition.ts';
import type { ClipFacts } from '../../../engine/review/review.ts';
import { measurement } from '../handover/folder.ts';
import { catalogue, draft, linesOf, sessionOf } from '../letter/sample.ts';

const short = { severity: 'correct', criterion: 'depth', fault: 'shortOfDepth' } as const;
const review = sessionOf([
  draft({ exercise: 'back-squat', flags: [{ ...short, reps: [1, 2, 3] }] }),
  draft({ exercise: 'bench-press' }),
]);

const source = (change: Partial<EditionSource> = {}): EditionSource => ({
  review,
  catalogue,
  style: { length: 'full', tone: 'plain', language: 'en' },
  names: 'full',
  ...change,
});

const someStills = new Map(
  review.entries.flatMap(({ flags }) =>
    flags.map(({ id }) => [id, { source: `stills/${id}.jpg`, widthPx: 640, heightPx: 360 }] as const),
  ),
);

describe('an edition', () => {
  it('is graded and planned once, whatever is written of it', () => {
    const edition = editionOf(source());
    const [grade, plan] = [edition.grade(), edition.plan()];
    edition.letter(someStills);
    edition.sheet('full');
    edition.breakdown();
    edition.filmingCard();
    expect(edition.grade()).toBe(grade);
    expect(edition.plan()).toBe(plan);
    expect(edition.letter(someStills)).toBe(edition.letter(someStills));
    expect(edition.letter()).toBe(edition.letter());
  });

  it('has one letter, with pictures beside it or without', () => {
    const edition = editionOf(source());
    const pictured = edition.letter(someStills).document.blocks;
    expect(pictured.some(({ kind }) => kind === 'picture')).toBe(true);
    expect(pictured.filter(({ kind }) => kind !== 'picture')).toEqual(edition.letter().document.blocks);
  });

  it('speaks one language and tells the name one way, also in the coach’s own words', () => {
    const [first = ''] = review.trainee.name.split(' ');
    const edits = [{ paragraph: 'opening', words: `Well done, ${first}.`, basis: '' }];
    const edition = editionOf(source({ names: 'none', style: { ...source().style, language: 'de' }, edits }));
    const documents = [edition.letter().document, edition.sheet('full'), edition.breakdown(), edition.filmingCard()];
    expect(documents.map(({ language }) => language)).toEqual(['de', 'de', 'de', 'de']);
    expect(edition.letter().lines.find(({ id }) => id === 'opening')?.words).toBe('Well done, Trainee.');
    for (const each of documents) expect(linesOf(each).join('\n')).not.toContain(first);
    expect(JSON.parse(edition.sheetJson())).toMatchObject({ language: 'de', trainee: 'Trainee' });
  });

  it('asks for film in the letter’s words, the coach’s where they wrote some', () => {
    const ids = editionOf(source())
      .letter()
      .letter.sections.find(({ id }) => id === 'film')
      ?.blocks.map(({ id }) => id);
    const paragraph = ids?.[1] ?? 'no request';
    const edition = editionOf(source({ edits: [{ paragraph, words: 'Film it from the front.', basis: '' }] }));
    expect(edition.filmAsks()).toMatchObject({ title: 'What to film next', asks: ['Film it from the front.'] });
    const [, asked] = edition.filmingCard().blocks;
    expect(asked?.kind === 'list' ? asked.items.map(plainText) : []).toEqual(['Film it from the front.']);
  });

  it('asks for the same on the card where the letter is too short to say so', () => {
    const short = editionOf(source({ style: { ...source().style, length: 'short' } }));
    expect(short.letter().letter.sections.map(({ id }) => id)).not.toContain('film');
    expect(short.filmAsks()).toEqual(editionOf(source()).filmAsks());
  });
});

describe('an edition whose clips were opened', () => {
  const withoutFacts = {
    ...review,
    entries: review.entries.map((entry) => ({ ...entry, clips: entry.clips.map(({ facts: _, ...clip }) => clip) })),
  };
  const facts = new Map(
    review.entries.flatMap(({ clips }) =>
      clips.flatMap((clip) => (clip.facts ? [[clip.id, clip.facts] as const] : [])),
    ),
  );
  const nothing = { facts: new Map<string, ClipFacts>(), measures: new Map() };

  it('tells the times that a frame alone can’t tell, by the same grade', () => {
    const edition = editionOf(source({ review: withoutFacts }));
    const opened = withFootage(edition, { ...nothing, facts });
    expect(facts.size).toBeGreaterThan(0);
    expect(linesOf(opened.sheet('full'))).toEqual(linesOf(editionOf(source()).sheet('full')));
    expect(linesOf(edition.sheet('full'))).not.toEqual(linesOf(opened.sheet('full')));
    expect(opened.grade()).toBe(edition.grade());
    expect(opened.source.review).toEqual(review);
  });

  it('is the same edition where they told nothing new', () => {
    const edition = editionOf(source());
    expect(withFootage(edition, nothing)).toBe(edition);
    expect(withFootage(edition, { ...nothing, facts })).toBe(edition);
  });

  it('keeps the letter, which tells no measures', () => {
    const edition = editionOf(source());
    const [clipId = ''] = facts.keys();
    const opened = withFootage(edition, { ...nothing, measures: new Map([[clipId, measurement]]) });
    expect(opened.measures.get(clipId)).toBe(measurement);
    expect(opened.letter()).toBe(edition.letter());
    expect(opened.letter(someStills)).toBe(edition.letter(someStills));
  });
});
