import { findSummary } from '../store/summaries.ts';
import type { Context } from './context.ts';

/** Tells that a session changed, and with it its line on the desk; after the commit only. */
export function tellChanged({ library, emit }: Pick<Context, 'emit' | 'library'>, sessionId: string): void {
  const { reading, folder } = library();
  emit({ name: 'sessionChanged', data: { sessionId, summary: findSummary(reading, folder, sessionId) } });
}
