import * as v from 'valibot';
import type { FromChild } from '../../contract/childMessages.ts';
import { type AnyEvent, events } from '../../contract/events.ts';
import { problemSchema, type Reply } from '../../contract/reply.ts';

const replySchema = v.variant('ok', [
  v.strictObject({ ok: v.literal(true), value: v.unknown() }),
  v.strictObject({ ok: v.literal(false), problem: problemSchema }),
]);

const messageSchema = v.variant('kind', [
  v.strictObject({ kind: v.literal('ready'), version: v.number() }),
  v.strictObject({ kind: v.literal('reply'), id: v.number(), reply: replySchema }),
  v.strictObject({ kind: v.literal('event'), event: v.strictObject({ name: v.string(), data: v.unknown() }) }),
  v.strictObject({ kind: v.literal('closed') }),
]);

/** Reads a message of the backend process; null for one that is not in the protocol. */
export function readFromChild(raw: unknown): FromChild | null {
  const read = v.safeParse(messageSchema, raw);
  if (!read.success) return null;
  const message = read.output;
  switch (message.kind) {
    case 'ready':
    case 'closed':
      return message;
    case 'reply':
      return { kind: 'reply', id: message.id, reply: message.reply satisfies Reply<unknown> };
    case 'event': {
      const event = readEvent(message.event.name, message.event.data);
      return event === null ? null : { kind: 'event', event };
    }
  }
}

function readEvent(name: string, data: unknown): AnyEvent | null {
  if (!isEventName(name)) return null;
  const read = v.safeParse(events[name], data);
  // The name chose the schema, which the type checker can't follow.
  return read.success ? ({ name, data: read.output } as AnyEvent) : null;
}

function isEventName(name: string): name is keyof typeof events {
  return Object.hasOwn(events, name);
}
