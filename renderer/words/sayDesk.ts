import { desk as english } from '../../engine/wording/english/desk/desk.ts';
import { desk as german } from '../../engine/wording/german/desk/desk.ts';
import { sayer } from './sayer.ts';

export const sayDesk = sayer({ en: english, de: german });
