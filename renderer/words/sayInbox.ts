import { inbox as english } from '../../engine/wording/english/desk/inbox.ts';
import { inbox as german } from '../../engine/wording/german/desk/inbox.ts';
import { sayer } from './sayer.ts';

export const sayInbox = sayer({ en: english, de: german });
