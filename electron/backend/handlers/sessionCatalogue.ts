import type { Catalogue } from '../../../engine/exercises/catalogue.ts';
import type { Context } from '../context/context.ts';
import { findSession } from '../store/sessions.ts';

/** The judging data of a session: under the version of the rubric that it is judged by. Throws `not-found`. */
export function sessionCatalogue(context: Context, sessionId: string): Catalogue {
  return context.catalogue(findSession(context.library().reading, sessionId).rubric_version);
}
