// @vitest-environment happy-dom
import { act, render, screen } from '@testing-library/react';
import { userEvent } from '@testing-library/user-event';
import { expect, test } from 'vitest';
import { AboutDialog } from '../../../renderer/shared/AboutDialog.tsx';
import { fakeRackside } from '../harness/fakeRackside.ts';

const program = { version: '1.2.3', ffmpeg: null, ffprobe: null, node: '24.0.0', onnxRuntime: '1.23.2' };
const about = {
  build: { commit: 'abc1234', date: '2026-11-30' },
  electron: '33.2.1',
  chromium: '130.0.1',
  isOutdated: true,
  dataFolder: '/home/ada/.config/Rackside',
};

async function asked(facts: typeof about) {
  const desk = fakeRackside(
    { 'about.get': () => program, 'about.notices': () => ({ text: 'thanks to all' }) },
    { 'about.runtime': () => facts },
  );
  render(<AboutDialog />);
  expect(screen.queryByRole('dialog')).toBeNull();
  act(() => desk.emit({ name: 'aboutAsked', data: {} }));
  return screen.findByRole('dialog', { name: 'About Rackside' });
}

test('asked in the menu, it says what runs, and that an old runtime is one', async () => {
  const dialog = await asked(about);
  for (const words of [
    'Version 1.2.3',
    'Build abc1234, 2026-11-30',
    'Electron 33.2.1, Chromium 130.0.1',
    'out of date',
  ]) {
    expect(dialog.textContent).toContain(words);
  }
  expect(dialog.textContent).toContain('never updates itself');
  await userEvent.click(screen.getByRole('button', { name: /notices/ }));
  expect((await screen.findByRole('region', { name: /notices/ })).textContent).toBe('thanks to all');
  expect(document.activeElement?.textContent).toBe('thanks to all');
  await userEvent.click(screen.getByRole('button', { name: 'Close' }));
  expect(screen.queryByRole('dialog')).toBeNull();
});

test('a present runtime gets no remark', async () => {
  const dialog = await asked({ ...about, isOutdated: false });
  expect(dialog.textContent).not.toContain('out of date');
});
