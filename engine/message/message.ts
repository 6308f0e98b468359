import * as v from 'valibot';

/** A value set into a message: words, an id, a number, or several of these as a list. */
export type MessageValue = string | number | readonly (string | number)[];

/** What goes into a message, by name. */
export type MessageValues = Readonly<Record<string, MessageValue>>;

/**
 * Something said to people, kept as data until it is shown, printed or written: which message, and the values that go
 * into it. What it says in a language stands in `engine/wording`.
 */
export type Message<Id extends string = string> = {
  readonly id: Id;
  readonly values: MessageValues;
};

const oneValue = v.union([v.string(), v.number()]);

/** A message as it is stored or sent between processes. */
export const messageSchema: v.GenericSchema<unknown, Message> = v.strictObject({
  id: v.string(),
  values: v.record(v.string(), v.union([oneValue, v.array(oneValue)])),
});
