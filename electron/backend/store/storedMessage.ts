import * as v from 'valibot';
import { type Message, messageSchema } from '../../../engine/message/message.ts';

/** A message as the text that a column keeps. */
export const textOfMessage = ({ id, values }: Message): string => JSON.stringify({ id, values });

/** The message that a column keeps; a sentence that was stored before messages were is told as it is written. */
export function messageOfText(text: string): Message {
  if (!text.startsWith('{"id":')) return { id: 'asWritten', values: { sentence: text } };
  const parsed = v.safeParse(v.pipe(v.string(), v.parseJson(), messageSchema), text);
  return parsed.success ? parsed.output : { id: 'asWritten', values: { sentence: text } };
}
