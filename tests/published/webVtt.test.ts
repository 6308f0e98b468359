import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { sheetWebVtt } from '../../engine/sheet/index.ts';
import { catalogue, draft, sessionOf, sessions } from '../engine/letter/sample.ts';

/** W3C WebVTT, section "WebVTT timestamp". */
const timestamp = /^(?:\d{2,}:)?[0-5]\d:[0-5]\d\.\d{3}$/;

const seconds = (stamp: string): number =>
  stamp
    .split(':')
    .map(Number)
    .reduce((sum, part) => sum * 60 + part, 0);

type Cue = { readonly id: string; readonly startS: number; readonly endS: number; readonly payload: string };

/** Reads a file by the standard's grammar; throws where it is broken. */
function readWebVtt(file: string): Cue[] {
  const [header = '', ...blocks] = file.replaceAll('\r\n', '\n').split(/\n{2,}/);
  expect(header).toMatch(/^WEBVTT(?:[ \t].*)?$/);
  return blocks.flatMap((block) => {
    const lines = block.split('\n').filter((line, index, all) => line !== '' || index < all.length - 1);
    if (lines[0]?.startsWith('NOTE')) {
      expect(block).not.toContain('-->');
      return [];
    }
    const [id = '', timing = '', ...payload] = lines;
    const [start = '', arrow, end = ''] = timing.split(/[ \t]+/);
    expect(id).not.toContain('-->');
    expect(arrow).toBe('-->');
    expect(start).toMatch(timestamp);
    expect(end).toMatch(timestamp);
    return [{ id, startS: seconds(start), endS: seconds(end), payload: payload.join('\n') }];
  });
}

describe('the stamps this test accepts (W3C WebVTT)', () => {
  it.each(['00:00.000', '59:59.999', '01:00:00.000', '100:00:00.000'])('%s is valid', (stamp) => {
    expect(stamp).toMatch(timestamp);
  });
  it.each(['60:00.000', '1:00:00.000', '00:60.000', '00:00,000', '00:00.00', '00:00.0000'])('%s is not', (stamp) => {
    expect(stamp).not.toMatch(timestamp);
  });
});

describe('the notes as WebVTT', () => {
  it('keep the grammar for any session: rising starts, ends after starts, own ids, no arrow in the text', () => {
    fc.assert(
      fc.property(sessions, (review) => {
        const cues = readWebVtt(sheetWebVtt(review, catalogue));
        expect(cues).toHaveLength(review.entries.reduce((sum, { flags }) => sum + flags.length, 0));
        expect(new Set(cues.map(({ id }) => id)).size).toBe(cues.length);
        for (const [index, cue] of cues.entries()) {
          expect(cue.endS).toBeGreaterThan(cue.startS);
          expect(cue.startS).toBeGreaterThanOrEqual(cues[index - 1]?.startS ?? 0);
          expect(cue.endS).toBeLessThanOrEqual(30);
          expect(cue.payload).not.toContain('-->');
          expect(cue.payload.replace(/&(amp|lt|gt);/g, '')).not.toMatch(/[&<>]/);
        }
      }),
      { numRuns: 150 },
    );
  });

  it('escape what the grammar reserves', () => {
    const review = sessionOf([
      draft({ flags: [{ criterion: 'depth', weight: 'adjust', reps: [1], note: 'a --> b\n\n<i>&' }] }),
    ]);
    const [cue] = readWebVtt(sheetWebVtt(review, catalogue));
    expect(cue?.payload).toContain('a --&gt; b');
    expect(cue?.payload).toContain('&lt;i&gt;&amp;');
  });

  it('stay long enough to read: two and a half seconds or more, at the true moment (common practice, no source)', () => {
    const review = sessionOf([draft({ flags: [{ criterion: 'depth', weight: 'keep', reps: [1] }] })]);
    const [cue] = readWebVtt(sheetWebVtt(review, catalogue));
    expect(cue?.startS).toBeCloseTo(40 / 30, 3);
    expect((cue?.endS ?? 0) - (cue?.startS ?? 0)).toBeGreaterThanOrEqual(2.5);
  });

  it('of one clip hold that clip alone; of several, each names its own', () => {
    const review = sessionOf([
      draft({ flags: [{ criterion: 'depth', weight: 'adjust', reps: [1] }] }),
      draft({ exercise: 'romanian-deadlift', flags: [{ criterion: 'depth', weight: 'adjust', reps: [1] }] }),
    ]);
    expect(readWebVtt(sheetWebVtt(review, catalogue, { clipId: 'back-squat-clip' }))).toHaveLength(1);
    for (const { payload } of readWebVtt(sheetWebVtt(review, catalogue))) expect(payload).toMatch(/, set 1/);
  });
});
