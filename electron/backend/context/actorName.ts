import { type Library, readLibraryFacts } from '../store/library.ts';

/** The name that the change log gives to the person at the desk. */
export function actorName(library: Library): string {
  const { coach, voice } = readLibraryFacts(library.reading);
  return coach.trim() === '' ? voice : coach;
}
