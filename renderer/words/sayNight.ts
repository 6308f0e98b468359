import { night as english } from '../../engine/wording/english/desk/night.ts';
import { night as german } from '../../engine/wording/german/desk/night.ts';
import { sayer } from './sayer.ts';

export const sayNight = sayer({ en: english, de: german });
