import { preferences as english } from '../../engine/wording/english/desk/preferences.ts';
import { preferences as german } from '../../engine/wording/german/desk/preferences.ts';
import { sayer } from './sayer.ts';

export const sayPreferences = sayer({ en: english, de: german });
