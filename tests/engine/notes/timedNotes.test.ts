import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { translated } from '../../../engine/exercises/catalogue.ts';
import type { Cue } from '../../../engine/notes/layNotes.ts';
import { repChapters, sheetWebVtt } from '../../../engine/notes/noteFiles.ts';
import { timedNotes } from '../../../engine/notes/timedNotes.ts';
import type { Entry, Flag, Review } from '../../../engine/review/review.ts';
import { catalogue, draft, sessionOf } from '../letter/sample.ts';
import { core, hostileWords, sessionWithNotes } from '../sheet/hostileWords.ts';

type Remark = { readonly seconds: number; readonly note?: string };

/** Remarks on one clip; `clipS` null = its length is not known. */
function session(remarks: readonly Remark[], clipS: number | null): Review {
  const entry = draft({
    flags: remarks.map(({ note = '' }) => ({ criterion: 'depth', severity: 'adjust', reps: [1], note })),
  });
  const at = (index: number): Flag['at'] => ({ seconds: remarks[index]?.seconds ?? 0 });
  return sessionOf([
    {
      ...entry,
      clips: entry.clips.map(({ facts, ...clip }) =>
        clipS === null || facts === undefined ? clip : { ...clip, facts: { ...facts, durationUs: clipS * 1e6 } },
      ),
      flags: entry.flags.map((flag, index) => ({ ...flag, at: at(index) })),
    },
  ]);
}

const cuesOf = (review: Review): readonly Cue[] => timedNotes(review, catalogue, {}).cues;

const characters = new Intl.Segmenter('en', { granularity: 'grapheme' });
const lengthOf = (line: string): number => [...characters.segment(line.replace(/[\u2068\u2069]/g, ''))].length;

const remarks = fc.array(
  fc.record({ seconds: fc.integer({ min: 0, max: 30_000 }).map((ms) => ms / 1000), note: hostileWords }),
  { maxLength: 12 },
);

// Characters a line, lines a cue, seconds and characters a second: common practice of subtitling, from memory.
describe('timed notes', () => {
  it('never have lines of more than 42 characters, and hide nothing: one is over before the next begins', () => {
    fc.assert(
      fc.property(remarks, fc.constantFrom(null, 0.4, 3, 14, 30, 600), (all, clipS) => {
        const cues = cuesOf(session(all, clipS));
        for (const [index, { startMs, endMs, lines }] of cues.entries()) {
          for (const line of lines) expect(lengthOf(line)).toBeLessThanOrEqual(42);
          expect(startMs).toBeGreaterThanOrEqual(cues[index - 1]?.endMs ?? 0);
          expect(endMs).toBeGreaterThan(startMs);
          if (clipS !== null) expect(endMs).toBeLessThanOrEqual(clipS * 1000);
          if (clipS !== 0.4) expect(endMs - startMs).toBeGreaterThanOrEqual(1500);
          expect(endMs - startMs).toBeLessThanOrEqual(7000);
        }
      }),
      { numRuns: 150 },
    );
  });

  it('have at most two lines, are read at 17 characters a second or slower, and wait for their moment, where there is room', () => {
    fc.assert(
      fc.property(remarks, fc.constantFrom(null, 10_000), (all, clipS) => {
        const review = session(all, clipS);
        const cues = cuesOf(review);
        for (const { startMs, endMs, lines } of cues) {
          expect(lines.length).toBeLessThanOrEqual(2);
          const length = lines.reduce((sum, line) => sum + lengthOf(line), 0);
          expect((length * 1000) / (endMs - startMs)).toBeLessThanOrEqual(17);
        }
        for (const { id, at } of review.entries.flatMap(({ flags }) => flags)) {
          const first = cues.find((cue) => cue.id === `note-${id}-1`);
          expect((first?.startMs ?? 0) / 1000).toBeGreaterThanOrEqual('seconds' in at ? at.seconds : 0);
        }
      }),
      { numRuns: 100 },
    );
  });

  it('keep all words and their order, however little room the clip has', () => {
    fc.assert(
      fc.property(remarks, fc.constantFrom(0.4, 3, 14), (all, clipS) => {
        const shown = core(
          cuesOf(session(all, clipS))
            .flatMap(({ lines }) => lines)
            .join(''),
        );
        let from = 0;
        for (const { note } of all.toSorted((a, b) => a.seconds - b.seconds)) {
          const at = shown.indexOf(core(note), from);
          expect(at).toBeGreaterThanOrEqual(from);
          from = at + core(note).length;
        }
      }),
      { numRuns: 100 },
    );
  });

  it('go on in further cues where a note is long: 300 characters are eight lines, in five cues with the head', () => {
    const note = Array.from({ length: 60 }, () => 'word').join(' ');
    const cues = cuesOf(session([{ seconds: 2, note }], 600));
    // Eight words of four letters and their spaces are 39 characters, nine would be 44: 60 words are 8 lines.
    expect(cues.map(({ lines }) => lines.length)).toEqual([2, 2, 2, 2, 1]);
    expect(cues.map(({ id }) => id)).toEqual([1, 2, 3, 4, 5].map((page) => `note-back-squat-0-${page}`));
    expect(cues.slice(1).map(({ startMs }) => startMs)).toEqual(cues.slice(0, -1).map(({ endMs }) => endMs));
  });

  it('cut a word that is longer than a line', () => {
    const [, second] = cuesOf(session([{ seconds: 2, note: 'x'.repeat(100) }], 600));
    expect(second?.lines).toEqual(['x'.repeat(42), `${'x'.repeat(16)}.`]);
  });

  it('follow one another where flags share a moment, all at the pace at which they can be read', () => {
    const cues = cuesOf(
      session(
        [1, 1, 1].map((seconds) => ({ seconds })),
        30,
      ),
    );
    expect(cues.map(({ id }) => id)).toEqual(['note-back-squat-0-1', 'note-back-squat-1-1', 'note-back-squat-2-1']);
    expect(cues[0]?.startMs).toBe(1000);
  });

  it('come earlier at the end of the clip, by three seconds at most, so that they can be read before it is over', () => {
    const [cue, ...more] = cuesOf(session([{ seconds: 29.5 }], 30));
    expect(more).toEqual([]);
    expect(cue).toMatchObject({ startMs: 28_500, endMs: 30_000 });
    const long = cuesOf(session([{ seconds: 29.5, note: 'Lower it slower. '.repeat(20) }], 30));
    expect(long[0]?.startMs).toBeGreaterThanOrEqual(26_500);
    expect(long.at(-1)?.endMs).toBe(30_000);
  });

  it('take more lines, not less time, where the clip has no room for all', () => {
    const cues = cuesOf(
      session(
        [1, 2, 3, 4, 5, 6].map((seconds) => ({ seconds, note: 'Lower it slower. '.repeat(9) })),
        12,
      ),
    );
    expect(cues).toHaveLength(6);
    for (const { startMs, endMs, lines } of cues) {
      expect(endMs - startMs).toBeGreaterThanOrEqual(1500);
      expect(lines.length).toBeGreaterThan(2);
    }
  });

  it('stay sound with 500 flags: on a long clip a cue or more each, on a short one shared', () => {
    const all = Array.from({ length: 500 }, (_, index) => ({ seconds: index / 20, note: `Remark ${index}.` }));
    expect(cuesOf(session(all, 3600))).toHaveLength(500);
    const shared = cuesOf(session(all, 30));
    expect(shared).toHaveLength(20);
    const words = shared.flatMap(({ lines }) => lines).join(' ');
    for (const { note } of all) expect(words).toContain(note);
  });

  it('start at their moment where the length of the clip is not known', () => {
    expect(cuesOf(session([{ seconds: 2.9 }], null))[0]?.startMs).toBe(2900);
  });

  it('are left out, and counted, where only a frame is known and the clip’s time base is not', () => {
    const entry = draft({ flags: [{ criterion: 'depth', severity: 'adjust', reps: [1] }] });
    const blind: Entry = { ...entry, clips: entry.clips.map(({ facts: _facts, ...clip }) => clip) };
    const file = sheetWebVtt(sessionOf([blind]), catalogue);
    expect(file).not.toContain('-->');
    expect(file).toContain('time base of their clip is not known: 1.');
  });

  it('isolate words that run from right to left on each of their lines, so that they turn nothing else round', () => {
    const note = 'انزل ببطء ثم اصعد بسرعة ولا تترك الركبة تميل إلى الداخل في أسفل الحركة';
    const lines = cuesOf(sessionWithNotes([note])).flatMap((cue) => cue.lines);
    const written = lines.filter((line) => /\p{Script=Arabic}/u.test(line));
    expect(written.length).toBeGreaterThan(1);
    for (const line of written) expect(line).toMatch(/^\u2068[^\u2068\u2069]+\u2069\.?$/);
  });
});

describe('notes of a clip whose first frame appears at 2 s', () => {
  /** Of 30 s, so that it ends at 32 s. */
  const late = (review: Review): Review => ({
    ...review,
    entries: review.entries.map((entry) => ({
      ...entry,
      clips: entry.clips.map((clip) => ({
        ...clip,
        ...(clip.facts && { facts: { ...clip.facts, startUs: 2_000_000 } }),
      })),
    })),
  });

  it('stand at their moments to its end', () => {
    const [cue] = cuesOf(late(session([{ seconds: 28.2 }], 30)));
    expect(cue?.startMs).toBe(30_200);
    expect(cue?.endMs).toBeLessThanOrEqual(32_000);
  });

  it('have a last chapter that lasts to its end', () => {
    const chapters = repChapters(late(sessionOf([draft({ reps: 1 })])), catalogue, { clipId: 'back-squat-clip' });
    expect(chapters).toContain('00:00:01.000 --> 00:00:32.000');
  });
});

describe('what a timed note says', () => {
  const words = (review: Review): string[] => cuesOf(review).flatMap(({ lines }) => [...lines]);

  it('is the rep, the criterion and the severity, then what was seen, the coach’s words and the cue', () => {
    const flag = {
      criterion: 'depth',
      fault: 'shortOfDepth',
      severity: 'correct',
      reps: [2],
      note: 'High here',
    } as const;
    const [head, ...body] = words(sessionOf([draft({ flags: [{ ...flag, reps: [...flag.reps] }] })]));
    const fault = catalogue.exercises
      .find(({ id }) => id === 'back-squat')
      ?.faults.find(({ id }) => id === 'shortOfDepth');
    expect(head).toBe('Rep 2 · Depth · correct\u00A0|||');
    expect(body.join(' ')).toBe(`Seen: ${fault?.seen}. High here. Cue: ${fault?.cue.outcome}.`);
    expect(body.at(-1)).toMatch(/^Cue: /);
  });

  it('leaves out what there is none of', () => {
    const praise = { criterion: 'depth', severity: 'keep' as const, reps: 'set' as const, note: 'Calm.' };
    expect(words(sessionOf([draft({ flags: [praise] })]))).toEqual(['Whole set · Depth · keep\u00A0+', 'Calm.']);
  });
});

describe('the chapters of a clip', () => {
  const timings = (review: Review, language: 'en' | 'de' = 'en'): string[][] =>
    repChapters(review, translated(catalogue, language), { clipId: 'back-squat-clip' })
      .split('\n\n')
      .filter((block) => block.includes('-->'))
      .map((block) => block.trim().split('\n').slice(1));

  it('last from a rep’s start to its end, else to the next rep, else to the end of the clip', () => {
    const entry = draft({ reps: 3 });
    const review = sessionOf([
      {
        ...entry,
        clips: entry.clips.map((clip) => ({
          ...clip,
          reps: clip.reps.map((rep) => (rep.index === 2 ? { ...rep, end: { seconds: 7.25 } } : rep)),
        })),
      },
    ]);
    // Reps start at frames 30, 150 and 270 of 30 a second; the clip has 30 seconds.
    expect(timings(review)).toEqual([
      ['00:00:01.000 --> 00:00:05.000', 'Rep 1'],
      ['00:00:05.000 --> 00:00:07.250', 'Rep 2'],
      ['00:00:09.000 --> 00:00:30.000', 'Rep 3'],
    ]);
    expect(timings(review, 'de')[0]?.[1]).toBe('Wiederholung 1');
  });

  it('are none without reps, and for a clip of another session', () => {
    expect(timings(sessionOf([draft({ reps: 0 })]))).toEqual([]);
    expect(timings(sessionOf([]))).toEqual([]);
  });
});
