import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { toHtml } from '../../../engine/document/toHtml.ts';
import { toMarkdown } from '../../../engine/document/toMarkdown.ts';
import { toText } from '../../../engine/document/toText.ts';
import { letterDocument } from '../../../engine/letter/letter.ts';
import { writeLetter } from '../../../engine/letter/writeLetter.ts';
import { catalogue, letterOf, lettersText, linesOf, planOf, sessions } from './sample.ts';

const runs = { numRuns: 500 };
const lengths = fc.constantFrom('full' as const, 'short' as const);
const tones = fc.constantFrom('plain' as const, 'warm' as const, 'direct' as const);

/** Words that name a condition or promise an outcome: a letter describes film (common practice, no source). */
const forbidden =
  /\b(diagnos\w*|tendin\w*|arthr\w*|hernia\w* disc|slipped disc|impingement|sprain\w*|fractur\w*|inflam\w*|guarantee\w*|cure\w*|heal\w*|will injure)\b/i;

const nameOf = (id: string): string | undefined => catalogue.exercises.find((each) => each.id === id)?.name;

describe('every letter', () => {
  it('greets, says where it comes from, and asks for at most three things', () => {
    fc.assert(
      fc.property(sessions, (review) => {
        const lines = linesOf(letterOf(review));
        expect(lines[0]).toMatch(review.voice === 'coach' ? /^Hello Alva,$/ : /^Notes to myself, Alva:$/);
        expect(lines.join('\n')).toContain('not medical advice');
        expect(planOf(review).priorities.length).toBeLessThanOrEqual(3);
      }),
      runs,
    );
  });

  it('has no empty line, no doubled sentence and nothing unresolved', () => {
    fc.assert(
      fc.property(sessions, (review) => {
        const document = letterOf(review);
        for (const block of document.blocks) {
          if (block.kind !== 'paragraph') continue;
          const [line = ''] = linesOf({ ...document, blocks: [block] });
          expect(line.trim()).not.toBe('');
          expect(line).not.toMatch(/undefined|null|NaN|\{(?!count\})\w+\}|\.\.|\s{2}| \./);
          // The generated notes hold "{count}" themselves, as a hostile note would.
        }
        const prose = document.blocks.filter((block) => block.kind === 'paragraph' || block.kind === 'notice');
        const sentences = linesOf({ ...document, blocks: prose })
          .flatMap((line) => line.split(/(?<=[.!?])\s+/))
          .filter((sentence) => sentence.split(' ').length > 4);
        const paragraphs = document.blocks.filter((block) => block.kind === 'paragraph').map((block) => block.id);
        expect(new Set(paragraphs).size).toBe(paragraphs.length);
        for (const [index, sentence] of sentences.entries()) expect(sentence).not.toBe(sentences[index + 1]);
      }),
      runs,
    );
  });

  it('leaves nothing unresolved in any block, length or tone, and opens and closes isolates in pairs', () => {
    fc.assert(
      fc.property(sessions, lengths, tones, (review, length, tone) => {
        const document = letterDocument(writeLetter(planOf(review), { length, tone, language: 'en' }));
        for (const line of [document.title, ...linesOf(document)]) {
          // The generated notes hold "{count}" themselves, as a hostile note would.
          expect(line).not.toMatch(/undefined|\bnull\b|NaN|\{(?!count\})\w+\}/);
          expect(line.split('\u2068')).toHaveLength(line.split('\u2069').length);
        }
        if (review.session.painNote !== '') expect(linesOf(document).join('\n')).toContain('licensed clinician');
        expect(document.blocks.some(({ id }) => id === 'stop')).toBe(planOf(review).stops.length > 0);
        expect(document.blocks.some(({ id }) => id === 'cautions')).toBe(true);
      }),
      runs,
    );
  });

  it('cautions wherever pain was noted or a stop flag stands, and defers to a clinician', () => {
    fc.assert(
      fc.property(sessions, (review) => {
        const text = lettersText(review);
        if (review.session.painNote !== '') {
          expect(text).toContain('My knee hurts a little.');
          expect(text).toContain('licensed clinician');
        }
        const stopped = review.entries.some((entry) => entry.flags.some(({ severity }) => severity === 'stop'));
        expect(/: stop$/m.test(text)).toBe(stopped);
        const pain = planOf(review).pain?.held.map(({ exerciseId }) => exerciseId) ?? [];
        const unsafe = review.entries.filter(({ flags }) => flags.some(({ severity }) => severity === 'stop'));
        // Of a lift that pain holds back no light sets are asked for: it is left out whole.
        const held = unsafe.some(({ exercise }) => pain.includes(exercise));
        expect(planOf(review).cautions.stop.length > 0).toBe(stopped && !held);
        for (const entry of unsafe.filter(({ exercise }) => !pain.includes(exercise))) {
          const asked = planOf(review).film.filter((request) => request.kind === 'afterStop');
          expect(asked.some(({ exercise }) => exercise === nameOf(entry.exercise))).toBe(true);
        }
        if (stopped && unsafe.length === review.entries.length)
          expect(text).not.toMatch(/hardest set again|same again/);
      }),
      runs,
    );
  });

  it('orders by what is unsafe, then by gain, and leaves what showed in few reps to the sheet', () => {
    fc.assert(
      fc.property(sessions, (review) => {
        const { priorities } = planOf(review);
        for (const [index, one] of priorities.entries()) {
          const before = priorities[index - 1];
          if (before !== undefined && before.severity !== 'stop') {
            expect(one.severity).not.toBe('stop');
            if (!before.urgent) expect(one.urgent).toBe(false);
            // What stands on a faulty set-up comes after it.
            if (!before.urgent && before.criterion !== 'setUp') expect(one.gain).toBeLessThanOrEqual(before.gain);
          }
          expect(one.severity).not.toBe('keep');
          // One clip an exercise here, of at most six reps: a fifth of six is more than one.
          const shares = one.sightings.map(({ reps }) => (reps.kind === 'some' ? reps.reps.length / reps.of : 1));
          if (one.severity !== 'stop' && !one.urgent) expect(Math.max(...shares)).toBeGreaterThanOrEqual(0.2);
        }
        // Everything unsafe is put right, by a new trainee too.
        const safe = priorities.every(({ severity }) => severity !== 'stop');
        if (review.trainee.experience === 'new' && safe) expect(priorities.length).toBeLessThanOrEqual(1);
        if (!safe) expect(priorities.every(({ severity }) => severity === 'stop')).toBe(true);
      }),
      runs,
    );
  });

  it('names no condition and promises nothing', () => {
    fc.assert(
      fc.property(sessions, (review) => {
        for (const line of linesOf(letterOf(review))) expect(line).not.toMatch(forbidden);
      }),
      runs,
    );
  });

  it('points only at moments inside the clip', () => {
    fc.assert(
      fc.property(sessions, (review) => {
        const durations = new Map(
          review.entries.flatMap((entry) => entry.clips.map((clip) => [clip.id, clip.facts?.durationUs ?? 0] as const)),
        );
        const text = JSON.stringify(letterOf(review).blocks);
        for (const [, clip = '', us = ''] of text.matchAll(/"kind":"time","clip":"([^"]+)","us":(\d+)/g)) {
          expect(Number(us)).toBeLessThan(durations.get(clip) ?? 0);
        }
      }),
      runs,
    );
  });

  it('is the same text for the same review, in every text format', () => {
    fc.assert(
      fc.property(sessions, (review) => {
        const copy = structuredClone(review);
        for (const write of [toHtml, toMarkdown, toText]) {
          expect(write(letterOf(copy))).toBe(write(letterOf(review)));
        }
      }),
      { numRuns: 30 },
    );
  });
});
