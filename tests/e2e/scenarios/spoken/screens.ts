import type { App } from '../../harness/app.ts';
import { clickCell, openReview, picture } from '../../harness/reviewScreen.ts';

/** A screen or dialog, how one comes to it from the one before, and the least that must be told there. */
export type ToldScreen = {
  readonly name: string;
  readonly open: () => Promise<void>;
  readonly leave: () => Promise<void>;
  /** "role: name" as the browser tells them. */
  readonly controls: readonly string[];
};

const nothing = async (): Promise<void> => {};

/** Every screen, from the desk through the review to the handover, each left for the next. */
export function screens(app: App): readonly ToldScreen[] {
  const { page } = app;
  const click = (name: string | RegExp) =>
    page
      .getByRole('button', { name, ...(typeof name === 'string' && { exact: true }) })
      .first()
      .click();
  const toDesk = async (): Promise<void> => {
    await click('Desk');
    await page.getByRole('heading', { name: 'Desk', exact: true }).waitFor();
  };
  const closeDialog = async (): Promise<void> => {
    await page.keyboard.press('Escape');
    await page.getByRole('dialog').waitFor({ state: 'detached' });
  };
  const dialog = (name: string, open: () => Promise<void>, controls: readonly string[]): ToldScreen => ({
    name,
    open: async () => {
      await open();
      await page.getByRole('dialog').waitFor();
    },
    leave: closeDialog,
    controls,
  });
  const press = (key: string) => page.keyboard.press(key);
  const fromDesk = (name: string, button: string | RegExp, controls: readonly string[]): ToldScreen => ({
    name,
    open: async () => {
      await click(button);
      await page.getByRole('button', { name: 'Desk', exact: true }).waitFor();
    },
    leave: toDesk,
    controls,
  });
  const mode = (name: string, key: string, shown: string, controls: readonly string[], leaveBy = 'Escape') => ({
    name,
    open: async () => {
      await press(key);
      await page.locator(shown).first().waitFor();
    },
    leave: async () => {
      await press(leaveBy);
      await page.locator(shown).first().waitFor({ state: 'detached' });
    },
    controls,
  });
  return [
    {
      name: 'desk',
      open: () =>
        page
          .getByRole('row', { name: /Robin Thale/ })
          .first()
          .waitFor(),
      leave: nothing,
      controls: ['heading: Desk', 'table: Sessions', 'button: Next up', 'button: Add session', 'button: Hand over'],
    },
    dialog('dialog: Add session', () => click('Add session'), [
      'heading: Add a session',
      'button: Cancel',
      'combobox: Trainee',
    ]),
    dialog('dialog: Settings', () => click('Settings'), ['heading: Settings']),
    dialog('palette', () => press('/'), ['combobox: Type an action']),
    dialog('keys', () => press('?'), ['heading: Keys', 'button: Reset all keys']),
    fromDesk('trainees', 'Trainees', ['heading: Trainees', 'table: Trainees']),
    fromDesk('bin', 'Bin', ['heading: Bin']),
    fromDesk('inbox', /^Inbox/, ['heading: Inbox']),
    fromDesk('agreement', 'Agreement', ['heading: Agreement']),
    {
      name: 'trainee',
      open: async () => {
        await click(/^History:/);
        await page.getByRole('heading', { name: 'Trends' }).waitFor();
      },
      leave: toDesk,
      controls: ['heading: Robin Thale', 'heading: Trends'],
    },
    fromDesk('handover', 'Hand over', ['heading: Hand over', 'table: Sessions to hand over', 'combobox: At each note']),
    {
      name: 'review',
      open: async () => {
        const { sessions } = await app.ask('desk.sessions', {});
        await openReview(app, sessions[0]?.id ?? '');
        await clickCell(app, 'depth', 1);
      },
      leave: nothing,
      controls: [
        ...['button: Play', 'button: Next frame', 'slider: Position in the clip', 'slider: Start of rep 1'],
        ...['grid: Scorecard', 'columnheader: Criterion', 'button: Correct', 'button: Letter', 'button: Undo'],
      ],
    },
    {
      name: 'fault list',
      open: async () => {
        await press('2');
        await page.locator('.fault-picker').waitFor();
      },
      leave: async () => {
        await press('Control+z');
        await page.locator('.fault-picker').waitFor({ state: 'detached' });
      },
      controls: ['combobox: Filter the faults'],
    },
    {
      name: 'measures',
      open: async () => {
        await press('t');
        await page.locator('.measures-panel').waitFor();
      },
      leave: async () => {
        await press('t');
        await page.locator('.scorecard').waitFor();
      },
      controls: [],
    },
    dialog('dialog: plan', () => click('Edit the plan'), ['button: Set by set…']),
    dialog('history', () => press('Control+h'), ['heading: History']),
    mode('picture menu', 'Shift+P', '.picture-menu [role="menu"]', []),
    mode('covers', 'Shift+B', 'section.covers', []),
    mode('large picture', 'z', '[data-large="true"]', ['button: Correct', 'button: Show the scorecard'], 'z'),
    {
      name: 'compare',
      open: async () => {
        await click('Compare');
        await page.locator('[data-testid="right-readout"][data-settled="true"]').waitFor();
      },
      leave: async () => {
        await click('Review');
        await picture(app);
      },
      controls: ['button: Play'],
    },
    {
      name: 'letter',
      open: async () => {
        await click('Letter');
        await page.getByRole('button', { name: 'Edit letter' }).waitFor();
      },
      leave: nothing,
      controls: ['button: Letter', 'button: Edit letter', 'button: Save', 'button: Hand over'],
    },
    {
      name: 'letter being edited',
      open: async () => {
        await click('Edit letter');
        await page
          .getByRole('button', { name: /^Edit: / })
          .first()
          .waitFor();
      },
      leave: () => click('Edit letter'),
      controls: [],
    },
    { name: 'sheet', open: () => click('Sheet'), leave: nothing, controls: ['Iframe: Preview: Sheet'] },
  ];
}
