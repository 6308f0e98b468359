import { cameras as english } from '../../engine/wording/english/desk/cameras.ts';
import { cameras as german } from '../../engine/wording/german/desk/cameras.ts';
import { sayer } from './sayer.ts';

export const sayCameras = sayer({ en: english, de: german });
