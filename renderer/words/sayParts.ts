import { parts as english } from '../../engine/wording/english/desk/parts.ts';
import { parts as german } from '../../engine/wording/german/desk/parts.ts';
import { sayer } from './sayer.ts';

export const sayParts = sayer({ en: english, de: german });
