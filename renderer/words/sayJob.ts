import type { Message } from '../../engine/message/message.ts';
import { sayJob as sayIn } from '../../engine/wording/sayJob.ts';
import { deskLanguage } from './deskLanguage.ts';

/** What a job is called, what it is doing, or why it failed, in the desk's language. */
export const sayJob = (message: Message): string => sayIn(message, deskLanguage.getState().language);
