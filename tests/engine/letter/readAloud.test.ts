import path from 'node:path';
import { describe, expect, it } from 'vitest';
import { loadCatalogue } from '../../../electron/backend/catalogue/loadCatalogue.ts';
import { editionOf } from '../../../engine/edition/edition.ts';
import { plannedShape } from '../../../engine/letter/shape.ts';
import { catalogue, draft, lettersText, linesOf, planOf, sessionOf } from './sample.ts';

const short = { severity: 'correct' as const, criterion: 'depth', fault: 'shortOfDepth', reps: [1, 2, 3] };
const drift = { severity: 'adjust' as const, criterion: 'barPath', fault: 'barDriftsForward', reps: [4, 5] };

describe('a letter read aloud', () => {
  it('asks for clips of each exercise where there are several', () => {
    expect(lettersText(sessionOf([draft()]))).toContain('Film the hardest set again from');
    expect(lettersText(sessionOf([draft(), draft({ exercise: 'bench-press' })]))).toContain(
      'Film the hardest set of each exercise again from',
    );
  });

  it('names the places of shared praise in the order of the session', () => {
    const entries = ['front-squat', 'bench-press', 'pull-up'].map((exercise) => draft({ exercise }));
    expect(lettersText(sessionOf(entries))).toContain('Every rep of the front squat, the bench press and the pull-up:');
  });

  it('says of a session with nothing wrong once that nothing cost a point', () => {
    const third = loadCatalogue(path.resolve(import.meta.dirname, '../../..'), 3);
    const ticks = third.exercises.find(({ id }) => id === 'back-squat')?.criteria.map(({ id }) => id) ?? [];
    const style = { length: 'full', tone: 'plain', language: 'en' } as const;
    const review = sessionOf([{ ...draft({ ticks }), setsDone: 3 }]);
    const text = linesOf(editionOf({ review, catalogue: third, names: 'full', style }).letter().document).join('\n');
    expect(text).toContain(
      'Overall grade: A+ (100 of 100). Nothing cost you a point, neither on film nor in the programme.',
    );
  });

  it('calls a remark without a fault unsafe by its criterion, in no sentence that blames bracing itself', () => {
    const note = 'The collars were loose.';
    const stop = draft({ flags: [{ severity: 'stop', criterion: 'bracing', reps: [4], note }] });
    expect(lettersText(sessionOf([stop]))).toContain('rep 4 of 5: unsafe (bracing).');
  });

  it('ends a review of one’s own without asking to practise what nobody asked for', () => {
    const self = (flags: NonNullable<Parameters<typeof draft>[0]>['flags'] = []) =>
      lettersText(sessionOf([draft({ flags })], { voice: 'self' }));
    expect(self([short])).toContain('Next: practise this, film it, look again.');
    expect(self()).toContain('Next: train, film it, look again.');
  });

  it('of nothing but plain notes asks for no clip, and says where they are', () => {
    const entry = draft({ ticks: [], flags: [{ ...short, note: 'New shoes.' }] });
    const noted = { ...entry, flags: entry.flags.map((flag) => ({ ...flag, severity: null, fault: null })) };
    const text = lettersText(sessionOf([noted]));
    expect(text).toContain('So far there are only notes on the film, and they are on the sheet.');
    expect(text).toContain('Back squat has no grade: I have not judged any of it yet.');
    expect(text).not.toContain('Add a clip');
  });

  it('begins the reason of a grade set by hand like a sentence', () => {
    const override = { score: 88, reason: 'half of it is dark' };
    expect(lettersText(sessionOf([{ ...draft(), override }]))).toContain('by hand. Half of it is dark. From');
  });

  it('does not praise a criterion twice where there is other praise', () => {
    const praise = {
      severity: 'keep' as const,
      criterion: 'spinePosition',
      reps: 'set' as const,
      note: 'Braced early.',
    };
    const { keeps } = planOf(sessionOf([draft({ flags: [praise] }), draft({ exercise: 'bench-press' })]));
    expect(new Set(keeps.map(({ criterion }) => criterion)).size).toBe(keeps.length);
  });
});

describe('a letter with things to change left out', () => {
  const review = sessionOf([draft({ flags: [short, drift] })]);
  const whole = editionOf({
    ...{ review, catalogue, names: 'full' },
    style: { length: 'full', tone: 'plain', language: 'en' },
  });
  const without = (out: (id: string) => boolean) => {
    const leftOut = whole.letter().order.filter(out);
    return linesOf(editionOf({ ...whole.source, shape: { ...plannedShape, leftOut } }).letter().document).join('\n');
  };

  it('counts those that are left, from one on', () => {
    const { priorities } = whole.plan();
    expect(priorities).toHaveLength(2);
    const text = without((id) => id.startsWith(`priority-${priorities[0]?.key}`));
    expect(text).toContain('One thing to work on');
    expect(text).toContain('1. Bar drifts forward');
    expect(text).toContain('Your choice: keep that cue');
    expect(text).not.toMatch(/Two things|2\. |the second/);
  });

  it('counts a thing of which one paragraph stands', () => {
    const { priorities } = whole.plan();
    const text = without((id) => id.startsWith(`priority-${priorities[0]?.key}`) && !id.endsWith('-cue'));
    expect(text).toContain('Two things to work on');
    expect(text).toContain('2. Bar drifts forward');
  });

  it('announces nothing where none is left', () => {
    expect(without((id) => id.startsWith('priority-'))).not.toMatch(/things? to work on|Your choice/);
  });
});
