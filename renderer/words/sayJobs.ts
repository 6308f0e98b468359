import { jobs as english } from '../../engine/wording/english/desk/jobs.ts';
import { jobs as german } from '../../engine/wording/german/desk/jobs.ts';
import { sayer } from './sayer.ts';

export const sayJobs = sayer({ en: english, de: german });
