import { describe, expect, it } from 'vitest';
import { catalogue, draft, letterOf, lettersText, linesOf, planOf, sessionOf } from './sample.ts';

const depth = { criterion: 'depth', fault: 'shortOfDepth', severity: 'correct' as const };
const tempo = { criterion: 'eccentricTempo', fault: 'quickLowering', severity: 'adjust' as const };
const path = { criterion: 'barPath', fault: 'barDriftsForward', severity: 'adjust' as const };
const head = { criterion: 'headPosition', fault: null, severity: 'prefer' as const };
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
    const stop = { criterion: 'spinePosition', fault: null, severity: 'stop' as const, reps: [5] };
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

describe('each thing to change', () => {
  // Specific and checkable, one cue, the next target as something to see: common practice, no source.
  it('has its moment, its reason, one cue, a drill and how success will show', () => {
    const document = letterOf(sessionOf([draft({ flags: [{ ...depth, reps: [2, 4] }] })]));
    const fault = catalogue.exercises
      .find(({ id }) => id === 'back-squat')
      ?.faults.find(({ id }) => id === depth.fault);
    const line = (part: string): string =>
      linesOf({
        ...document,
        blocks: document.blocks.filter(({ id }) => id === `priority-depth-${fault?.id}-back-squat-${part}`),
      }).join('\n');
    // Frame 40 of 30 a second is 1.333 s.
    expect(line('seen')).toContain('Reps 2 and 4 of 5 (0:01): ');
    expect(line('seen')).toContain(fault?.seen ?? 'no such fault');
    expect(line('why')).toBe(`Why it matters. ${fault?.why}`);
    expect(line('why')).not.toContain(fault?.source);
    expect(line('cue')).toContain(fault?.cue.outcome ?? 'no such fault');
    expect(line('drill')).toContain(fault?.drill ?? 'no such fault');
    expect(line('proof')).toContain(fault?.proof ?? 'no such fault');
  });

  it('says reps as a coach would: one, two, a run, all', () => {
    const seen = (reps: number[] | 'set'): string => lettersText(sessionOf([draft({ flags: [{ ...depth, reps }] })]));
    expect(seen([2])).toContain('0:01, rep 2 of 5: ');
    expect(seen([1, 2])).toContain('Reps 1 and 2 of 5 (0:01): ');
    expect(seen([1, 2, 3, 5])).toContain('Reps 1 to 3 and 5 of 5 (0:01): ');
    expect(seen('set')).toContain('All 5 reps (0:01): ');
  });

  it('comes after what to keep and before what to film and the cautions, each under its own heading', () => {
    const { blocks } = letterOf(sessionOf([draft({ flags: [{ ...depth, reps: all }] })]));
    const heads = blocks.flatMap((block) =>
      block.kind === 'notice' || (block.kind === 'heading' && block.level === 2) ? [block.id] : [],
    );
    const places = ['keep', 'change', 'exercises', 'film', 'cautions'].map((id) => heads.indexOf(id));
    expect(places).toEqual([0, 1, 2, 3, 4]);
  });

  it('names everything unsafe before all else, and works through each of them', () => {
    const stop = (criterion: string, rep: number) => ({
      criterion,
      fault: null,
      severity: 'stop' as const,
      reps: [rep],
    });
    const review = sessionOf([draft({ flags: [stop('spinePosition', 5), stop('barPath', 3)] })]);
    const [notice] = letterOf(review).blocks.filter((block) => block.kind === 'notice');
    const lines = notice === undefined ? [] : linesOf({ ...letterOf(review), blocks: [notice] });
    expect(lines.join('\n')).toMatch(/rep 5 of 5: unsafe \(spine position\)/);
    expect(lines.join('\n')).toMatch(/rep 3 of 5: unsafe \(bar path\)/);
    expect(
      planOf(review)
        .priorities.map(({ criterion }) => criterion)
        .sort(),
    ).toEqual(['barPath', 'spinePosition']);
  });
});

describe('what a letter keeps', () => {
  it('praises only what was praised or found fine', () => {
    const praise = { criterion: 'depth', severity: 'keep' as const, reps: [2], note: 'Deep and calm.' };
    const plan = planOf(sessionOf([draft({ flags: [praise, { ...path, reps: all }] })]));
    expect(plan.keeps[0]).toMatchObject({ criterion: 'Depth', seen: { kind: 'words', what: 'Deep and calm.' } });
    expect(plan.keeps.map(({ criterion }) => criterion)).not.toContain('Bar path');
  });

  it('praises a hold once for its shape', () => {
    const praise = (criterion: string) => ({ criterion, severity: 'keep' as const, reps: 'set' as const });
    const flags = [praise('barPath'), praise('headPosition'), praise('spinePosition')];
    const { keeps } = planOf(sessionOf([draft({ exercise: 'loaded-carry', reps: 1, flags })]));
    expect(keeps).toHaveLength(1);
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
    expect(text).toMatch(/^Add a clip from the side/m);
  });

  it('writes loads in the trainee’s unit: 80 kg is 176.37 lb, to the nearest half pound (0.45359237 kg a pound, international definition)', () => {
    const review = sessionOf([draft()]);
    expect(lettersText(review)).toContain('80 kg');
    expect(lettersText({ ...review, trainee: { ...review.trainee, units: 'lb' } })).toContain('176.5 lb');
  });

  it('speaks of itself in a self-review', () => {
    const review = sessionOf([draft({ flags: [{ ...depth, reps: all }] })], { voice: 'self' });
    const own = planOf(review);
    expect(own.voice).toBe('self');
    const text = lettersText(review);
    expect(text).toContain('My cue.');
    expect(text).not.toMatch(/Your cue|Hello/);
  });

  it('never says “you” in its own words of a self-review', () => {
    const stop = { criterion: 'spinePosition', severity: 'stop' as const, reps: [5] };
    const entries = [
      [],
      [draft()],
      [draft({ ticks: ['depth', 'barPath'] })],
      [draft({ reps: 6, flags: [{ ...depth, reps: [1] }] })],
      [draft({ flags: [stop] })],
      [draft({ view: 'front', ticks: ['pauses'] })],
    ];
    for (const each of entries) {
      const document = letterOf(sessionOf(each, { voice: 'self', coach: 'Jo Harwick' }));
      // Cautions, drills and the like are the library's, printed as they stand.
      const own = document.blocks.filter((block) => block.kind !== 'notice' && !/-(why|drill|proof)$/.test(block.id));
      expect(linesOf({ ...document, blocks: own }).join('\n')).not.toMatch(/\b(you|your|yours|Jo Harwick)\b/i);
    }
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
