import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { plainText } from '../../../engine/document/document.ts';
import { gradeSession } from '../../../engine/grading/gradeSession.ts';
import { letterDocument } from '../../../engine/letter/letter.ts';
import { planLetter } from '../../../engine/letter/planLetter.ts';
import { writeLetter } from '../../../engine/letter/writeLetter.ts';
import { equalSets } from '../../../engine/review/plan.ts';
import type { Entry, Review } from '../../../engine/review/review.ts';
import { shippedUnder } from '../../seeds/shippedCatalogue.ts';
import { catalogue, draft, letterOf, lettersText, linesOf, planOf, sessionOf, sessions } from './sample.ts';

const quick = {
  severity: 'adjust' as const,
  criterion: 'eccentricTempo',
  fault: 'quickLowering',
  reps: 'set' as const,
};
const everyLift = ['goblet-squat', 'dumbbell-bench-press', 'seated-cable-row', 'leg-curl'];
const quickEverywhere = sessionOf(everyLift.map((exercise) => draft({ exercise, flags: [quick] })));

const scoreOf = (review: Review): number => {
  const { state } = gradeSession(review, catalogue);
  return state.kind === 'none' ? Number.NaN : state.score;
};

describe('one theme', () => {
  it('is said once over the session: quick lowering on every rep of every lift, with all its places', () => {
    const { priorities } = planOf(quickEverywhere);
    expect(priorities).toHaveLength(1);
    expect(priorities[0]?.exercises).toHaveLength(4);
    const seen =
      lettersText(quickEverywhere)
        .split('\n')
        .find((line) => line.startsWith('What I saw.')) ?? '';
    expect(seen).toContain('Every rep of the goblet squat');
    for (const name of ['dumbbell bench press', 'seated cable row', 'seated leg curl'])
      expect(seen).toContain(`the ${name} (`);
  });

  it('gains what the session gains without all of it at once', () => {
    const fixed: Entry[] = everyLift.map((exercise) => draft({ exercise }));
    const gain = scoreOf(sessionOf(fixed)) - scoreOf(quickEverywhere);
    expect(planOf(quickEverywhere).priorities[0]?.gain).toBeCloseTo(gain, 9);
    expect(gain).toBeGreaterThan(0);
  });

  it('ranks by that gain: a small fault everywhere before a larger one in one lift', () => {
    const path = { severity: 'adjust' as const, criterion: 'depth', fault: 'shortOfDepth', reps: [1, 2, 3] };
    const entries = everyLift.map((exercise, at) =>
      draft({ exercise, flags: at === 0 ? [quick, { ...path, reps: [1, 2, 3, 4, 5] }] : [quick] }),
    );
    const [first, second] = planOf(sessionOf(entries)).priorities;
    expect([first?.fault?.id, second?.fault?.id]).toEqual(['quickLowering', 'shortOfDepth']);
  });

  it('is one heading for remarks without a fault on the same criterion of one exercise', () => {
    const remark = (reps: number[], note: string) => ({
      severity: 'adjust' as const,
      criterion: 'barPath',
      reps,
      note,
    });
    const one = draft({ flags: [remark([1], 'Forward.')] });
    const two = { ...draft({ flags: [remark([2], 'Back again.')] }), id: 'second' };
    const headings = letterOf(sessionOf([one, two])).blocks.flatMap((block) =>
      block.kind === 'heading' && block.level === 3 ? [block.text] : [],
    );
    expect(headings).toHaveLength(1);
  });

  it('is one heading for remarks without a fault in the same words', () => {
    const remark = (criterion: string, note: string) => ({ severity: 'stop' as const, criterion, reps: [1], note });
    const flags = [remark('depth', 'Left the pins out.'), remark('pauses', 'Left the pins out.')];
    expect(planOf(sessionOf([draft({ flags })])).stops).toHaveLength(1);
    const others = [remark('depth', 'Left the pins out.'), remark('pauses', 'Slipped off the bench.')];
    expect(planOf(sessionOf([draft({ flags: others })])).stops).toHaveLength(2);
  });

  it('says where it was seen under each heading, though there is nothing else to say of it', () => {
    const remark = (criterion: string) => ({ severity: 'adjust' as const, criterion, reps: 'set' as const });
    const lines = lettersText(sessionOf([draft({ flags: [remark('barPath'), remark('headPosition')] })])).split('\n');
    expect(lines.filter((line) => line === 'What I saw. All 5 reps (0:01): marked “adjust”.')).toHaveLength(2);
  });

  it('never stands under the heading of another', () => {
    fc.assert(
      fc.property(sessions, (review) => {
        const headings = letterOf(review).blocks.flatMap((block) =>
          block.kind === 'heading' ? [block.text.replace(/^\d+\. /, '')] : [],
        );
        expect(new Set(headings).size).toBe(headings.length);
      }),
      { numRuns: 300 },
    );
  });
});

describe('what was good', () => {
  const praise = (reps: number[]) => ({ severity: 'keep' as const, criterion: 'depth', reps, note: 'Deep and calm.' });

  it('is said once with both its places where two exercises are praised alike', () => {
    const review = sessionOf([
      draft({ flags: [praise([2])] }),
      draft({ exercise: 'goblet-squat', flags: [praise([4])] }),
    ]);
    const kept = planOf(review).keeps.filter(({ seen }) => seen.kind === 'words');
    expect(kept.map(({ sightings }) => sightings.map(({ exercise }) => exercise))).toEqual([
      ['Back squat', 'Goblet squat'],
    ]);
    expect(lettersText(review)).toContain(
      'Back squat, 0:01, rep 2 of 5; Goblet squat, 0:01, rep 4 of 5: Deep and calm.',
    );
  });

  it('is called range, not depth, where it is shared with a press', () => {
    const third = shippedUnder(3);
    const keptOn = (...exercises: string[]) => {
      const review = sessionOf(exercises.map((exercise) => draft({ exercise, flags: [praise([2])] })));
      const plan = planLetter(review, gradeSession(review, third), third);
      return plan.keeps.filter(({ seen }) => seen.kind === 'words').map(({ criterion }) => criterion);
    };
    expect(keptOn('back-squat', 'goblet-squat')).toEqual(['Depth']);
    expect(keptOn('back-squat', 'bench-press')).toEqual(['Range']);
    expect(keptOn('bench-press', 'back-squat')).toEqual(['Range']);
  });

  it('is something seen: the way down of the last rep by the marks, 60 frames of 30 a second', () => {
    const entry = draft({ reps: 6 });
    const marked = {
      ...entry,
      clips: entry.clips.map((clip) => ({
        ...clip,
        reps: clip.reps.map((rep) => {
          const frame = 'frame' in rep.start ? rep.start.frame + 60 : 0;
          return { ...rep, stretchedEnd: { frame, ticks: frame } };
        }),
      })),
    };
    // Rep 6 begins at frame 630: 21 s.
    expect(lettersText(sessionOf([marked]))).toContain('0:21, rep 6 of 6: still took two seconds down.');
    const slowMotion = { ...marked, clips: marked.clips.map((clip) => ({ ...clip, realTimeFactor: 8 })) };
    expect(lettersText(sessionOf([slowMotion]))).not.toContain('seconds down');
  });

  it('is never a list of criteria that held up', () => {
    fc.assert(
      fc.property(sessions, (review) => {
        for (const { criterion } of planOf(review).keeps) expect(criterion).not.toContain(',');
        expect(lettersText(review)).not.toContain('held up');
      }),
      { numRuns: 100 },
    );
  });
});

describe('words', () => {
  const short = (note: string) => ({
    severity: 'correct' as const,
    criterion: 'depth',
    fault: 'shortOfDepth',
    reps: [3],
    note,
  });

  it('of the library don’t stand beside a coach’s note on what was seen', () => {
    const library = catalogue.exercises
      .find(({ id }) => id === 'back-squat')
      ?.faults.find(({ id }) => id === 'shortOfDepth');
    const same = lettersText(sessionOf([draft({ flags: [short('The hip crease stays above the top of the knee.')] })]));
    expect(same).toContain('0:01, rep 3 of 5: The hip crease stays above the top of the knee.');
    expect(same).not.toContain(library?.seen);
    const other = lettersText(sessionOf([draft({ flags: [short('Two hands above parallel.')] })]));
    expect(other).toContain('What I saw. 0:01, rep 3 of 5: Two hands above parallel.');
    expect(other).not.toContain(library?.seen);
    expect(lettersText(sessionOf([draft({ flags: [short('')] })]))).toContain(library?.seen);
  });

  it('name the exercise of a one-lift session in its opening and its table, not in every line', () => {
    const lines = lettersText(sessionOf([draft({ flags: [short('')] })])).split('\n');
    const naming = lines.filter((line) => /back squat/i.test(line) && !/set 1|clips used/.test(line));
    expect(naming).toHaveLength(2);
  });

  it('keep the capitals of proper names inside a sentence and of nothing else', () => {
    const flags = [{ severity: 'adjust' as const, criterion: 'depth', fault: 'shortOfDepth', reps: 'set' as const }];
    const review = sessionOf([
      draft({ exercise: 'romanian-deadlift', flags }),
      draft({ exercise: 'standing-curl', flags: [] }),
    ]);
    const text = lettersText(review);
    expect(text).toContain(': Romanian deadlift and standing curl, with 2 clips');
    expect(text).not.toMatch(/\bromanian\b|and Standing curl/);
  });

  it('of provenance are never printed: no source, no paper', () => {
    fc.assert(
      fc.property(sessions, (review) => {
        const text = lettersText(review);
        expect(text).not.toMatch(/common practice|from memory|et al\.|\(\w+ (?:and \w+ )?\d{4}/);
      }),
      { numRuns: 150 },
    );
  });

  it('of time are whole seconds', () => {
    fc.assert(
      fc.property(sessions, (review) => {
        expect(JSON.stringify(letterOf(review).blocks)).not.toMatch(/"text":"\d+:\d\d[.,]\d/);
      }),
      { numRuns: 100 },
    );
  });
});

describe('the programme in the letter', () => {
  const bench = (id: string, exercise: string) => ({
    ...draft({ exercise }),
    id,
    plan: { sets: Array.from({ length: 8 }, () => ({ reps: 10, loadKg: 60, repsInReserve: 1 })) },
  });
  const review = sessionOf([
    bench('a', 'bench-press'),
    bench('b', 'dumbbell-bench-press'),
    bench('c', 'incline-dumbbell-press'),
  ]);
  const textOf = (length: 'full' | 'short') =>
    linesOf(letterDocument(writeLetter(planOf(review), { length, tone: 'plain', language: 'en' })));

  it('lists the steps towards a lift one below the other, each a sentence', () => {
    const pullUps = { ...draft({ exercise: 'pull-up' }), plan: equalSets({ sets: 3, reps: 2, loadKg: 0 }) };
    const { blocks } = letterOf(sessionOf([pullUps], { trainee: { ...sessionOf([]).trainee, experience: 'new' } }));
    const list = blocks.find((block) => block.kind === 'list' && block.id.endsWith('-steps'));
    const steps = list?.kind === 'list' ? list.items.map(plainText) : [];
    expect(steps.length).toBeGreaterThan(2);
    for (const step of steps) expect(step).toMatch(/^\p{Lu}[^.]*\.$/u);
  });

  it('stands in both lengths, with everything that was found and no sentence twice', () => {
    const { findings } = planOf(review);
    expect(findings.length).toBeGreaterThan(0);
    for (const length of ['full', 'short'] as const) {
      const lines = textOf(length);
      const from = lines.indexOf('The programme');
      expect(from).toBeGreaterThan(-1);
      const sentences = lines
        .slice(from + 1, from + 1 + findings.length)
        .flatMap((line) => line.split(/(?<=[.!?])\s+/));
      expect(sentences.length).toBeGreaterThanOrEqual(findings.length);
      expect(new Set(sentences).size).toBe(sentences.length);
    }
  });
});
