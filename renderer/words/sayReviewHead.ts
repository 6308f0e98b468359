import { reviewHead as english } from '../../engine/wording/english/desk/reviewHead.ts';
import { reviewHead as german } from '../../engine/wording/german/desk/reviewHead.ts';
import { sayer } from './sayer.ts';

export const sayReviewHead = sayer({ en: english, de: german });
