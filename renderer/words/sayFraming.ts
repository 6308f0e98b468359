import { framing as english } from '../../engine/wording/english/desk/framing.ts';
import { framing as german } from '../../engine/wording/german/desk/framing.ts';
import { sayer } from './sayer.ts';

export const sayFraming = sayer({ en: english, de: german });
