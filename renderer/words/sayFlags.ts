import { flags as english } from '../../engine/wording/english/desk/flags.ts';
import { flags as german } from '../../engine/wording/german/desk/flags.ts';
import { sayer } from './sayer.ts';

export const sayFlags = sayer({ en: english, de: german });
