import { patterns as english } from '../../engine/wording/english/desk/patterns.ts';
import { patterns as german } from '../../engine/wording/german/desk/patterns.ts';
import { sayer } from './sayer.ts';

export const sayPatterns = sayer({ en: english, de: german });
