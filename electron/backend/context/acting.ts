import { type Library, readLibraryFacts } from '../store/library.ts';
import { findSummary } from '../store/summaries.ts';
import type { Context } from './context.ts';

/** The name that the change log gives to the person at the desk. */
export function actorName(library: Library): string {
  const { coach, voice } = readLibraryFacts(library.reading);
  return coach.trim() === '' ? voice : coach;
}

/** Tells that a session changed, and with it its line on the desk; after the commit only. */
export function tellChanged({ library, emit }: Pick<Context, 'emit' | 'library'>, sessionId: string): void {
  const { reading, folder } = library();
  emit({ name: 'sessionChanged', data: { sessionId, summary: findSummary(reading, folder, sessionId) } });
}
