import { commands as english } from '../../engine/wording/english/desk/commands.ts';
import { commands as german } from '../../engine/wording/german/desk/commands.ts';
import { sayer } from './sayer.ts';

export const sayCommands = sayer({ en: english, de: german });
