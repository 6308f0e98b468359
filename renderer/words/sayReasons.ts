import { reasons as english } from '../../engine/wording/english/desk/reasons.ts';
import { reasons as german } from '../../engine/wording/german/desk/reasons.ts';
import { sayer } from './sayer.ts';

export const sayReasons = sayer({ en: english, de: german });
