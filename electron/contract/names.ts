import * as v from 'valibot';
import { writtenKinds } from '../../engine/edition/written.ts';
import { act, read } from './kinds.ts';
import { id, nameModeSchema, none } from './shapes.ts';

const words = v.pipe(v.string(), v.maxLength(400));

/** A place of a session's texts that may hold the trainee's name. */
export const namePlaceSchema = v.strictObject({
  /** Which text it is in: what it is, and of what. */
  place: v.pipe(v.string(), v.minLength(1), v.maxLength(120)),
  before: words,
  word: v.pipe(v.string(), v.minLength(1), v.maxLength(4000)),
  after: words,
});

export const nameDoubtSchema = v.strictObject({
  ...namePlaceSchema.entries,
  /** `voice`: what was said over a clip, which no program has listened to. */
  kind: v.picklist(writtenKinds),
  /** The clip it is about, and how that is called; null of the session or its letter. */
  clip: v.nullable(v.strictObject({ id, name: v.string() })),
});
export type NameDoubt = v.InferOutput<typeof nameDoubtSchema>;

/** Requests on names that are hidden in what leaves the desk. */
export const nameRequests = {
  /** Of each session, the places that may hold a hidden name and that nobody has decided on; sessions without any are left out. */
  'names.doubts': read({
    params: v.strictObject({
      sessionIds: v.pipe(v.array(id), v.maxLength(500)),
      /** How the trainee is named; as they want it where nothing is said. */
      names: v.optional(nameModeSchema),
      /** Whether what was said over clips goes along. */
      narrated: v.optional(v.boolean(), false),
    }),
    result: v.array(v.strictObject({ sessionId: id, doubts: v.array(nameDoubtSchema) })),
  }),
  /** Says of places whether they hold the name: then it is hidden there; else they stay as they are. */
  'names.decide': act({
    params: v.strictObject({
      sessionId: id,
      places: v.pipe(v.array(namePlaceSchema), v.minLength(1), v.maxLength(5000)),
      is: v.picklist(['name', 'noName']),
    }),
    result: none,
  }),
} as const;
