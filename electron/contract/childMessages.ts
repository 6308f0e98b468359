import * as v from 'valibot';
import type { AnyEvent } from './events.ts';
import type { Reply } from './reply.ts';

/**
 * What the window's host and the backend say to each other when the backend is a process of its own.
 *
 * Order: the host starts the process and sends `open`; the backend answers `ready` once the library is open (or
 * known to be missing or damaged: `library.state` tells). From then on the host sends `ask` and gets one `reply`
 * with the same id for each, in any order; `event` comes unasked. After `close` the backend answers what it still
 * can, closes the library, sends `closed` and exits with 0. It also exits when the host goes away.
 */
export const toChildSchema = v.variant('kind', [
  v.strictObject({
    kind: v.literal('open'),
    settings: v.strictObject({
      libraryFolder: v.string(),
      appFolder: v.string(),
      library: v.optional(v.literal('known')),
    }),
  }),
  v.strictObject({
    kind: v.literal('ask'),
    id: v.number(),
    /** A request's name and params; the backend checks both against the table of requests. */
    name: v.string(),
    params: v.unknown(),
  }),
  v.strictObject({ kind: v.literal('close') }),
]);

/** From the host to the backend. */
export type ToChild = v.InferOutput<typeof toChildSchema>;

/** From the backend to the host. */
export type FromChild =
  | { readonly kind: 'ready'; readonly version: number }
  | { readonly kind: 'reply'; readonly id: number; readonly reply: Reply<unknown> }
  | { readonly kind: 'event'; readonly event: AnyEvent }
  | { readonly kind: 'closed' };

/** Raised when a message changes its shape; a host refuses a backend that speaks another version. */
export const childProtocolVersion = 2;
