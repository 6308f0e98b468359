import { setUp as english } from '../../engine/wording/english/desk/setUp.ts';
import { setUp as german } from '../../engine/wording/german/desk/setUp.ts';
import { sayer } from './sayer.ts';

export const saySetUp = sayer({ en: english, de: german });
