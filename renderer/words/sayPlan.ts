import { plan as english } from '../../engine/wording/english/desk/plan.ts';
import { plan as german } from '../../engine/wording/german/desk/plan.ts';
import { sayer } from './sayer.ts';

export const sayPlan = sayer({ en: english, de: german });
