import type { Message } from '../../engine/message/message.ts';
import { sayAction } from '../../engine/wording/sayAction.ts';
import { catalogueState } from '../state/catalogueState.ts';
import { deskLanguage } from '../words/deskLanguage.ts';

/** What an action is called in the desk's language, with the names of the judging data on screen. */
export const sayActionName = (name: Message): string =>
  sayAction(name, deskLanguage.getState().language, catalogueState.getState().catalogue);
