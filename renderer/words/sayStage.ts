import { stage as english } from '../../engine/wording/english/desk/stage.ts';
import { stage as german } from '../../engine/wording/german/desk/stage.ts';
import { sayer } from './sayer.ts';

export const sayStage = sayer({ en: english, de: german });
