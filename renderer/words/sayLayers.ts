import { layers as english } from '../../engine/wording/english/desk/layers.ts';
import { layers as german } from '../../engine/wording/german/desk/layers.ts';
import { sayer } from './sayer.ts';

export const sayLayers = sayer({ en: english, de: german });
