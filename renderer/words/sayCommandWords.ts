import { commandWords as english } from '../../engine/wording/english/desk/commandWords.ts';
import { commandWords as german } from '../../engine/wording/german/desk/commandWords.ts';
import { sayer } from './sayer.ts';

export const sayCommandWords = sayer({ en: english, de: german });
