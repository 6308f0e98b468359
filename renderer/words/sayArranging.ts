import { arranging as english } from '../../engine/wording/english/desk/arranging.ts';
import { arranging as german } from '../../engine/wording/german/desk/arranging.ts';
import { sayer } from './sayer.ts';

export const sayArranging = sayer({ en: english, de: german });
