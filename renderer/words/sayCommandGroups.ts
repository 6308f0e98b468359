import { commandGroups as english } from '../../engine/wording/english/desk/commandGroups.ts';
import { commandGroups as german } from '../../engine/wording/german/desk/commandGroups.ts';
import { sayer } from './sayer.ts';

export const sayCommandGroups = sayer({ en: english, de: german });
