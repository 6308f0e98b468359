import * as v from 'valibot';
import type { FromChild, ToChild } from '../../contract/childMessages.ts';
import { type AnyEvent, events } from '../../contract/events.ts';
import { problemSchema, type Reply } from '../../contract/reply.ts';

type Ask = Extract<ToChild, { kind: 'ask' }>;
type Send = (call: Ask) => void;
type Call = { readonly ask: Ask; readonly resolve: (reply: Reply<unknown>) => void; sent: boolean };

/** Questions on their way to the backend: waiting for it to be ready, or sent and not answered yet. */
export type PendingCalls = {
  /** Adds a question; `send` null = the backend is not ready, so it waits. */
  readonly add: (name: string, params: unknown, send: Send | null) => Promise<Reply<unknown>>;
  readonly sendWaiting: (send: Send) => void;
  readonly answer: (id: number, reply: Reply<unknown>) => void;
  readonly answerSent: (reply: Reply<unknown>) => void;
  readonly answerWaiting: (reply: Reply<unknown>) => void;
  readonly answerAll: (reply: Reply<unknown>) => void;
};

/** Keeps the questions to the backend until each is answered. */
export function createPendingCalls(): PendingCalls {
  const calls = new Map<number, Call>();
  let lastId = 0;

  const answerWhere = (wanted: (call: Call) => boolean, reply: Reply<unknown>): void => {
    for (const [id, call] of [...calls]) {
      if (!wanted(call)) continue;
      calls.delete(id);
      call.resolve(reply);
    }
  };

  return {
    add: (name, params, send) =>
      new Promise((resolve) => {
        lastId += 1;
        const call: Call = { ask: { kind: 'ask', id: lastId, name, params }, resolve, sent: send !== null };
        calls.set(lastId, call);
        send?.(call.ask);
      }),
    sendWaiting: (send) => {
      for (const call of calls.values()) {
        if (call.sent) continue;
        call.sent = true;
        send(call.ask);
      }
    },
    answer: (id, reply) => {
      const call = calls.get(id);
      calls.delete(id);
      call?.resolve(reply);
    },
    answerSent: (reply) => answerWhere((call) => call.sent, reply),
    answerWaiting: (reply) => answerWhere((call) => !call.sent, reply),
    answerAll: (reply) => answerWhere(() => true, reply),
  };
}

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
