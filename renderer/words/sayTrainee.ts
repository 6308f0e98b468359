import { trainee as english } from '../../engine/wording/english/desk/trainee.ts';
import { trainee as german } from '../../engine/wording/german/desk/trainee.ts';
import { sayer } from './sayer.ts';

export const sayTrainee = sayer({ en: english, de: german });
