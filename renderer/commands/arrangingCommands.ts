import type { SessionSummary } from '../../electron/contract/desk.ts';
import type { Clip, Entry, Review } from '../../engine/review/review.ts';
import { mutate } from '../bridge/mutate.ts';
import { arrangingState } from '../shared/arranging/arrangingState.ts';
import { removeClip, removeEntry, removeSession } from '../shared/arranging/removing.ts';
import { sayReasons } from '../words/sayReasons.ts';
import { type Availability, allOf, available, type Command, type CommandContext, unavailable } from './command.ts';
import { named } from './named.ts';

/** A clip with all that it stands in. */
export type ClipAtHand = {
  readonly kind: 'clip';
  readonly clip: Clip;
  readonly entry: Entry;
  readonly review: Review;
  readonly sessionId: string;
  readonly readOnly: boolean;
};

/** What arranging speaks of: on the desk the session whose row had the focus last, in the review the clip on the stage. */
export type AtHand = { readonly kind: 'session'; readonly session: SessionSummary } | ClipAtHand;

export type ArrangingContext = CommandContext & { readonly atHand: AtHand | null };

const nothing = (): Availability => unavailable(sayReasons('nothingAtHand'));

const isWritable = (atHand: AtHand): Availability =>
  (atHand.kind === 'session' ? atHand.session.readOnly : atHand.readOnly)
    ? unavailable(sayReasons('fromAnotherCoach'))
    : available;

const canChange = ({ atHand }: ArrangingContext): Availability => (atHand === null ? nothing() : isWritable(atHand));

const { ask } = arrangingState.getState();

const rename: Command<ArrangingContext> = {
  ...named('rename'),
  group: 'arranging',
  keys: ['F2'],
  readOnly: 'allowed',
  when: canChange,
  run: ({ atHand }) => {
    if (atHand?.kind === 'session') ask({ kind: 'renameSession', session: atHand.session });
    if (atHand?.kind === 'clip') ask({ kind: 'renameClip', clip: atHand.clip });
  },
};

const moveTo: Command<ArrangingContext> = {
  ...named('moveTo'),
  group: 'arranging',
  keys: ['F6'],
  readOnly: 'allowed',
  // Whose session it is may be put right even where its judgement is only read.
  when: (context) => (context.atHand?.kind === 'session' ? available : canChange(context)),
  run: ({ atHand }) => {
    if (atHand?.kind === 'session') ask({ kind: 'moveSession', session: atHand.session });
    if (atHand?.kind === 'clip') ask({ ...atHand, kind: 'moveClip' });
  },
};

/** Entries of one exercise in one session, or sessions of one trainee and day. */
const mergeWith: Command<ArrangingContext> = {
  ...named('mergeWith'),
  group: 'arranging',
  keys: ['Mod+J'],
  readOnly: 'allowed',
  when: (context) => allOf(canChange(context), hasAnother(context)),
  run: async ({ atHand }) => {
    if (atHand?.kind === 'session') ask({ kind: 'mergeSession', session: atHand.session });
    const into = atHand?.kind === 'clip' ? otherEntry(atHand) : undefined;
    if (atHand?.kind === 'clip' && into !== undefined) {
      await mutate('entries.merge', { entryId: atHand.entry.id, into: into.id });
    }
  },
};

const hasAnother = ({ atHand }: ArrangingContext): Availability =>
  atHand?.kind === 'clip' && otherEntry(atHand) === undefined ? unavailable(sayReasons('noOtherEntry')) : available;

const otherEntry = ({ review, entry }: ClipAtHand): Entry | undefined =>
  review.entries.find(({ id, exercise }) => id !== entry.id && exercise === entry.exercise);

const removeIt: Command<ArrangingContext> = {
  ...named('removeIt'),
  group: 'arranging',
  keys: ['F8'],
  readOnly: 'allowed',
  when: (context) => (context.atHand?.kind === 'session' ? available : canChange(context)),
  run: async ({ atHand }) => {
    if (atHand?.kind === 'session') await removeSession(atHand.session);
    if (atHand?.kind === 'clip') await removeClip(atHand.sessionId, atHand.clip);
  },
};

/** What can be done with a session on the desk, and with a clip in the review, in the order of their menus. */
export const arrangingCommands: readonly Command<ArrangingContext>[] = [rename, moveTo, mergeWith, removeIt];

/** The clip at hand; null on the desk. */
const clipAtHand = ({ atHand }: ArrangingContext): ClipAtHand | null => (atHand?.kind === 'clip' ? atHand : null);

const clipExercise: Command<ArrangingContext> = {
  ...named('clipExercise'),
  group: 'arranging',
  keys: ['Mod+E'],
  readOnly: 'refused',
  when: canChange,
  run: (context) => {
    const atHand = clipAtHand(context);
    if (atHand !== null) ask({ ...atHand, kind: 'clipExercise' });
  },
};

/** Where something of a list would stand one place on; undefined at the list's end. `before` is what it stands in front of. */
function shifted(
  list: readonly { readonly id: string }[],
  id: string,
  by: -1 | 1,
): { readonly before: string | null } | undefined {
  const at = list.findIndex((one) => one.id === id) + by;
  if (at < 0 || at >= list.length) return undefined;
  return { before: (by < 0 ? list[at] : list[at + 1])?.id ?? null };
}

const shiftClip = (id: 'clipEarlier' | 'clipLater', key: string, by: -1 | 1): Command<ArrangingContext> => ({
  ...named(id),
  group: 'arranging',
  keys: [key],
  readOnly: 'refused',
  when: (context) => {
    const atHand = clipAtHand(context);
    if (atHand === null) return nothing();
    const to = shifted(atHand.entry.clips, atHand.clip.id, by);
    return to === undefined ? unavailable(sayReasons(by < 0 ? 'firstOfExercise' : 'lastOfExercise')) : available;
  },
  run: async (context) => {
    const atHand = clipAtHand(context);
    const to = atHand && shifted(atHand.entry.clips, atHand.clip.id, by);
    if (atHand === null || to === null || to === undefined) return;
    await mutate('clips.move', { clipId: atHand.clip.id, to: { kind: 'entry', entryId: atHand.entry.id, ...to } });
  },
});

const shiftEntry = (id: 'entryEarlier' | 'entryLater', key: string, by: -1 | 1): Command<ArrangingContext> => ({
  ...named(id),
  group: 'arranging',
  keys: [key],
  readOnly: 'refused',
  when: (context) => {
    const atHand = clipAtHand(context);
    if (atHand === null) return nothing();
    const to = shifted(atHand.review.entries, atHand.entry.id, by);
    return to === undefined ? unavailable(sayReasons(by < 0 ? 'firstExercise' : 'lastExercise')) : available;
  },
  run: async (context) => {
    const atHand = clipAtHand(context);
    const to = atHand && shifted(atHand.review.entries, atHand.entry.id, by);
    if (atHand === null || to === null || to === undefined) return;
    await mutate('entries.move', { entryId: atHand.entry.id, ...to });
  },
});

const moveEntry: Command<ArrangingContext> = {
  ...named('moveEntry'),
  group: 'arranging',
  keys: ['Shift+F6'],
  readOnly: 'refused',
  when: canChange,
  run: (context) => {
    const atHand = clipAtHand(context);
    if (atHand !== null) ask({ kind: 'moveEntry', entry: atHand.entry, sessionId: atHand.sessionId });
  },
};

const removeWholeEntry: Command<ArrangingContext> = {
  ...named('removeEntry'),
  group: 'arranging',
  keys: ['Shift+F8'],
  readOnly: 'refused',
  when: canChange,
  run: async (context) => {
    const atHand = clipAtHand(context);
    if (atHand !== null) await removeEntry(atHand.sessionId, atHand.entry);
  },
};

export const parked: Command<ArrangingContext> = {
  ...named('parked'),
  group: 'arranging',
  keys: [],
  readOnly: 'refused',
  when: canChange,
  run: (context) => {
    const atHand = clipAtHand(context);
    if (atHand !== null) ask({ kind: 'parked', sessionId: atHand.sessionId });
  },
};

/** What can be done with a clip, in the order of its menu. */
export const clipMenu: readonly Command<ArrangingContext>[] = [
  rename,
  clipExercise,
  moveTo,
  shiftClip('clipEarlier', 'Mod+Shift+ArrowLeft', -1),
  shiftClip('clipLater', 'Mod+Shift+ArrowRight', 1),
  removeIt,
];

/** What can be done with the exercise of a clip, in the order of its menu. */
export const entryMenu: readonly Command<ArrangingContext>[] = [
  shiftEntry('entryEarlier', 'F9', -1),
  shiftEntry('entryLater', 'Shift+F9', 1),
  moveEntry,
  mergeWith,
  parked,
  removeWholeEntry,
];
