import { commandButtons as english } from '../../engine/wording/english/desk/commandButtons.ts';
import { commandButtons as german } from '../../engine/wording/german/desk/commandButtons.ts';
import { sayer } from './sayer.ts';

export const sayCommandButtons = sayer({ en: english, de: german });
