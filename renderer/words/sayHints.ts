import { hints as english } from '../../engine/wording/english/desk/hints.ts';
import { hints as german } from '../../engine/wording/german/desk/hints.ts';
import { sayer } from './sayer.ts';

export const sayHints = sayer({ en: english, de: german });
