import { letter as english } from '../../engine/wording/english/desk/letter.ts';
import { letter as german } from '../../engine/wording/german/desk/letter.ts';
import { sayer } from './sayer.ts';

export const sayLetter = sayer({ en: english, de: german });
