import { history as english } from '../../engine/wording/english/desk/history.ts';
import { history as german } from '../../engine/wording/german/desk/history.ts';
import { sayer } from './sayer.ts';

export const sayHistory = sayer({ en: english, de: german });
