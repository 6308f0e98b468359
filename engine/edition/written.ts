import type { TextKind } from '../names/findName.ts';
import type { Clip, Override, Review } from '../review/review.ts';

/** The texts of a session that a person wrote, by what they are of. */
export const writtenKinds = [
  'title',
  'notes',
  'painNote',
  'reason',
  'entryReason',
  'clipName',
  'drawnText',
  'note',
  'cue',
  'letter',
  'voice',
] as const;
export type WrittenKind = (typeof writtenKinds)[number];

/** Where a text stands: what it is, and of what, by its id; '' of the session itself. */
export type Written = { readonly kind: WrittenKind; readonly of: string };

/** A written place as one text, to be kept: "note/3f2…". */
export const writtenKey = ({ kind, of }: Written): string => `${kind}/${of}`;

/** What a text is made of where it stands. */
export const textKindOf = ({ kind }: Written): TextKind => (kind === 'clipName' ? 'fileName' : 'words');

/** A review with every text that a person wrote said anew; the letter's own words are not part of it. */
export function withWritten(review: Review, say: (text: string, where: Written) => string): Review {
  const override = (own: Override | undefined, where: Written) =>
    own && { override: { ...own, reason: say(own.reason, where) } };
  const clipSaid = ({ drawings, ...clip }: Clip): Clip => ({
    ...clip,
    name: say(clip.name, { kind: 'clipName', of: clip.id }),
    ...(drawings && {
      drawings: drawings.map((drawing) =>
        drawing.shape === 'text'
          ? { ...drawing, text: say(drawing.text, { kind: 'drawnText', of: drawing.id }) }
          : drawing,
      ),
    }),
  });
  const { session } = review;
  return {
    ...review,
    session: {
      ...session,
      title: say(session.title, { kind: 'title', of: '' }),
      notes: say(session.notes, { kind: 'notes', of: '' }),
      painNote: say(session.painNote, { kind: 'painNote', of: '' }),
      ...override(session.override, { kind: 'reason', of: '' }),
    },
    entries: review.entries.map((entry) => ({
      ...entry,
      ...override(entry.override, { kind: 'entryReason', of: entry.id }),
      clips: entry.clips.map(clipSaid),
      flags: entry.flags.map((flag) => ({
        ...flag,
        // What a suggestion says in its own words was written by nobody.
        note: flag.noteMessage ? flag.note : say(flag.note, { kind: 'note', of: flag.id }),
        cue: say(flag.cue, { kind: 'cue', of: flag.id }),
      })),
    })),
  };
}
