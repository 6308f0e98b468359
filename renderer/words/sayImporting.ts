import { importing as english } from '../../engine/wording/english/desk/importing.ts';
import { importing as german } from '../../engine/wording/german/desk/importing.ts';
import { sayer } from './sayer.ts';

export const sayImporting = sayer({ en: english, de: german });
