import { drawings as english } from '../../engine/wording/english/desk/drawings.ts';
import { drawings as german } from '../../engine/wording/german/desk/drawings.ts';
import { sayer } from './sayer.ts';

export const sayDrawings = sayer({ en: english, de: german });
