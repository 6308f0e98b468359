import { expect, test, vi } from 'vitest';
import { menuTemplate } from '../../../../electron/main/window/menu.ts';

const quiet = {
  language: 'en',
  chooseLanguage: () => undefined,
  recentLibraries: [],
  openLibrary: () => undefined,
  showAbout: () => undefined,
} as const;

const roles = (platform: string, tools: 'with-tools' | 'without-tools') =>
  menuTemplate({ ...quiet, platform, tools }).flatMap((item) => {
    const inner = Array.isArray(item.submenu) ? item.submenu : [];
    return [item.role, ...inner.map((entry) => entry.role)].filter((role) => role !== undefined);
  });

test("undo's key reaches the page, whose undo is the desk's", () => {
  for (const platform of ['linux', 'win32']) expect(roles(platform, 'without-tools')).not.toContain('undo');
});

test('the developer tools are there only where they are wanted', () => {
  expect(roles('linux', 'without-tools')).not.toContain('toggleDevTools');
  expect(roles('linux', 'with-tools')).toContain('toggleDevTools');
});

test('nothing loads the page anew by accident', () => {
  for (const platform of ['linux', 'darwin']) expect(roles(platform, 'with-tools')).not.toContain('reload');
});

test('the language of the desk is chosen in the menu, each by its own name, in either language', () => {
  for (const [language, menu] of [
    ['en', '&Language'],
    ['de', '&Sprache'],
  ] as const) {
    const chooseLanguage = vi.fn();
    const template = menuTemplate({
      ...quiet,
      platform: 'linux',
      tools: 'without-tools',
      language,
      chooseLanguage,
    });
    const { submenu } = template.find(({ label }) => label === menu) ?? {};
    const choices = Array.isArray(submenu) ? submenu : [];
    expect(choices.map(({ label, checked }) => [label, checked])).toEqual([
      ['English', language === 'en'],
      ['Deutsch', language === 'de'],
    ]);
    choices[1]?.click?.({} as never, undefined, {} as never);
    expect(chooseLanguage).toHaveBeenCalledExactlyOnceWith('de');
  }
});

test('libraries that were opened before are in the file menu, and another one can be looked for', () => {
  const openLibrary = vi.fn();
  const template = menuTemplate({
    ...quiet,
    platform: 'linux',
    tools: 'without-tools',
    recentLibraries: ['/home/ada/Squat & Press', '/media/stick/library'],
    openLibrary,
  });
  const file = template[0]?.submenu;
  const [another, recent] = Array.isArray(file) ? file : [];
  const listed = Array.isArray(recent?.submenu) ? recent.submenu : [];
  // In a menu, a single "&" marks a letter and is not shown.
  expect(listed.map(({ label }) => label)).toEqual(['/home/ada/Squat && Press', '/media/stick/library']);
  listed[0]?.click?.({} as never, undefined, {} as never);
  another?.click?.({} as never, undefined, {} as never);
  expect(openLibrary.mock.calls).toEqual([['/home/ada/Squat & Press'], [null]]);
});

test('what the program is can be asked in the help menu', () => {
  const showAbout = vi.fn();
  const template = menuTemplate({ ...quiet, platform: 'linux', tools: 'without-tools', showAbout });
  const help = template.at(-1)?.submenu;
  const [about] = Array.isArray(help) ? help : [];
  expect(about?.label).toBe('About Rackside');
  about?.click?.({} as never, undefined, {} as never);
  expect(showAbout).toHaveBeenCalledOnce();
});
