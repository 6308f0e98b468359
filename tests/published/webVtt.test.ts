import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { translated } from '../../engine/exercises/catalogue.ts';
import { repChapters, sheetWebVtt } from '../../engine/notes/noteFiles.ts';
import { catalogue, draft, sessionOf, sessions } from '../engine/letter/sample.ts';
import { core, hostileWords, sessionWithNotes } from '../engine/sheet/hostileWords.ts';
import { readWebVtt, webVttTimestamp } from './readWebVtt.ts';

describe('the stamps this test accepts (W3C WebVTT)', () => {
  it.each(['00:00.000', '59:59.999', '01:00:00.000', '100:00:00.000'])('%s is valid', (stamp) => {
    expect(stamp).toMatch(webVttTimestamp);
  });
  it.each(['60:00.000', '1:00:00.000', '00:60.000', '00:00,000', '00:00.00', '00:00.0000'])('%s is not', (stamp) => {
    expect(stamp).not.toMatch(webVttTimestamp);
  });
});

describe('the notes as WebVTT', () => {
  it('keep the grammar for any session: rising starts, ends after starts, own ids', () => {
    fc.assert(
      fc.property(sessions, (review) => {
        const cues = readWebVtt(sheetWebVtt(review, catalogue));
        expect(new Set(cues.map(({ id }) => id)).size).toBe(cues.length);
        for (const [index, cue] of cues.entries()) {
          expect(cue.endS).toBeGreaterThan(cue.startS);
          expect(cue.startS).toBeGreaterThanOrEqual(cues[index - 1]?.startS ?? 0);
          expect(cue.endS).toBeLessThanOrEqual(30);
          expect(cue.lines).not.toContain('');
        }
        // Each clip plays alone, and there no note hides another.
        for (const { id: clipId } of review.entries.flatMap(({ clips }) => clips)) {
          const own = readWebVtt(sheetWebVtt(review, catalogue, { clipId }));
          for (const [index, cue] of own.entries()) {
            expect(cue.startS).toBeGreaterThanOrEqual(own[index - 1]?.endS ?? 0);
          }
        }
      }),
      { numRuns: 100 },
    );
  });

  it('give any words back, in their order, whatever the words are', () => {
    fc.assert(
      fc.property(fc.array(hostileWords, { maxLength: 6 }), (notes) => {
        const cues = readWebVtt(sheetWebVtt(sessionWithNotes(notes), catalogue));
        const all = core(cues.flatMap(({ lines }) => lines).join(' '));
        let from = 0;
        for (const note of notes) {
          const at = all.indexOf(core(note), from);
          expect(at).toBeGreaterThanOrEqual(from);
          from = at + core(note).length;
        }
      }),
      { numRuns: 150 },
    );
  });

  it('escape what the grammar reserves', () => {
    const file = sheetWebVtt(sessionWithNotes(['a --> b\n\n<i>&']), catalogue);
    expect(file).toContain('a --&gt; b &lt;i&gt;&amp;');
  });

  it.each(['1--->2', 'a ----> b', '-->', '--->-->'])('hold no arrow in their comment for a clip named %s', (name) => {
    const review = sessionWithNotes(['Calm.']);
    const entries = review.entries.map((entry) => ({
      ...entry,
      clips: entry.clips.map((clip) => ({ ...clip, name })),
    }));
    expect(readWebVtt(sheetWebVtt({ ...review, entries }, catalogue))).not.toHaveLength(0);
    expect(readWebVtt(repChapters({ ...review, entries }, catalogue, { clipId: 'back-squat-clip' }))).not.toHaveLength(
      0,
    );
  });

  it('begin at the true moment of the flag: frame 40 of 30 a second', () => {
    const [cue] = readWebVtt(sheetWebVtt(sessionWithNotes(['']), catalogue));
    expect(cue?.startS).toBeCloseTo(40 / 30, 3);
  });

  it('of one clip hold that clip alone; of several, each names its own', () => {
    const review = sessionOf([
      draft({ flags: [{ criterion: 'depth', severity: 'adjust', reps: [1] }] }),
      draft({ exercise: 'romanian-deadlift', flags: [{ criterion: 'depth', severity: 'adjust', reps: [1] }] }),
    ]);
    expect(readWebVtt(sheetWebVtt(review, catalogue, { clipId: 'back-squat-clip' }))).toHaveLength(1);
    for (const { lines } of readWebVtt(sheetWebVtt(review, catalogue))) expect(lines.join(' ')).toMatch(/, set 1/);
  });

  it('say their language after the name of the format, the one place the grammar has for it', () => {
    expect(sheetWebVtt(sessionOf([]), translated(catalogue, 'de'))).toMatch(/^WEBVTT Language: de\n\n/);
  });

  it('of a session without flags are a file without cues', () => {
    expect(readWebVtt(sheetWebVtt(sessionOf([draft()]), catalogue))).toEqual([]);
    expect(readWebVtt(sheetWebVtt(sessionOf([]), catalogue))).toEqual([]);
  });
});

describe('the reps as chapters (W3C WebVTT, "WebVTT chapters": one line each, none over another)', () => {
  it('follow one another for any session', () => {
    fc.assert(
      fc.property(sessions, (review) => {
        for (const clip of review.entries.flatMap((entry) => entry.clips)) {
          const cues = readWebVtt(repChapters(review, catalogue, { clipId: clip.id }));
          expect(cues.map(({ lines }) => lines)).toEqual(clip.reps.map(({ index }) => [`Rep ${index}`]));
          for (const [index, { startS, endS }] of cues.entries()) {
            expect(endS).toBeGreaterThan(startS);
            expect(startS).toBeGreaterThanOrEqual(cues[index - 1]?.endS ?? 0);
          }
        }
      }),
      { numRuns: 60 },
    );
  });
});
