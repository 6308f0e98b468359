import { describe, expect, it } from 'vitest';
import { findExercise } from '../../engine/exercises/catalogue.ts';
import { goals } from '../../engine/exercises/exercise.ts';
import { shipped } from './shippedCatalogue.ts';

const exerciseOf = (id: string) => {
  const found = findExercise(shipped, id);
  if (found === undefined) throw new Error(`The library has no ${id}.`);
  return found;
};
const advice = shipped.exercises.flatMap(({ id, faults }) =>
  faults.map(({ id: fault, cue, drill }) => ({
    place: `${id} ${fault}`,
    text: [cue.outcome, cue.body, drill].join(' '),
  })),
);
const leaning = ['squat', 'hinge', 'hip extension'];

// What a coach would say on the floor, and what the lift allows: common practice, no source.
describe('the advice of the faults', () => {
  it('asks for nothing with closed eyes, under furniture or on a stack of discs', () => {
    const unsafe = /eyes (closed|shut)|close (the|your) eyes|sofa|stack of discs/i;
    expect(advice.filter(({ text }) => unsafe.test(text)).map(({ place }) => place)).toEqual([]);
  });

  it('never counts seconds down for a deadlift, whose lowering may last half a second', () => {
    for (const id of ['deadlift', 'sumo-deadlift', 'trap-bar-deadlift']) {
      const { faults, targets } = exerciseOf(id);
      expect(targets.tempo.strength.eccentricS[0]).toBeLessThanOrEqual(0.5);
      const slow = faults.filter(
        ({ criterion, cue, drill }) =>
          criterion === 'eccentricTempo' && /three|calm counts|metronome/i.test(`${cue.outcome} ${drill}`),
      );
      expect(slow.map((fault) => fault.id)).toEqual([]);
    }
  });

  it('speaks of a lift from the floor as one that starts there, with no mark to lower to', () => {
    const fromTop =
      /gets low|its low point|the low point|as the (bar|frame) lowers|shape still holds|wait(s|ing)? low/i;
    for (const id of ['deadlift', 'sumo-deadlift', 'trap-bar-deadlift']) {
      const told = exerciseOf(id).faults.filter(({ criterion }) => criterion !== 'setUp');
      const wrong = told.filter(({ name, seen, cue, drill, proof }) =>
        fromTop.test([name, seen, cue.outcome, cue.body, drill, proof].join(' ')),
      );
      expect([id, wrong.map((fault) => fault.id)]).toEqual([id, []]);
      const rounds = told.find((fault) => fault.id === 'lowBackRounds');
      expect(rounds?.seen).toMatch(/leaves the floor/);
      expect(rounds?.cue.outcome).toMatch(/push the floor away/i);
      expect(rounds?.drill).toMatch(/raise the start/i);
    }
  });

  it('lets the head follow a trunk that leans: no mark on the wall to keep in view', () => {
    const wrong = shipped.exercises
      .filter(({ pattern }) => leaning.includes(pattern))
      .flatMap(({ id, faults }) =>
        faults
          .filter(({ criterion, cue, drill }) => {
            const text = `${cue.outcome} ${cue.body} ${drill}`;
            return (
              criterion === 'headPosition' && /same view of the wall|read the wall|one spot with your eyes/i.test(text)
            );
          })
          .map((fault) => `${id} ${fault.id}`),
      );
    expect(wrong).toEqual([]);
  });

  it('holds a sissy squat low for one to two seconds', () => {
    const { tempo } = exerciseOf('sissy-squat').targets;
    for (const goal of goals) expect(tempo[goal].pauseStretchedS).toEqual([1, 2]);
  });

  it('says that where a leg extension is hardest depends on the machine', () => {
    const { ladder, faults } = exerciseOf('leg-extension');
    expect(ladder.betterSuited[0]?.why).toMatch(/depends on its build/);
    expect(faults.find(({ id }) => id === 'shortAtShortEnd')?.why).toMatch(/^Many machines/);
  });

  it('speaks of a step-up and of back raises by what they do, not by a back knee or a mat', () => {
    const said = (id: string) =>
      exerciseOf(id)
        .faults.map(({ cue, drill }) => `${cue.outcome} ${drill}`)
        .join(' ');
    expect(said('step-up')).not.toMatch(/land the back knee|hover over the mat/i);
    for (const id of ['back-extension', 'level-bench-back-raise']) expect(said(id)).not.toMatch(/\bthe mat\b|shelf/i);
  });
});
