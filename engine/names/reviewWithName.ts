import type { Clip, Override, Review } from '../review/review.ts';
import { type NameMode, nameHider, shownName } from './shownName.ts';

/**
 * A review as it may leave the desk: the trainee named as they want it wherever words stand, and no clip says where on
 * a disk its footage is.
 */
export function reviewWithName(review: Review, mode: NameMode): Review {
  const hide = nameHider(review.trainee.name, mode);
  const override = (own: Override | undefined) => own && { override: { ...own, reason: hide(own.reason) } };
  const clipWithName = ({ path: _, drawings, ...clip }: Clip): Clip => ({
    ...clip,
    name: hide(clip.name, { anyCase: true }),
    ...(drawings && {
      drawings: drawings.map((drawing) =>
        drawing.shape === 'text' ? { ...drawing, text: hide(drawing.text) } : drawing,
      ),
    }),
  });
  return {
    ...review,
    trainee: { ...review.trainee, name: shownName(review.trainee.name, mode) },
    session: {
      ...review.session,
      title: hide(review.session.title, { anyCase: true }),
      notes: hide(review.session.notes),
      painNote: hide(review.session.painNote),
      ...override(review.session.override),
    },
    entries: review.entries.map((entry) => ({
      ...entry,
      ...override(entry.override),
      clips: entry.clips.map(clipWithName),
      flags: entry.flags.map((flag) => ({ ...flag, note: hide(flag.note), cue: hide(flag.cue) })),
    })),
  };
}
