import { cautions as english } from '../../engine/wording/english/desk/cautions.ts';
import { cautions as german } from '../../engine/wording/german/desk/cautions.ts';
import { sayer } from './sayer.ts';

export const sayCautions = sayer({ en: english, de: german });
