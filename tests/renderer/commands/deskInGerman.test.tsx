// @vitest-environment happy-dom
import { render, screen, within } from '@testing-library/react';
import { userEvent } from '@testing-library/user-event';
import { useState } from 'react';
import { beforeEach, describe, expect, it } from 'vitest';
import { languages } from '../../../engine/language/language.ts';
import { allCommands } from '../../../renderer/allCommands.ts';
import { type CommandContext, registerCommands } from '../../../renderer/commands/command.ts';
import type { CommandPanel } from '../../../renderer/commands/everywhereCommands.ts';
import { keyWords } from '../../../renderer/commands/keys.ts';
import { keysState } from '../../../renderer/commands/keysState.ts';
import { filterCommands } from '../../../renderer/commands/Palette.tsx';
import { ScreenCommands } from '../../../renderer/commands/ScreenCommands.tsx';
import { deskLanguage } from '../../../renderer/words/deskLanguage.ts';
import { fakeRackside } from '../harness/fakeRackside.ts';
import { reviewBench } from '../harness/reviewBench.ts';
import { startAfresh } from '../harness/startAfresh.ts';

const commands = [...new Set(allCommands)];
const none: CommandContext = { readOnly: false };

function Desk() {
  const [panel, setPanel] = useState<CommandPanel>('none');
  return <ScreenCommands commands={[]} context={none} sessionId={null} panel={panel} onPanel={setPanel} />;
}

beforeEach(() => {
  startAfresh(deskLanguage);
  localStorage.clear();
  startAfresh(keysState);
  registerCommands(allCommands);
  fakeRackside({});
  deskLanguage.getState().choose('de');
});

/** The first command that the palette gives for what is typed, by its id. */
const firstFor = (typed: string): string | undefined =>
  filterCommands(
    commands.map((face) => ({ face })),
    typed,
  )[0]?.face.id;

describe('the actions of a German desk', () => {
  it('are called in German alone', () => {
    const german = commands.map(({ label, button }) => [label(), button?.()] as const);
    deskLanguage.getState().choose('en');
    const english = commands.map(({ label, button }) => [label(), button?.()] as const);
    expect(german.filter(([label], index) => label === english[index]?.[0])).toEqual([]);
    // The same word in both languages.
    const same = german.flatMap(([, button], index) => (button === english[index]?.[1] ? (button ?? []) : []));
    expect(same).toEqual([]);
  });

  it.each([
    ['rückgängig', 'undo'],
    ['löschen', 'remove'],
    ['zoom näher', 'closer'],
    ['skelett', 'layerJoints'],
    ['hantelweg', 'layerPath'],
    ['einzelbild zurück', 'frameBack'],
    ['verpixeln', 'cover'],
    ['tastenkürzel', 'keySheet'],
  ])('are found by what a German coach types: %s', (typed, id) => {
    expect(firstFor(typed)).toBe(id);
  });

  it('say in German why they can’t run', async () => {
    const bench = await reviewBench({ entries: [] });
    expect(bench.reasonAgainst('fine')).toBe('Es ist kein Clip offen: Füg erst einen hinzu oder wähl einen aus.');
    const received = await reviewBench({ review: { readOnly: true } });
    expect(received.reasonAgainst('fine')).toMatch(/^Diese Einheit kommt aus dem Rackside eines anderen Coachs/);
  });

  it('have the keys as a German keyboard prints them', () => {
    const keys = new Map(commands.map((command) => [command.id, keyWords({}, command)]));
    expect(['playBackwards', 'undo', 'cellFirst', 'remove', 'previousClip'].map((id) => keys.get(id))).toEqual([
      'Umschalt Leertaste',
      'Strg Z',
      'Pos1',
      'Entf',
      'Umschalt Bild ↑',
    ]);
  });
});

describe('the panels of a German desk', () => {
  it('head the keys in German', async () => {
    const user = userEvent.setup();
    render(<Desk />);
    await user.keyboard('?');
    const sheet = screen.getByRole('dialog', { name: 'Tasten' });
    expect(
      within(sheet)
        .getAllByRole('heading', { level: 3 })
        .map(({ textContent }) => textContent),
    ).toEqual([...['Wertungskarte', 'Wiederholungen', 'Messen', 'Bild', 'Einheiten und Clips', 'Überall']]);
    expect(within(sheet).getByRole('button', { name: 'Taste ändern für: Rückgängig' })).toBeTruthy();
  });

  it('find an action, or say that none matches', async () => {
    const user = userEvent.setup();
    render(<Desk />);
    await user.keyboard('/');
    const palette = screen.getByRole('dialog', { name: 'Aktion suchen' });
    await user.type(within(palette).getByRole('combobox', { name: 'Aktion eintippen' }), 'Problembericht');
    expect(within(palette).getByRole('option').textContent).toBe('Problembericht speichern');
    await user.type(within(palette).getByRole('combobox'), ' am Mond');
    expect(within(palette).getByText('Keine Aktion passt dazu.')).toBeTruthy();
  });
});

describe.each(languages)('a line of the palette (%s)', (language) => {
  // The line is 404 px wide: a letter of the text takes 7 px at most on average, one of a key 8 px and its frame 10.
  it('has room for the label and its key', () => {
    deskLanguage.getState().choose(language);
    const widths = commands.map((command) => {
      const key = keyWords({}, command);
      return { label: command.label(), widthPx: 7 * command.label().length + (key === '' ? 0 : 8 * key.length + 26) };
    });
    expect(widths.filter(({ widthPx }) => widthPx > 404)).toEqual([]);
  });
});

describe('an English desk', () => {
  it.each([
    ['delete', 'remove'],
    ['bar path', 'layerPath'],
    ['set-up', 'setUp'],
    ['closer', 'closer'],
    ['blur', 'cover'],
    ['step back', 'frameBack'],
    ['strip larger', 'stripCloser'],
    ['shortcuts', 'keySheet'],
    ['rest fine', 'fineRest'],
  ])('finds actions by neighbouring and by earlier words: %s', (typed, id) => {
    deskLanguage.getState().choose('en');
    expect(firstFor(typed)).toBe(id);
  });
});
