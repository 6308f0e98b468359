import type { SessionSummary } from '../../electron/contract/desk.ts';
import type { SessionToHandOver } from '../state/handoverState.ts';

/** A session that can be handed over, as the desk knows it. */
export type HandoverRow = SessionToHandOver & { readonly session: SessionSummary };
