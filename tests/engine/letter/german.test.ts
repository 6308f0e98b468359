import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { toHtml } from '../../../engine/document/toHtml.ts';
import { toMarkdown } from '../../../engine/document/toMarkdown.ts';
import { toText } from '../../../engine/document/toText.ts';
import { translated } from '../../../engine/exercises/catalogue.ts';
import { gradeSession } from '../../../engine/grading/gradeSession.ts';
import { letterDocument, tones } from '../../../engine/letter/letter.ts';
import { planLetter } from '../../../engine/letter/planLetter.ts';
import { writeLetter } from '../../../engine/letter/writeLetter.ts';
import type { Review } from '../../../engine/review/review.ts';
import { writeSheet } from '../../../engine/sheet/writeSheet.ts';
import { letter } from '../../../engine/wording/english/letter.ts';
import { draft, catalogue as english, linesOf, sessionOf, sessions } from './sample.ts';

const catalogue = translated(english, 'de');
const runs = { numRuns: 100 };
const lengths = fc.constantFrom('full' as const, 'short' as const);

const planOf = (review: Review) => planLetter(review, gradeSession(review, catalogue), catalogue);
const letterOf = (review: Review, length: 'full' | 'short' = 'full', tone: (typeof tones)[number] = 'plain') =>
  letterDocument(writeLetter(planOf(review), { length, tone, language: 'de' }));
const sheetOf = (review: Review) => writeSheet(review, gradeSession(review, catalogue), catalogue);

/** What the generated sessions hold in English or as a hostile note would, and the names of papers. */
const typed = /Slower here\.?|strong|My knee hurts a little\.|=SUM\(A1\)|\{count\}|Löwe <b>&|a{300}/g;
const citation = /\([^()]*\d{4}[^()]*(\([^()]*\)[^()]*)?\)/g;
const names = english.exercises.map(({ name }) => `${name}, set 1`).sort((a, b) => b.length - a.length);

function ownWords(line: string): string {
  return names.reduce((words, name) => words.replaceAll(name, ''), line.replace(typed, '').replace(citation, ''));
}

const englishWords =
  /\b(the|and|of|with|is|are|every|your|reps?|sets?|which|from|to|than|it|its|not|one|two|for|by|there|what|grade)\b/;

/** The sentences of the English wording, without what is filled in. */
const englishPieces = Object.values(letter.coach)
  .flatMap((pattern) => pattern.split(/\{\w+(?:, \w+,)?|[{}#]/))
  .map((piece) => piece.trim())
  .filter((piece) => piece.split(' ').length > 2);

describe('every German letter', () => {
  it('greets in German, says where it comes from and has a German date', () => {
    fc.assert(
      fc.property(sessions, (review) => {
        const lines = linesOf(letterOf(review));
        expect(lines[0]).toMatch(review.voice === 'coach' ? /^Hallo Alva,$/ : /^Notizen an mich, Alva:$/);
        expect(lines.at(-1)).toContain('kein medizinischer Rat');
        expect(lines.at(-1)).toContain('1. März 2026');
      }),
      runs,
    );
  });

  it('leaves nothing unresolved, empty, doubled or in English, in any length and tone', () => {
    fc.assert(
      fc.property(sessions, lengths, fc.constantFrom(...tones), (review, length, tone) => {
        const document = letterOf(review, length, tone);
        for (const line of [document.title, ...linesOf(document)].map(ownWords)) {
          expect(line).not.toMatch(/undefined|NaN|\{\w+\}/);
          expect(line).not.toMatch(englishWords);
          for (const piece of englishPieces) expect(line).not.toContain(piece);
        }
        for (const block of document.blocks.filter(({ kind }) => kind === 'paragraph')) {
          const [line = ''] = linesOf({ ...document, blocks: [block] });
          expect(line.trim()).not.toBe('');
          expect(line).not.toMatch(/\.\.|\s{2}| \./);
        }
        const prose = document.blocks.filter(({ kind }) => kind === 'paragraph' || kind === 'notice');
        const sentences = linesOf({ ...document, blocks: prose }).flatMap((line) => line.split(/(?<=[.!?])\s+/));
        // Two generated notes may be the same; a sentence of ours must not follow itself.
        for (const [index, sentence] of sentences.entries()) {
          const isOurs = sentence.search(typed) < 0;
          if (isOurs && sentence.split(' ').length > 4) expect(sentence).not.toBe(sentences[index + 1]);
        }
      }),
      runs,
    );
  });

  it('writes numbers with a comma', () => {
    fc.assert(
      fc.property(sessions, (review) => {
        for (const line of [...linesOf(letterOf(review)), ...linesOf(sheetOf(review))].map(ownWords)) {
          expect(line).not.toMatch(/\d\.\d/);
        }
      }),
      runs,
    );
  });

  it('says what the English one says: the same grade, priorities, moments and cautions', () => {
    fc.assert(
      fc.property(sessions, (review) => {
        const [german, plain] = [planOf(review), planLetter(review, gradeSession(review, english), english)];
        const keyOf = (plan: typeof german) => ({
          score: plan.overall.state.kind === 'none' ? null : plan.overall.state.mark,
          priorities: plan.priorities.map(({ criterion, fault, gain }) => [criterion, fault?.id, gain]),
          cautions: Object.values(plan.cautions).map((all) => all.map(({ id }) => id)),
          film: plan.film.map(({ kind }) => kind),
        });
        expect(keyOf(german)).toEqual(keyOf(plain));
        const ids = (language: 'en' | 'de') =>
          letterDocument(
            writeLetter(language === 'de' ? german : plain, { length: 'full', tone: 'plain', language }),
          ).blocks.map(({ id }) => id);
        expect(ids('de')).toEqual(ids('en'));
      }),
      runs,
    );
  });

  it('defers to a licensed clinician where pain was noted', () => {
    fc.assert(
      fc.property(sessions, lengths, (review, length) => {
        if (review.session.painNote === '') return;
        expect(linesOf(letterOf(review, length)).join('\n')).toMatch(/ärztlich oder physiotherapeutisch/);
      }),
      runs,
    );
  });

  it('is the same text for the same review, and says its language', () => {
    fc.assert(
      fc.property(sessions, (review) => {
        for (const write of [toHtml, toMarkdown, toText]) {
          expect(write(letterOf(structuredClone(review)))).toBe(write(letterOf(review)));
          expect(write(sheetOf(structuredClone(review)))).toBe(write(sheetOf(review)));
        }
        expect(toHtml(letterOf(review))).toContain('<html lang="de">');
        expect(toHtml(sheetOf(review))).toContain('<html lang="de">');
      }),
      { numRuns: 30 },
    );
  });
});

describe('every German sheet', () => {
  it('leaves nothing unresolved or in English', () => {
    fc.assert(
      fc.property(sessions, (review) => {
        const document = sheetOf(review);
        for (const line of [document.title, ...linesOf(document)].map(ownWords)) {
          expect(line).not.toMatch(/undefined|NaN|\{\w+\}/);
          expect(line).not.toMatch(englishWords);
        }
      }),
      runs,
    );
  });
});

describe('German forms, worked by hand', () => {
  const flags = [{ criterion: 'depth', severity: 'correct' as const, fault: 'shortOfDepth', reps: [1] }];
  const lines = linesOf(letterOf(sessionOf([draft({ reps: 5, flags })]))).join('\n');

  it('counts one and many', () => {
    expect(lines).toContain('mit 1 Clip und 5 Wiederholungen im Video');
    expect(lines).toContain('Wiederholung 1 von 5');
    expect(linesOf(letterOf(sessionOf([draft({ reps: 1, flags })]))).join('\n')).toContain(
      'und 1 Wiederholung im Video',
    );
  });

  it('writes a grade and its gain the German way', () => {
    // Depth: one rep in five at 40 gives 88; mean 97, 0.75 × 97 + 0.25 × 88 = 94.75; without it 100. Session 0.8 × that + 20.
    expect(lines).toContain('(95,8 von 100)');
    expect(lines).toContain('4,2 Punkte mehr');
  });
});
