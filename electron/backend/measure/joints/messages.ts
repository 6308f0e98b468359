import type { Body } from '../../../../engine/recording/recording.ts';
import type { Look } from './perceive.ts';

/** What goes to a worker, one at a time. */
export type Order = Look;

/** What comes back from it: once that it is ready, then an answer to each order. */
export type Report =
  | { readonly kind: 'ready' }
  | { readonly kind: 'body'; readonly body: Body | null }
  | { readonly kind: 'failed'; readonly reason: string };
