import { handover as english } from '../../engine/wording/english/desk/handover.ts';
import { handover as german } from '../../engine/wording/german/desk/handover.ts';
import { sayer } from './sayer.ts';

export const sayHandover = sayer({ en: english, de: german });
