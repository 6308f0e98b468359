import { gradeTree as english } from '../../engine/wording/english/desk/gradeTree.ts';
import { gradeTree as german } from '../../engine/wording/german/desk/gradeTree.ts';
import { sayer } from './sayer.ts';

export const sayGradeTree = sayer({ en: english, de: german });
