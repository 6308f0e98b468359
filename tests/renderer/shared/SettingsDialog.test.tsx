// @vitest-environment happy-dom
import { render, screen } from '@testing-library/react';
import { userEvent } from '@testing-library/user-event';
import { beforeEach, describe, expect, it } from 'vitest';
import { SettingsDialog } from '../../../renderer/shared/settings/SettingsDialog.tsx';
import { settingsState } from '../../../renderer/state/settingsState.ts';
import { usualSettings } from '../../electron/contract/usualSettings.ts';
import { changed, fakeRackside } from '../harness/fakeRackside.ts';
import { startAfresh } from '../harness/startAfresh.ts';

const answers = {
  'settings.get': () => usualSettings,
  'settings.damaged': () => false,
  'settings.change': () => changed,
};

describe('the settings', () => {
  beforeEach(() => startAfresh(settingsState));

  it('keeps what is changed at once, and leaves the rest', async () => {
    const user = userEvent.setup();
    const page = fakeRackside(answers);
    render(<SettingsDialog onClose={() => {}} />);
    await user.click(await screen.findByRole('checkbox', { name: 'Measure new clips automatically' }));
    const days = screen.getByRole('textbox', { name: /Back within/ });
    await user.clear(days);
    await user.type(days, '5{Enter}');
    expect(page.askedFor('settings.change')).toEqual([{ measureByItself: false }, { daysPromised: 5 }]);
  });

  it('puts a promise that can’t be meant back as it was', async () => {
    const user = userEvent.setup();
    const page = fakeRackside(answers);
    render(<SettingsDialog onClose={() => {}} />);
    const days = await screen.findByRole('textbox', { name: /Back within/ });
    for (const unmeant of ['0', '1.5', '61', 'soon']) {
      await user.clear(days);
      await user.type(days, `${unmeant}{Enter}`);
      expect(days).toHaveProperty('value', '3');
    }
    expect(page.askedFor('settings.change')).toEqual([]);
  });
});
