import { strip as english } from '../../engine/wording/english/desk/strip.ts';
import { strip as german } from '../../engine/wording/german/desk/strip.ts';
import { sayer } from './sayer.ts';

export const sayStrip = sayer({ en: english, de: german });
