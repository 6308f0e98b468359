import { app as english } from '../../engine/wording/english/desk/app.ts';
import { app as german } from '../../engine/wording/german/desk/app.ts';
import { sayer } from './sayer.ts';

export const sayApp = sayer({ en: english, de: german });
