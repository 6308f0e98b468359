import { describe, expect, it } from 'vitest';
import type { Entry } from '../../../engine/review/index.ts';
import { sheetWebVtt } from '../../../engine/sheet/index.ts';
import { catalogue, draft, sessionOf } from '../letter/sample.ts';

/** One remark at a moment of a clip of three seconds. */
function remarkAt(seconds: number, facts: 'with facts' | 'without facts' = 'with facts'): Entry {
  const entry = draft({ flags: [{ criterion: 'depth', weight: 'adjust', reps: [1] }] });
  return {
    ...entry,
    clips: entry.clips.map(({ facts: known, ...clip }) =>
      facts === 'without facts' || known === undefined ? clip : { ...clip, facts: { ...known, durationUs: 3_000_000 } },
    ),
    flags: entry.flags.map((flag) => ({ ...flag, at: { seconds } })),
  };
}

const timingOf = (entry: Entry): string | undefined =>
  sheetWebVtt(sessionOf([entry]), catalogue)
    .split('\n')
    .find((line) => line.includes('-->'));

// How long a note must stay to be read: common practice, no source.
describe('when a timed note shows', () => {
  it('starts earlier near the end of the clip, so that it can be read before the clip is over', () => {
    expect(timingOf(remarkAt(2.9))).toBe('00:00:00.500 --> 00:00:03.000');
  });

  it('starts at its moment where the length of the clip is not known', () => {
    expect(timingOf(remarkAt(2.9, 'without facts'))).toMatch(/^00:00:02\.900 -->/);
  });

  it('goes when the next one comes, and not before it was readable', () => {
    const note = 'a note that takes long to read, '.repeat(6);
    const entry = draft({ flags: [0, 1].map(() => ({ criterion: 'depth', weight: 'adjust', reps: [1], note })) });
    const at = (seconds: number) => ({
      ...entry,
      flags: entry.flags.map((flag, index) => ({ ...flag, at: { seconds: index === 0 ? 5 : seconds } })),
    });
    expect(timingOf(at(9))).toBe('00:00:05.000 --> 00:00:09.000');
    expect(timingOf(at(5.2))).toBe('00:00:05.000 --> 00:00:07.500');
  });

  it('is left out, and counted, where only a frame is known and the clip’s time base is not', () => {
    const entry = draft({ flags: [{ criterion: 'depth', weight: 'adjust', reps: [1] }] });
    const blind = { ...entry, clips: entry.clips.map(({ facts: _facts, ...clip }) => clip) };
    const file = sheetWebVtt(sessionOf([blind]), catalogue);
    expect(file).not.toContain('-->');
    expect(file).toContain('time base of their clip is not known: 1.');
  });
});

describe('what a timed note says', () => {
  it('is the rep, the criterion and the weight, then what was seen, the coach’s words and the cue', () => {
    const flag = {
      criterion: 'depth',
      fault: 'shortOfDepth',
      weight: 'correct' as const,
      reps: [2],
      note: 'High here',
    };
    const [, , cue = ''] = sheetWebVtt(sessionOf([draft({ flags: [flag] })]), catalogue).split('\n\n');
    const fault = catalogue.exercises
      .find(({ id }) => id === 'back-squat')
      ?.faults.find(({ id }) => id === 'shortOfDepth');
    expect(cue.split('\n').slice(2)).toEqual([
      'Rep 2 · Depth · correct |||',
      `Seen: ${fault?.seen}.`,
      'High here.',
      `Cue: ${fault?.cue.outcome}.`,
      ...(cue.endsWith('\n') ? [''] : []),
    ]);
  });

  it('leaves out what there is none of', () => {
    const praise = { criterion: 'depth', weight: 'keep' as const, reps: 'set' as const, note: 'Calm.' };
    const [, , cue = ''] = sheetWebVtt(sessionOf([draft({ flags: [praise] })]), catalogue).split('\n\n');
    expect(cue.trimEnd().split('\n').slice(2)).toEqual(['Whole set · Depth · keep +', 'Calm.']);
  });
});
