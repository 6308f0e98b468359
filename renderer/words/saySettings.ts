import { settings as english } from '../../engine/wording/english/desk/settings.ts';
import { settings as german } from '../../engine/wording/german/desk/settings.ts';
import { sayer } from './sayer.ts';

export const saySettings = sayer({ en: english, de: german });
