import { narration as english } from '../../engine/wording/english/desk/narration.ts';
import { narration as german } from '../../engine/wording/german/desk/narration.ts';
import { sayer } from './sayer.ts';

export const sayNarration = sayer({ en: english, de: german });
