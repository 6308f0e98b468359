import { grade as english } from '../../engine/wording/english/desk/grade.ts';
import { grade as german } from '../../engine/wording/german/desk/grade.ts';
import { sayer } from './sayer.ts';

export const sayGrade = sayer({ en: english, de: german });
