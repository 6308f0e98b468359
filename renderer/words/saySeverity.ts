import { severity as english } from '../../engine/wording/english/desk/severity.ts';
import { severity as german } from '../../engine/wording/german/desk/severity.ts';
import { sayer } from './sayer.ts';

export const saySeverity = sayer({ en: english, de: german });
