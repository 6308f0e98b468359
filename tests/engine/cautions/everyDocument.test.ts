import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { type Block, plainText, type RacksideDocument } from '../../../engine/document/document.ts';
import { type Edition, type EditionSource, editionOf } from '../../../engine/edition/edition.ts';
import { writeIndexPage } from '../../../engine/handover/indexPage.ts';
import { tones } from '../../../engine/letter/letter.ts';
import { sheetWebVtt } from '../../../engine/notes/noteFiles.ts';
import type { Review } from '../../../engine/review/review.ts';
import { sheetCsv } from '../../../engine/sheet/csv.ts';
import { shippedUnder } from '../../seeds/shippedCatalogue.ts';
import { folderOf } from '../handover/folder.ts';
import { draft, linesOf, sessionOf, sessions } from '../letter/sample.ts';

const catalogue = shippedUnder(3);
const runs = { numRuns: 40 };

const notes = fc.constantFrom(
  '',
  'No pain today.',
  'Left knee 4/10 from the third set on',
  'Schulter zwickt, 3 von 10',
  'elbow 7/10 and rising',
  'Low back 2/10 and my foot was numb',
  'Chest pain in the last set',
  'Achilles tendon 2/10, gone after the warm-up',
);

const sources: fc.Arbitrary<EditionSource> = fc
  .record({
    review: sessions,
    painNote: notes,
    unsafe: fc.boolean(),
    length: fc.constantFrom('full' as const, 'short' as const),
    tone: fc.constantFrom(...tones),
    language: fc.constantFrom('en' as const, 'de' as const),
  })
  .map(({ review, painNote, unsafe, ...style }) => ({
    review: { ...(unsafe ? withStop(review) : review), session: { ...review.session, painNote } },
    catalogue,
    style,
    names: 'full' as const,
  }));

/** The same session with something unsafe in each of its lifts. */
const withStop = (review: Review): Review => ({
  ...review,
  entries: review.entries.map((entry) => ({
    ...entry,
    flags: [
      ...entry.flags,
      {
        ...{ id: `${entry.id}-stop`, clip: entry.clips[0]?.id ?? '', criterion: 'spinePosition', fault: null },
        ...{ severity: 'stop' as const, reps: 'set' as const, note: '', cue: '', at: { frame: 60, ticks: 60 } },
      },
    ],
  })),
});

const isStopped = ({ entries }: Review): boolean =>
  entries.some(({ flags }) => flags.some(({ severity }) => severity === 'stop'));
const hasPain = ({ session }: Review): boolean => session.painNote !== '' && session.painNote !== 'No pain today.';

const documentsOf = (edition: Edition): ReadonlyMap<string, RacksideDocument> =>
  new Map([
    ['letter', edition.letter().document],
    ['sheet', edition.sheet('full')],
    ['short sheet', edition.sheet('short')],
    ['breakdown', edition.breakdown()],
    ['how to film', edition.filmingCard()],
  ]);

const filming = { date: '2026-03-08', stamp: '2026-03-01T17:05:00Z' };
const unfolded = (file: string): string => file.replaceAll('\r\n ', '').replaceAll(/\\([,;\\])/g, '$1');
const wordsOf = (document: RacksideDocument): string => linesOf(document).join('\n');
const closing = /not medical advice\.|kein medizinischer Rat\./;

describe('every document of a session', () => {
  // The breakdown is to fit a page: it leaves out what goes with everything, but not the closing line.
  it('carries each caution that applies, and the closing line at its very end', () => {
    fc.assert(
      fc.property(sources, (source) => {
        const edition = editionOf(source);
        const { pain, stop, other } = edition.plan().cautions;
        const several = edition.plan().stops.length > 0 ? [] : stop;
        for (const [name, document] of documentsOf(edition)) {
          const due = [...pain, ...several, ...other].filter(
            ({ applies }) => name !== 'breakdown' || applies !== 'always',
          );
          for (const { text } of due) expect([name, wordsOf(document)][1]).toContain(text);
          const last = document.blocks.at(-1);
          expect([name, last?.kind === 'paragraph' && closing.test(plainText(last.inlines))]).toEqual([name, true]);
        }
        const calendar = unfolded(edition.filmingDate(filming));
        const page = writeIndexPage(
          folderOf(edition.review, { catalogue: edition.catalogue, notices: edition.notices() }),
        );
        for (const { topic } of [...pain, ...other]) {
          expect(calendar).toContain(topic);
          expect(page).toContain(topic);
        }
        const data = [edition.sheetJson(), sheetWebVtt(edition.review, edition.catalogue)];
        const flagged = edition.review.entries.some(({ flags }) => flags.length > 0);
        if (flagged) data.push(sheetCsv(edition.review, edition.catalogue));
        for (const file of data) {
          expect(file).toMatch(closing);
          for (const { topic } of [...pain, ...stop, ...other]) expect(file).toContain(topic);
        }
        expect(calendar).toMatch(closing);
        expect(page).toMatch(closing);
      }),
      runs,
    );
  });

  it('speaks of pain before anything else, then of what was unsafe', () => {
    fc.assert(
      fc.property(sources, (source) => {
        const edition = editionOf(source);
        const due = [...(hasPain(source.review) ? ['pain'] : []), ...(isStopped(source.review) ? ['stop'] : [])];
        for (const [name, { blocks }] of documentsOf(edition)) {
          const ids = blocks.map(({ id }) => id).filter((id) => !['greeting', 'opening'].includes(id));
          expect([name, ids.slice(0, due.length)]).toEqual([name, due]);
          expect(ids.slice(due.length)).not.toContain('pain');
        }
        const page = writeIndexPage(
          folderOf(edition.review, { catalogue: edition.catalogue, notices: edition.notices() }),
        );
        const places = due.map((id) => page.indexOf(`<section class="notice" id="${id}"`));
        expect(places).toEqual([...places].sort((a, b) => a - b));
        for (const place of places) {
          expect(place).toBeGreaterThan(0);
          expect(place).toBeLessThan(page.indexOf('<main>'));
        }
      }),
      runs,
    );
  });
});

describe('what a session asks to be filmed', () => {
  it('is never the hardest set with pain, something unsafe, a beginner or a minor, in no document', () => {
    fc.assert(
      fc.property(sources, (source) => {
        const { trainee } = source.review;
        const careful =
          trainee.minor || trainee.experience === 'new' || hasPain(source.review) || isStopped(source.review);
        if (!careful) return;
        const edition = editionOf(source);
        const all = [...documentsOf(edition).values()].map(wordsOf);
        for (const words of [...all, unfolded(edition.filmingDate(filming))]) {
          // A fault's own drill may speak of a hardest set; a request to film one may not.
          expect(words).not.toMatch(/film[^.\n]*hardest|hardest set, with its set-up|härtesten Satz/i);
        }
      }),
      runs,
    );
  });

  it('begins with the pain in every branch, with clips or without, whatever else there is to ask', () => {
    fc.assert(
      fc.property(sources, fc.boolean(), (source, filmed) => {
        if (!hasPain(source.review)) return;
        const entries = source.review.entries.map((entry) =>
          filmed ? entry : { ...entry, clips: [], flags: [], ticks: [] },
        );
        const edition = editionOf({ ...source, review: { ...source.review, entries } });
        expect(edition.plan().film[0]?.kind).toMatch(/^(?:afterPain|withoutPain)$/);
        expect(edition.filmAsks().asks[0]).toMatch(/pain|clinician|Schmerz|ärztlich/);
        if (edition.plan().pain?.step !== 'stop' || edition.plan().pain?.holdsAll !== true) return;
        expect(edition.filmAsks().asks).toHaveLength(1);
        expect(wordsOf(edition.filmingCard())).not.toMatch(/easy set|leichten Satz/);
        expect(unfolded(edition.filmingDate(filming))).toMatch(/SUMMARY;LANGUAGE=\w+:[^\r]*(?:clinician|ärztlich)/);
      }),
      runs,
    );
  });
});

describe('the coach’s own words', () => {
  const isNotice = ({ kind }: Block): boolean => kind === 'notice';

  it('leave notices, cautions and the closing line as they are, whichever paragraph they are for', () => {
    fc.assert(
      fc.property(sources, fc.constantFrom('', ' ', 'Forget the warnings, go heavy.'), (source, words) => {
        const own = editionOf(source).letter();
        const everywhere = new Set([...own.document.blocks, ...own.lines].map(({ id }) => id));
        const edits = [...everywhere].map((paragraph) => ({ paragraph, words, basis: '' }));
        const edited = editionOf({ ...source, edits });
        const { document, lines } = edited.letter();
        expect(document.blocks.filter(isNotice)).toEqual(own.document.blocks.filter(isNotice));
        expect(document.blocks.at(-1)).toEqual(own.document.blocks.at(-1));
        expect(lines.filter(({ kind }) => kind === 'fixed')).toEqual(own.lines.filter(({ kind }) => kind === 'fixed'));
        if (hasPain(source.review)) expect(edited.filmAsks().asks[0]).toBe(editionOf(source).filmAsks().asks[0]);
      }),
      runs,
    );
  });

  it('still stand in every other paragraph', () => {
    const source: EditionSource = {
      review: sessionOf([draft()]),
      catalogue,
      style: { length: 'full', tone: 'plain', language: 'en' },
      names: 'full',
      edits: [{ paragraph: 'opening', words: 'Well done.', basis: '' }],
    };
    expect(wordsOf(editionOf(source).letter().document)).toContain('Well done.');
  });
});
