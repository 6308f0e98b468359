import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { applyEdits } from '../../../engine/letter/edits.ts';
import { letterDocument } from '../../../engine/letter/letter.ts';
import { writeLetter } from '../../../engine/letter/writeLetter.ts';
import type { Review } from '../../../engine/review/review.ts';
import { catalogue, draft, letterOf, planOf, sessionOf, sessions } from './sample.ts';

const short = { severity: 'correct', criterion: 'depth', fault: 'shortOfDepth' } as const;
const all = [1, 2, 3, 4, 5];

const faultOf = (exercise: string, fault: string) =>
  catalogue.exercises.find(({ id }) => id === exercise)?.faults.find(({ id }) => id === fault);

const edited = (review: Review, paragraph: string) =>
  applyEdits(writeLetter(planOf(review)), [
    { paragraph, words: 'In my words.', basis: 'what it said then' },
  ]).lines.find((line) => line.edited);

/** Squat and bench press share the fault's id and say it in other words: one theme. */
const both = (squat: readonly number[], press: readonly number[]) =>
  sessionOf([
    draft({ exercise: 'back-squat', flags: squat.map((rep) => ({ ...short, reps: [rep] })) }),
    draft({ exercise: 'bench-press', flags: press.map((rep) => ({ ...short, reps: [rep] })) }),
  ]);

const seenIds = (review: Review): string[] =>
  letterOf(review)
    .blocks.filter(({ id }) => id.endsWith('-seen'))
    .map(({ id }) => id);

describe('the ids of a letter’s paragraphs', () => {
  it('stay with their theme when another exercise comes to show it too', () => {
    const [ofSquat = ''] = seenIds(both([1], []));
    expect(seenIds(both([1], all))).toEqual([ofSquat]);
    expect(edited(both([1], all), ofSquat)?.stale).toBe(true);
  });

  it('stay with their fault when another comes to stand before it', () => {
    const drift = { severity: 'adjust' as const, criterion: 'barPath', fault: 'barDriftsForward', reps: [1] };
    const [ofDrift = ''] = seenIds(sessionOf([draft({ flags: [drift] })]));
    const second = sessionOf([draft({ flags: [drift, ...all.map((rep) => ({ ...short, reps: [rep] }))] })]);
    expect(seenIds(second).indexOf(ofDrift)).toBe(1);
    expect(edited(second, ofDrift)?.own).toContain(faultOf('back-squat', 'barDriftsForward')?.seen);
  });

  it('wait when their fault is gone, rather than stand for another', () => {
    const [ofSquat = ''] = seenIds(both([1], []));
    const edits = [{ paragraph: ofSquat, words: 'In my words.', basis: '' }];
    const other = sessionOf([
      draft({ flags: [{ severity: 'adjust', criterion: 'barPath', fault: 'barDriftsForward', reps: [1] }] }),
    ]);
    const { waiting, lines } = applyEdits(writeLetter(planOf(other)), edits);
    expect(waiting).toEqual(edits);
    expect(lines.filter((line) => line.edited)).toEqual([]);
  });

  it('stay with what was praised when other praise comes before it', () => {
    const praise = (criterion: string, note: string) => ({ severity: 'keep' as const, criterion, note, reps: all });
    const one = sessionOf([draft({ flags: [praise('tempo', 'Slow and even.')], ticks: [] })]);
    const id = letterOf(one).blocks.find((block) => block.id.startsWith('keep-'))?.id ?? '';
    const two = sessionOf([
      draft({ flags: [praise('depth', 'Full depth.'), praise('tempo', 'Slow and even.')], ticks: [] }),
    ]);
    expect(edited(two, id)?.own).toContain('Slow and even.');
  });

  it('are the same in a short letter, in another tone and in German', () => {
    const plan = planOf(both(all, all));
    const full = letterDocument(writeLetter(plan)).blocks.map(({ id }) => id);
    for (const style of [
      { length: 'short', tone: 'plain', language: 'en' },
      { length: 'full', tone: 'warm', language: 'en' },
      { length: 'full', tone: 'direct', language: 'de' },
    ] as const) {
      expect(full).toEqual(expect.arrayContaining(letterDocument(writeLetter(plan, style)).blocks.map(({ id }) => id)));
    }
  });

  it('are there once each, and short enough to be kept, in every letter', () => {
    fc.assert(
      fc.property(sessions, (review) => {
        const ids = letterOf(review).blocks.map(({ id }) => id);
        expect(new Set(ids).size).toBe(ids.length);
        for (const id of ids) expect(id).toMatch(/^[\w.-]{1,80}$/);
      }),
      { numRuns: 120 },
    );
  });
});
