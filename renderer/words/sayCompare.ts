import { compare as english } from '../../engine/wording/english/desk/compare.ts';
import { compare as german } from '../../engine/wording/german/desk/compare.ts';
import { sayer } from './sayer.ts';

export const sayCompare = sayer({ en: english, de: german });
