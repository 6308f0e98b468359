import type { Edition } from '../../../engine/edition/edition.ts';
import { placeId } from '../../../engine/names/hideName.ts';
import { isNameless } from '../../../engine/names/shownName.ts';
import type { NameDoubt } from '../../contract/names.ts';
import { ProblemError } from '../../contract/reply.ts';
import type { Context } from '../context/context.ts';
import { listNameDecisions } from '../store/nameDecisions.ts';
import { keptNarration } from '../store/narrations.ts';

/** What goes along besides texts: what was said over all clips of a session, or over one. */
export type Voices = 'none' | 'all' | { readonly clipId: string };

/** The places of a session of the library that may hold its trainee's hidden name, on which nobody has decided. */
export function nameDoubtsOf(context: Context, sessionId: string, edition: Edition, voices: Voices): NameDoubt[] {
  const clips = new Map(
    edition.source.review.entries.flatMap(({ clips, flags }) =>
      clips.flatMap(({ id, name, drawings = [] }) => {
        const of = [...flags.filter(({ clip }) => clip === id), ...drawings].map((one) => one.id);
        return [id, ...of].map((one) => [one, { id, name }] as const);
      }),
    ),
  );
  const texts = edition.nameDoubts.map(({ kind, of, place, before, word, after }) => ({
    ...{ kind, place, before, word, after },
    clip: clips.get(of) ?? null,
  }));
  return [...texts, ...voiceDoubts(context, sessionId, edition, voices)];
}

/** Narrations whose sound nobody has said to be free of the name. */
function voiceDoubts(context: Context, sessionId: string, { source, names }: Edition, voices: Voices): NameDoubt[] {
  if (voices === 'none' || names === 'full' || isNameless(source.review.trainee.name)) return [];
  const library = context.library();
  const decided = new Set(listNameDecisions(library.reading, sessionId).map(placeId));
  return source.review.entries.flatMap(({ clips }) =>
    clips.flatMap(({ id, name }): NameDoubt[] => {
      if (voices !== 'all' && voices.clipId !== id) return [];
      const sha256 = keptNarration(library, id)?.row.sha256;
      if (!sha256) return [];
      const place = { place: `voice/${id}`, before: '', word: sha256, after: '' };
      return decided.has(placeId(place)) ? [] : [{ ...place, kind: 'voice', clip: { id, name } }];
    }),
  );
}

/** Throws `conflict` while a session has places that may hold its trainee's hidden name: nothing of it leaves until somebody has looked. */
export function assertNamesClear(context: Context, sessionId: string, edition: Edition, voices: Voices): void {
  const doubts = nameDoubtsOf(context, sessionId, edition, voices);
  if (doubts.length === 0) return;
  const { trainee, session } = edition.source.review;
  const values = { trainee: trainee.name, date: session.date, count: doubts.length };
  throw new ProblemError('conflict', 'namesToCheck', values);
}
