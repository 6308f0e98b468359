import type { MenuItemConstructorOptions } from 'electron';
import { type Language, languageNames, languages } from '../../../engine/language/language.ts';
import { sayMenu } from './sayWindow.ts';

export type MenuParts = {
  readonly platform: string;
  readonly tools: 'with-tools' | 'without-tools';
  readonly language: Language;
  readonly chooseLanguage: (language: Language) => void;
  /** Folders of libraries that were opened before, the latest first. */
  readonly recentLibraries: readonly string[];
  /** Opens another library; null = the person is asked which. */
  readonly openLibrary: (folder: string | null) => void;
  readonly showAbout: () => void;
};

/**
 * The window's menu: only what the platform expects, and the language of the desk. The desk's own commands, undo among
 * them, belong to the page, which hears their keys first; on a Mac, text fields need the menu for theirs.
 */
export function menuTemplate({
  platform,
  tools,
  language,
  chooseLanguage,
  recentLibraries,
  openLibrary,
  showAbout,
}: MenuParts): MenuItemConstructorOptions[] {
  const mac = platform === 'darwin';
  const say = sayMenu(language);
  return [
    ...(mac ? [{ role: 'appMenu' as const }] : []),
    {
      label: say('file'),
      submenu: [
        { label: say('openLibrary'), click: () => openLibrary(null) },
        {
          label: say('recentLibraries'),
          enabled: recentLibraries.length > 0,
          // A single ampersand would mark a letter.
          submenu: recentLibraries.map((folder) => ({
            label: folder.replaceAll('&', '&&'),
            click: () => openLibrary(folder),
          })),
        },
        { type: 'separator' },
        mac ? { role: 'close', label: say('close') } : { role: 'quit', label: say('quit') },
      ],
    },
    {
      label: say('edit'),
      submenu: [
        ...(mac
          ? [
              { role: 'undo' as const, label: say('undo') },
              { role: 'redo' as const, label: say('redo') },
              { type: 'separator' as const },
            ]
          : []),
        { role: 'cut', label: say('cut') },
        { role: 'copy', label: say('copy') },
        { role: 'paste', label: say('paste') },
        { role: 'selectAll', label: say('selectAll') },
      ],
    },
    {
      label: say('view'),
      submenu: [
        { role: 'zoomIn', label: say('zoomIn') },
        { role: 'zoomOut', label: say('zoomOut') },
        { role: 'resetZoom', label: say('resetZoom') },
        { type: 'separator' },
        { role: 'togglefullscreen', label: say('fullScreen') },
        ...(tools === 'with-tools' ? [{ role: 'toggleDevTools' as const }] : []),
      ],
    },
    {
      label: say('language'),
      submenu: languages.map((one) => ({
        type: 'radio',
        label: languageNames[one],
        checked: one === language,
        click: () => chooseLanguage(one),
      })),
    },
    { label: say('help'), submenu: [{ label: say('about'), click: showAbout }] },
  ];
}
