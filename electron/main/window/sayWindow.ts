import type { Language } from '../../../engine/language/language.ts';
import { type DialogsMessageId, dialogs as englishDialogs } from '../../../engine/wording/english/desk/dialogs.ts';
import { menu as englishMenu, type MenuMessageId } from '../../../engine/wording/english/desk/menu.ts';
import { dialogs as germanDialogs } from '../../../engine/wording/german/desk/dialogs.ts';
import { menu as germanMenu } from '../../../engine/wording/german/desk/menu.ts';
import { type Say, sayerOf } from '../../../engine/wording/wordings.ts';

/** Says what stands in the window's menu. */
export const sayMenu = (language: Language): Say<MenuMessageId> =>
  sayerOf({ en: englishMenu, de: germanMenu }, language);

/** Says what stands in the system's own dialogs. */
export const sayDialogs = (language: Language): Say<DialogsMessageId> =>
  sayerOf({ en: englishDialogs, de: germanDialogs }, language);
