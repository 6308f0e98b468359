import { covers as english } from '../../engine/wording/english/desk/covers.ts';
import { covers as german } from '../../engine/wording/german/desk/covers.ts';
import { sayer } from './sayer.ts';

export const sayCovers = sayer({ en: english, de: german });
