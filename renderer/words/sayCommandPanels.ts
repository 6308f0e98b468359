import { commandPanels as english } from '../../engine/wording/english/desk/commandPanels.ts';
import { commandPanels as german } from '../../engine/wording/german/desk/commandPanels.ts';
import { sayer } from './sayer.ts';

export const sayCommandPanels = sayer({ en: english, de: german });
