import { about as english } from '../../engine/wording/english/desk/about.ts';
import { about as german } from '../../engine/wording/german/desk/about.ts';
import { sayer } from './sayer.ts';

export const sayAbout = sayer({ en: english, de: german });
