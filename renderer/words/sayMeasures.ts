import { measures as english } from '../../engine/wording/english/desk/measures.ts';
import { measures as german } from '../../engine/wording/german/desk/measures.ts';
import { sayer } from './sayer.ts';

export const sayMeasures = sayer({ en: english, de: german });
