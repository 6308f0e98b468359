// @vitest-environment happy-dom
import { render, screen, within } from '@testing-library/react';
import { userEvent } from '@testing-library/user-event';
import { useState } from 'react';
import { beforeEach, describe, expect, it, vi } from 'vitest';
import { statusState } from '../../../renderer/bridge/statusState.ts';
import {
  available,
  type Command,
  type CommandContext,
  registerCommands,
  unavailable,
} from '../../../renderer/commands/command.ts';
import type { CommandPanel } from '../../../renderer/commands/everywhereCommands.ts';
import { keysState } from '../../../renderer/commands/keysState.ts';
import { ScreenCommands } from '../../../renderer/commands/ScreenCommands.tsx';
import { fakeRackside } from '../harness/fakeRackside.ts';
import { startAfresh } from '../harness/startAfresh.ts';

type Context = CommandContext & { readonly asked: (what: string) => void; readonly open: boolean };

const greet: Command<Context> = {
  id: 'test.greet',
  group: 'anywhere',
  label: () => 'Greet the lifter',
  keys: ['G'],
  readOnly: 'allowed',
  run: ({ asked }, press) => asked(`greet ${press}`),
};
const leave: Command<Context> = {
  id: 'test.leave',
  group: 'anywhere',
  label: () => 'Leave the gym',
  keys: ['Shift+L'],
  readOnly: 'allowed',
  when: ({ open }) => (open ? available : unavailable('The gym is closed.')),
  run: ({ asked }) => asked('leave'),
};
const commands = [greet, leave];

/** What the gym offers for what is typed alone. */
const forTyped = (typed: string): readonly Command<Context>[] =>
  typed === 'row' ? [{ ...greet, id: 'test.row', label: () => 'Start to row', run: ({ asked }) => asked('row') }] : [];

function Gym({ context }: { readonly context: Context }) {
  const [panel, setPanel] = useState<CommandPanel>('none');
  return (
    <>
      <input type="text" aria-label="Name" />
      <ScreenCommands
        commands={commands}
        context={context}
        forTyped={forTyped}
        sessionId={null}
        panel={panel}
        onPanel={setPanel}
      />
    </>
  );
}

function gym(open: boolean): ReturnType<typeof vi.fn<(what: string) => void>> {
  fakeRackside({}, { 'report.save': () => ({ path: '/kept/report.zip' }) });
  const asked = vi.fn<(what: string) => void>();
  render(<Gym context={{ readOnly: false, asked, open }} />);
  return asked;
}

beforeEach(() => {
  startAfresh(statusState);
  localStorage.clear();
  startAfresh(keysState);
  registerCommands(commands);
});

describe('the keys of a screen', () => {
  it('run its commands, but not while something is typed', async () => {
    const user = userEvent.setup();
    const asked = gym(true);
    await user.keyboard('g');
    await user.type(screen.getByRole('textbox', { name: 'Name' }), 'g');
    expect(asked.mock.calls).toEqual([['greet pressed']]);
  });

  it('say why a command can’t run', async () => {
    const user = userEvent.setup();
    const asked = gym(false);
    await user.keyboard('{Shift>}L{/Shift}');
    expect(asked).not.toHaveBeenCalled();
    expect(statusState.getState().notice).toBe('The gym is closed.');
    await user.keyboard('g');
    expect(statusState.getState().notice).toBe('');
  });
});

describe('the palette', () => {
  it('finds a command by its name and runs it', async () => {
    const user = userEvent.setup();
    const asked = gym(true);
    await user.keyboard('/');
    await user.type(screen.getByRole('combobox', { name: 'Type an action' }), 'lifter{Enter}');
    expect(asked.mock.calls).toEqual([['greet pressed']]);
    expect(screen.queryByRole('combobox')).toBeNull();
  });

  it('offers what the screen has for the typed words alone', async () => {
    const user = userEvent.setup();
    const asked = gym(true);
    await user.keyboard('/');
    expect(screen.queryByRole('option', { name: /^Start to row/ })).toBeNull();
    await user.type(screen.getByRole('combobox', { name: 'Type an action' }), 'row{Enter}');
    expect(asked.mock.calls).toEqual([['row']]);
  });

  it('saves a problem report on every screen, and says where', async () => {
    const user = userEvent.setup();
    gym(true);
    await user.keyboard('/');
    await user.type(screen.getByRole('combobox', { name: 'Type an action' }), 'problem{Enter}');
    expect(statusState.getState().notice).toBe('Problem report saved: /kept/report.zip');
  });

  it('shows what can’t be done now disabled, with the reason', async () => {
    const user = userEvent.setup();
    const asked = gym(false);
    await user.keyboard('/');
    const option = screen.getByRole('option', { name: /^Leave the gym/ });
    expect(option.getAttribute('aria-disabled')).toBe('true');
    expect(within(option).getByText('The gym is closed.')).toBeTruthy();
    await user.type(screen.getByRole('combobox'), 'leave{Enter}');
    expect(asked).not.toHaveBeenCalled();
    expect(statusState.getState().notice).toBe('The gym is closed.');
  });
});

describe('the key sheet', () => {
  it('gives a command another key, refuses one that is taken, and keeps the choice', async () => {
    const user = userEvent.setup();
    const asked = gym(true);
    await user.keyboard('?');
    const change = screen.getByRole('button', { name: 'Change the key for: Greet the lifter' });
    await user.click(change);
    await user.keyboard('{Shift>}L{/Shift}');
    expect(screen.getByRole('status').textContent).toMatch(/“Leave the gym” already uses Shift L/);
    await user.click(change);
    await user.keyboard('z');
    expect(JSON.parse(localStorage.getItem('rackside.keys') ?? '')).toEqual({ 'test.greet': ['Z'] });
    await user.click(screen.getByRole('button', { name: 'Close' }));
    await user.keyboard('gz');
    expect(asked.mock.calls).toEqual([['greet pressed']]);
  });
});
