import { agreement as english } from '../../engine/wording/english/desk/agreement.ts';
import { agreement as german } from '../../engine/wording/german/desk/agreement.ts';
import { sayer } from './sayer.ts';

export const sayAgreement = sayer({ en: english, de: german });
