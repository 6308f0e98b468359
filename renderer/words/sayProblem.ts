import type { Undelivered } from '../../electron/contract/handover.ts';
import type { Message } from '../../engine/message/message.ts';
import { sayProblem as sayIn } from '../../engine/wording/sayProblem.ts';
import { deskLanguage } from './deskLanguage.ts';

/** What a problem says in the desk's language: what happened, what is safe, what to do. */
export const sayProblem = ({ message }: { readonly message: Message }): string =>
  sayIn(message, deskLanguage.getState().language);

/** Why something could not be delivered; in English where it was kept before there was a German desk. */
export const sayUndelivered = ({ message, sentence }: Undelivered): string =>
  message === undefined ? sentence : sayProblem({ message });
