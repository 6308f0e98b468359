import type { Review } from '../review/review.ts';

/** A review with ids of its own for what is called by an id that `tells`: files may call a clip after the trainee. */
export function withPlainIds(review: Review, tells: (id: string) => boolean): Review {
  const renamed = new Map<string, string>();
  const plain =
    (what: string) =>
    (id: string): string => {
      if (!tells(id)) return id;
      const key = `${what} ${id}`;
      const known = renamed.get(key) ?? `${what}-${renamed.size + 1}`;
      renamed.set(key, known);
      return known;
    };
  const clipId = plain('clip');
  const flagId = plain('flag');
  return {
    ...review,
    session: { ...review.session, id: plain('session')(review.session.id) },
    entries: review.entries.map((entry) => ({
      ...entry,
      id: plain('entry')(entry.id),
      clips: entry.clips.map((clip) => ({
        ...clip,
        id: clipId(clip.id),
        ...(clip.sameSet && { sameSet: { ...clip.sameSet, clip: clipId(clip.sameSet.clip) } }),
        ...(clip.drawings && {
          drawings: clip.drawings.map((drawing) => ({ ...drawing, id: plain('drawing')(drawing.id) })),
        }),
      })),
      flags: entry.flags.map((flag) => ({ ...flag, id: flagId(flag.id), clip: clipId(flag.clip) })),
      ticks: entry.ticks.map((tick) => ({ ...tick, clip: clipId(tick.clip) })),
    })),
  };
}
