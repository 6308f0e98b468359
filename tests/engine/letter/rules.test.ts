import { describe, expect, it } from 'vitest';
import { draft, lettersText, planOf, sessionOf } from './sample.ts';

const depth = { criterion: 'depth', fault: 'shortOfDepth', weight: 'correct' as const };
const tempo = { criterion: 'eccentricTempo', fault: 'quickLowering', weight: 'adjust' as const };
const path = { criterion: 'barPath', fault: 'barDriftsForward', weight: 'adjust' as const };
const head = { criterion: 'headPosition', fault: null, weight: 'prefer' as const };
const all = [1, 2, 3, 4, 5];
const names = (flags: Parameters<typeof draft>[0]): string[] =>
  planOf(sessionOf([draft(flags)])).priorities.map(({ criterion }) => criterion);

// How many things to ask for, and which: common practice, no source; memory holds about four chunks (Cowan 2001, from memory).
describe('what a letter asks to change', () => {
  const everything = { flags: [depth, tempo, path, head].map((flag) => ({ ...flag, reps: all })) };

  it('orders by what the session gains, with at most two below a B', () => {
    expect(names(everything)).toEqual(['depth', 'eccentricTempo']);
  });

  it('asks three things of an experienced trainee whose grade is good', () => {
    expect(names({ flags: [tempo, path, head].map((flag) => ({ ...flag, reps: [1] })) })).toHaveLength(3);
  });

  it('asks one thing of a new trainee', () => {
    const review = sessionOf([draft(everything)]);
    const plan = planOf({ ...review, trainee: { ...review.trainee, experience: 'new' } });
    expect(plan.priorities.map(({ criterion }) => criterion)).toEqual(['depth']);
  });

  it('puts what is unsafe first and alone', () => {
    const stop = { criterion: 'spinePosition', fault: null, weight: 'stop' as const, reps: [5] };
    expect(names({ flags: [...everything.flags, stop] })).toEqual(['spinePosition']);
  });

  it('leaves what shows in less than a fifth of the reps to the sheet (bandwidth: Cruz et al. 2018, Motricidade 14:107)', () => {
    expect(names({ reps: 6, flags: [{ ...depth, reps: [1] }] })).toEqual([]);
    expect(names({ reps: 5, flags: [{ ...depth, reps: [1] }] })).toEqual(['depth']);
    const plan = planOf(sessionOf([draft({ reps: 6, flags: [{ ...depth, reps: [1] }] })]));
    expect(plan.remarksLeft).toBe(1);
  });

  it('gives one cue of at most eight words, the coach’s own where there is one', () => {
    const [given] = planOf(sessionOf([draft({ flags: [{ ...depth, reps: all }] })])).priorities;
    expect(given?.cue.split(' ').length).toBeLessThanOrEqual(8);
    const entry = draft({ flags: [{ ...depth, reps: all }] });
    const own = { ...entry, flags: entry.flags.map((flag) => ({ ...flag, cue: 'Touch the low box' })) };
    expect(planOf(sessionOf([own])).priorities[0]?.cue).toBe('Touch the low box');
  });
});

describe('what a letter keeps', () => {
  it('praises only what was praised or found fine', () => {
    const praise = { criterion: 'depth', weight: 'keep' as const, reps: [2], note: 'Deep and calm.' };
    const plan = planOf(sessionOf([draft({ flags: [praise, { ...path, reps: all }] })]));
    expect(plan.keeps[0]).toMatchObject({ kind: 'praised', what: 'Deep and calm.' });
    for (const keep of plan.keeps) {
      if (keep.kind === 'fine') expect(keep.criteria).not.toContain('Bar path');
    }
  });
});

describe('how a letter speaks', () => {
  it('quotes the pain note, judges nothing, and defers', () => {
    const text = lettersText(
      sessionOf([draft()], {
        session: { id: 's', title: '', date: '2026-03-01', notes: '', painNote: 'Left shoulder, 3 of 10' },
      }),
    );
    expect(text).toContain('You wrote: “Left shoulder, 3 of 10”');
    expect(text).toContain('ask a licensed clinician');
  });

  it('adds the caution for minors', () => {
    const review = sessionOf([draft()]);
    const minor = catalogueTopics(planOf({ ...review, trainee: { ...review.trainee, minor: true } }));
    expect(minor.length).toBeGreaterThan(catalogueTopics(planOf(review)).length);
  });

  it('says a provisional grade and no grade plainly', () => {
    expect(lettersText(sessionOf([draft({ ticks: ['depth', 'barPath'] })]))).toContain('The grade is provisional');
    expect(lettersText(sessionOf([draft({ ticks: [] })]))).toContain('There is no overall grade this time.');
    expect(lettersText(sessionOf([]))).toContain('No film came with it');
  });

  it('asks for another view where the film can’t show a criterion', () => {
    const text = lettersText(sessionOf([draft({ view: 'front', ticks: ['eccentricTempo', 'pauses'] })]));
    expect(text).toMatch(/add a clip from the side/);
  });

  it('writes loads in the trainee’s unit: 80 kg is 176.4 lb (0.45359237 kg a pound, international definition)', () => {
    const review = sessionOf([draft()]);
    expect(lettersText(review)).toContain('80 kg');
    expect(lettersText({ ...review, trainee: { ...review.trainee, units: 'lb' } })).toContain('176.4 lb');
  });

  it('speaks of itself in a self-review', () => {
    const review = sessionOf([draft({ flags: [{ ...depth, reps: all }] })], { voice: 'self' });
    const own = planOf(review);
    expect(own.voice).toBe('self');
    const text = lettersText(review);
    expect(text).toContain('My cue.');
    expect(text).not.toMatch(/Your cue|Hello/);
  });

  it.each([
    [0, 'and 0 reps|no reps|with 1 clip'],
    [1, '1 rep '],
    [2, '2 reps '],
  ])('counts %s reps in good English', (reps, words) => {
    expect(lettersText(sessionOf([draft({ reps })]))).toMatch(new RegExp(words));
    expect(lettersText(sessionOf([draft({ reps })]))).not.toMatch(/\b1 (reps|clips|sets)\b/);
  });
});

const catalogueTopics = (plan: ReturnType<typeof planOf>): string[] => plan.cautions.other.map(({ topic }) => topic);
