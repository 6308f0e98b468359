import { firstStart as english } from '../../engine/wording/english/desk/firstStart.ts';
import { firstStart as german } from '../../engine/wording/german/desk/firstStart.ts';
import { sayer } from './sayer.ts';

export const sayFirstStart = sayer({ en: english, de: german });
