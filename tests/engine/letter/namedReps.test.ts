import { describe, expect, it } from 'vitest';
import { translatedReview } from '../../../engine/edition/shownReview.ts';
import { translated } from '../../../engine/exercises/catalogue.ts';
import { gradeSession } from '../../../engine/grading/gradeSession.ts';
import { letterDocument } from '../../../engine/letter/letter.ts';
import { planLetter } from '../../../engine/letter/planLetter.ts';
import { writeLetter } from '../../../engine/letter/writeLetter.ts';
import type { Entry, Flag } from '../../../engine/review/review.ts';
import { sayMeasuring } from '../../../engine/wording/sayMeasuring.ts';
import { catalogue, draft, lettersText, linesOf, planOf, sessionOf } from './sample.ts';

const lowersIn = (rep: number, value: number) =>
  ({
    id: 'eccentricTime',
    values: {
      ...{ rep, verb: 'lowers', value, within: 0.2, asked: 'targetBetween', askedFromS: 2, askedToS: 4 },
      ...{ alsoCount: 0, alsoReps: [] },
    },
  }) as const;
const everyLowers = (fromS: number, toS: number) =>
  ({
    id: 'everyEccentric',
    values: {
      ...{ reps: 5, verb: 'lowers', fromS, toS, spread: 'some', within: 0.2 },
      ...{ asked: 'targetBetween', askedFromS: 2, askedToS: 4 },
    },
  }) as const;

type Said = Pick<Flag, 'severity' | 'reps'> & {
  readonly says: ReturnType<typeof lowersIn> | ReturnType<typeof everyLowers>;
  readonly clip?: string;
};

/** Clips of five reps, with measured flags on the way down. */
function measured(exercise: string, clips: readonly string[], said: readonly Said[]): Entry {
  const entry = draft({ exercise, ticks: [] });
  return {
    ...entry,
    clips: clips.flatMap((name) => entry.clips.map((clip) => ({ ...clip, id: `${exercise}-${name}`, name }))),
    flags: said.map(({ says, clip = clips[0] ?? '', ...flag }, at) => ({
      ...{ id: `${exercise}-${at}`, clip: `${exercise}-${clip}`, criterion: 'eccentricTempo', cue: '' },
      ...{ fault: flag.severity === 'keep' ? null : 'quickLowering', at: { frame: 240, ticks: 240 } },
      ...{ note: sayMeasuring(says, 'en'), noteMessage: says },
      ...flag,
    })),
  };
}

const line = (text: string, label: string): string =>
  text.split('\n').find((each) => each.startsWith(`${label} `)) ?? '';

function germanText(entries: readonly Entry[]): string {
  const german = translated(catalogue, 'de');
  const review = translatedReview(sessionOf(entries), german);
  const plan = planLetter(review, gradeSession(review, german), german);
  return linesOf(letterDocument(writeLetter(plan, { length: 'full', tone: 'plain', language: 'de' }))).join('\n');
}

describe('a note that names its reps', () => {
  const one = [measured('back-squat', ['Set 1'], [{ severity: 'adjust', reps: [2], says: lowersIn(2, 1.1) }])];

  it('has its time behind them, and they are said once', () => {
    expect(line(lettersText(sessionOf(one)), 'What I saw.')).toBe(
      'What I saw. Rep 2 (0:08) lowers in 1.1 s ± 0.2 s; the target is 2 to 4 s.',
    );
    expect(line(germanText(one), 'Was ich gesehen habe.')).toBe(
      'Was ich gesehen habe. Wiederholung 2 (0:08): Absenken in 1,1 s ± 0,2 s; Vorgabe: 2 bis 4 s.',
    );
  });

  it('praises every rep once', () => {
    const praise = [
      measured('back-squat', ['Set 1'], [{ severity: 'keep', reps: [1, 2, 3, 4, 5], says: everyLowers(2.4, 3.1) }]),
    ];
    expect(line(lettersText(sessionOf(praise)), 'Eccentric tempo.')).toBe(
      'Eccentric tempo. Every rep (0:08) lowers in 2.4 to 3.1 s ± 0.2 s; the target is 2 to 4 s.',
    );
    expect(line(germanText(praise), 'Tempo beim Absenken.')).toMatch(
      / Jede Wiederholung \(0:08\): Absenken in 2,4 bis /,
    );
  });

  it('of one of several places says which, and the library says what they share', () => {
    const two = [
      ...one,
      measured('bench-press', ['Bench'], [{ severity: 'adjust', reps: [3, 4], says: lowersIn(3, 0.9) }]),
    ];
    expect(line(lettersText(sessionOf(two)), 'What I saw.')).toBe(
      'What I saw. Back squat, 0:08, rep 2 of 5; Bench press, reps 3 and 4 of 5 (0:08): the lowering going quicker than planned. Rep 2 (back squat) lowers in 1.1 s ± 0.2 s; the target is 2 to 4 s.',
    );
  });

  it('gives the number of one set to no other set', () => {
    const sets = ['Set 1', 'Set 2'].map((clip, at): Said & { clip: string } => {
      return { clip, severity: 'keep', reps: [1, 2, 3, 4, 5], says: everyLowers(2.4 - at / 10, 3.1) };
    });
    expect(line(lettersText(sessionOf([measured('back-squat', ['Set 1', 'Set 2'], sets)])), 'Eccentric tempo.')).toBe(
      'Eccentric tempo. All 10 reps (Set 1, 0:08; Set 2, 0:08). Every rep (Set 1) lowers in 2.4 to 3.1 s ± 0.2 s; the target is 2 to 4 s.',
    );
  });

  it('keeps the place before it where it names only some of what was seen', () => {
    const note = 'Rep 3 is where it begins.';
    const flags = [{ severity: 'correct' as const, criterion: 'depth', fault: 'shortOfDepth', reps: [3, 4, 5], note }];
    expect(lettersText(sessionOf([draft({ flags })]))).toContain(`Reps 3 to 5 of 5 (0:01): ${note}`);
  });
});

describe('a set that two cameras show', () => {
  const entry = draft({
    flags: [
      { severity: 'correct', criterion: 'depth', fault: 'shortOfDepth', reps: [3, 4, 5] },
      { severity: 'correct', criterion: 'depth', fault: 'shortOfDepth', reps: [4, 5] },
    ],
    ticks: ['barPath', 'spinePosition'],
  });
  const [lead] = entry.clips;
  const [first, second] = entry.flags;
  const both: Entry = {
    ...entry,
    clips: entry.clips.flatMap((clip) => [
      { ...clip, name: 'Side' },
      { ...clip, id: 'front', name: 'Front', view: 'front', sameSet: { clip: clip.id, offsetUs: 0 } },
    ]),
    flags: [first, second && { ...second, clip: 'front' }].filter((flag) => flag !== undefined),
  };

  it('has each rep once', () => {
    expect(lead?.reps).toHaveLength(5);
    expect(planOf(sessionOf([both]))).toMatchObject({ clips: 2, reps: 5 });
    const text = lettersText(sessionOf([both]));
    expect(text).toContain('with 2 clips and 5 reps on film');
    expect(text).toContain('Bar path. All 5 reps: ');
    expect(text).toContain('Side, reps 3 to 5 of 5 (0:01), also in Front (0:01): the hip crease');
  });

  it('is not every rep of a lift where each camera shows some of the same', () => {
    const other = draft({ exercise: 'goblet-squat', flags: [{ ...shortOfDepth, reps: [1] }] });
    const text = lettersText(sessionOf([both, other]));
    expect(text).not.toContain('Back squat, all 5 reps: the hip crease');
    expect(text).toContain('Back squat, Side, reps 3 to 5 of 5 (0:01), also in Front (0:01); Goblet squat');
  });
});

const shortOfDepth = { severity: 'correct' as const, criterion: 'depth', fault: 'shortOfDepth' };
