import { describe, expect, it } from 'vitest';
import type { Entry } from '../../../engine/review/review.ts';
import { draft, letterOf, lettersText, linesOf, planOf, sessionOf } from './sample.ts';

const unsafe = { criterion: 'spinePosition', severity: 'stop' as const, reps: [5] };
const oneOfSix = { criterion: 'depth', fault: 'shortOfDepth', severity: 'correct' as const, reps: [1] };

/** The paragraphs of one part of the letter, told by the ids that begin with its name. */
const part = (entries: readonly Entry[], name: string): string =>
  letterOf(sessionOf(entries))
    .blocks.filter((block) => block.id.startsWith(`${name}-`))
    .flatMap((block) => linesOf({ ...letterOf(sessionOf(entries)), blocks: [block] }))
    .join('\n');

// Nothing hard before what is unsafe is put right: common practice, no source.
describe('what a letter asks to film', () => {
  it('is a light set of the lift that was unsafe, never its hardest', () => {
    const film = part([draft({ flags: [unsafe] })], 'film');
    expect(film).toMatch(/^Once it is put right, film the first light set from the side/);
    expect(film).not.toContain('hardest');
  });

  it('is that light set alone, from the side that the film lacked', () => {
    const film = part([draft({ view: 'front', flags: [unsafe], ticks: ['eccentricTempo', 'pauses'] })], 'film');
    expect(film).toContain('film the first light set from the side');
    expect(film).not.toContain('Add a clip');
  });

  it('names the unsafe lift before the wishes of four others', () => {
    const others = ['romanian-deadlift', 'overhead-press', 'bench-press', 'bent-over-row'].map((exercise) =>
      draft({ exercise, ticks: [] }),
    );
    expect(planOf(sessionOf([...others, draft({ flags: [unsafe] })])).film[0]).toMatchObject({
      kind: 'afterStop',
      exercise: 'Back squat',
    });
  });

  it('is the same again only where there is something to repeat', () => {
    expect(part([draft()], 'film')).toContain('again');
    expect(part([], 'film')).not.toContain('again');
    expect(part([], 'film')).toContain('Film the hardest set of each exercise');
  });
});

describe('a letter with nothing to ask', () => {
  it('says to do the same again where everything was looked at', () => {
    expect(part([draft()], 'change')).toBe('I see nothing to change. Do the same again.');
  });

  it('speaks only of what was looked at where part of it was not', () => {
    const change = part([draft({ ticks: ['depth', 'barPath'] })], 'change');
    expect(change).toContain('what I have looked at so far');
    expect(change).not.toContain('same again');
  });

  it('says that remarks on few reps can wait, and does not count them as more', () => {
    const change = part([draft({ reps: 6, flags: [oneOfSix] })], 'change');
    expect(change).toMatch(/^Nothing came up often enough/);
    expect(change).toContain('The sheet has 1 note. It can wait.');
  });
});

describe('the order and the choice of several things', () => {
  const flags = [
    { criterion: 'depth', fault: 'shortOfDepth', severity: 'correct' as const, reps: [1, 2] },
    { criterion: 'barPath', fault: 'barDriftsForward', severity: 'adjust' as const, reps: [1] },
  ];

  it('is free where nothing depends on it, and then no order is asked', () => {
    const change = part([draft({ flags })], 'change');
    expect(change).toContain('Your choice: start with the first or the second.');
    expect(change).not.toMatch(/in this order|most important first|Begin with the first\./);
  });

  it('is an order where something is urgent, and then there is no choice', () => {
    const rounding = {
      criterion: 'spinePosition',
      fault: 'lowBackRounds',
      severity: 'correct' as const,
      reps: 'set' as const,
    };
    const change = part([draft({ flags: [...flags, rounding] })], 'change');
    expect(change).toContain('in this order');
    expect(change).toContain('Start with the first.');
    expect(change).not.toContain('Your choice');
  });
});

describe('the opening', () => {
  it('counts reps only where reps are marked', () => {
    expect(lettersText(sessionOf([draft({ reps: 0 })]))).toContain('back squat, with 1 clip on film.');
    expect(lettersText(sessionOf([draft({ reps: 3 })]))).toContain('back squat, with 1 clip and 3 reps on film.');
  });
});
