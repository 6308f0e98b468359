import type { Courtesy } from '../giveWay.ts';
import type { NetworkRoute } from './networkRoute.ts';
import type { Seen } from './perceive.ts';

/** What a thread is told at its start. */
export type ThreadOrder = { readonly route: NetworkRoute; readonly courtesy: Courtesy };

/** What a look gives, and the time the thread worked on it. */
export type Looked = { readonly seen: Seen; readonly workedMs: number };
