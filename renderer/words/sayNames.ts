import { names as english } from '../../engine/wording/english/desk/names.ts';
import { names as german } from '../../engine/wording/german/desk/names.ts';
import { sayer } from './sayer.ts';

export const sayNames = sayer({ en: english, de: german });
