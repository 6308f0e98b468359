// @vitest-environment happy-dom
import { screen } from '@testing-library/react';
import { userEvent } from '@testing-library/user-event';
import { beforeEach, describe, expect, it } from 'vitest';
import type { Fault } from '../../../../engine/exercises/exercise.ts';
import { FaultPicker, filterFaults, recentFaults } from '../../../../renderer/review/flags/FaultPicker.tsx';
import { fault } from '../../../engine/catalogue.ts';
import { renderReview } from '../../harness/renderReview.tsx';
import { depthFlag, type ReviewBench, reviewBench, squatEntry } from '../../harness/reviewBench.ts';
import { startAfresh } from '../../harness/startAfresh.ts';

async function picker(prepare: (bench: ReviewBench) => void = () => {}): Promise<ReviewBench> {
  const flag = depthFlag();
  const history = { undo: { id: 'flagAdded', values: {} }, redo: null };
  const bench = await reviewBench({ entries: [squatEntry({ flags: [flag] })], review: { history } });
  const exercise = bench.context.stage?.exercise;
  if (exercise == null) throw new Error('The exercise is not known.');
  bench.context.cursor.nameFault('f1');
  prepare(bench);
  renderReview(bench, <FaultPicker flag={flag} exercise={exercise} criterionName="Depth" />);
  return bench;
}

const field = (): HTMLElement => screen.getByRole('combobox', { name: 'Filter the faults' });
const offered = (): readonly (string | null)[] =>
  screen.getAllByRole('option').map((option) => option.getAttribute('data-fault'));

beforeEach(() => startAfresh(recentFaults));

describe('the list of faults', () => {
  it('has the focus at once, and offers the faults of the flag’s criterion alone', async () => {
    const bench = await picker();
    expect(document.activeElement).toBe(field());
    const ofDepth = bench.context.stage?.exercise?.faults.filter(({ criterion }) => criterion === 'depth') ?? [];
    expect(new Set(offered())).toEqual(new Set(ofDepth.map(({ id }) => id)));
  });

  it('picks the first match by Enter, and puts it first the next time', async () => {
    const user = userEvent.setup();
    const bench = await picker();
    const [, second] = offered();
    const name = bench.context.stage?.exercise?.faults.find(({ id }) => id === second)?.name ?? '';
    await user.type(field(), `${name}{Enter}`);
    expect(bench.rackside.askedFor('flags.update')).toEqual([{ flagId: 'f1', change: { fault: second } }]);
    expect(bench.context.cursor.namingFlagId).toBeNull();
    expect(recentFaults.getState().ids).toEqual([second]);
  });

  it('moves by the arrows and says which one is active', async () => {
    const user = userEvent.setup();
    const bench = await picker();
    await user.keyboard('{ArrowDown}');
    const active = field().getAttribute('aria-activedescendant');
    const option = screen.getByRole('option', { selected: true });
    expect(option.id).toBe(active);
    expect(option.getAttribute('data-fault')).toBe(offered()[1]);
    await user.keyboard('{Enter}');
    expect(bench.rackside.askedFor('flags.update')).toEqual([{ flagId: 'f1', change: { fault: offered()[1] } }]);
  });

  it('gives the undo key to the flag while nothing is typed, and to what is typed after that', async () => {
    const user = userEvent.setup();
    const bench = await picker();
    await user.keyboard('{Control>}z{/Control}');
    expect(bench.rackside.askedFor('history.undo')).toHaveLength(1);
    expect(bench.context.cursor.namingFlagId).toBeNull();
    await user.type(field(), 'sh{Control>}z{/Control}');
    expect(bench.rackside.askedFor('history.undo')).toHaveLength(1);
  });

  it('leaves the flag without a fault on Escape', async () => {
    const user = userEvent.setup();
    const bench = await picker();
    await user.keyboard('{Escape}');
    expect(bench.rackside.askedFor('flags.update')).toEqual([]);
    expect(bench.context.cursor.namingFlagId).toBeNull();
  });

  it('starts with what was typed before it was there', async () => {
    await picker(({ context }) => {
      context.typing.hold();
      for (const key of 'xyz') context.typing.keep({ key, ctrlKey: false, metaKey: false, altKey: false });
    });
    expect(field()).toHaveProperty('value', 'xyz');
    expect(screen.getByText(/No fault matches/)).toBeTruthy();
  });
});

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
