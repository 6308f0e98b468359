import { keyNames as english } from '../../engine/wording/english/desk/keyNames.ts';
import { keyNames as german } from '../../engine/wording/german/desk/keyNames.ts';
import { sayer } from './sayer.ts';

export const sayKeyNames = sayer({ en: english, de: german });
