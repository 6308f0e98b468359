import { scorecard as english } from '../../engine/wording/english/desk/scorecard.ts';
import { scorecard as german } from '../../engine/wording/german/desk/scorecard.ts';
import { sayer } from './sayer.ts';

export const sayScorecard = sayer({ en: english, de: german });
