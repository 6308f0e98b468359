import { expect, it } from 'vitest';
import type { Fault } from '../../../../engine/exercises/exercise.ts';
import { filterFaults } from '../../../../renderer/review/flags/FaultPicker.tsx';
import { fault } from '../../../engine/catalogue.ts';

const named = (id: string, name: string, seen: string, criterion = 'depth'): Fault => ({
  ...fault(id, criterion),
  name,
  seen,
});

const faults = [
  named('fades', 'Depth fades', 'the last reps ending higher'),
  named('short', 'Short of depth', 'the hip staying above the knee'),
  named('bounce', 'Bounced turn', 'a rebound out of the shortest stop'),
  named('quick', 'Quick lowering', 'the lowering taking under a second', 'eccentricTempo'),
];
const found = (typed: string): readonly string[] => filterFaults(faults, 'depth', typed).map(({ id }) => id);

it('lists all faults of the criterion, and no other, while nothing is typed', () => {
  expect(found('')).toEqual(['fades', 'short', 'bounce']);
  expect(found('   ')).toEqual(['fades', 'short', 'bounce']);
});

it('finds by the beginning of the name first, then by a word of it, then by what is seen', () => {
  expect(found('depth')).toEqual(['fades', 'short']);
  expect(found('short')).toEqual(['short', 'bounce']);
  expect(found('knee')).toEqual(['short']);
});

it('wants every typed word, in any order and any case', () => {
  expect(found('DEPTH sh')).toEqual(['short']);
  expect(found('fades depth')).toEqual(['fades']);
  expect(found('depth quick')).toEqual([]);
});

it('never finds a fault of another criterion', () => {
  expect(found('quick')).toEqual([]);
});
