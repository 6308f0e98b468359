import * as v from 'valibot';
import type { Caution, Translation } from '../../engine/exercises/catalogue.ts';
import type { Exercise } from '../../engine/exercises/exercise.ts';
import { languageSchema } from '../../engine/language/language.ts';
import { messageSchema } from '../../engine/message/message.ts';
import type { Rubric } from '../../engine/rubric/rubric.ts';
import { act, host, read } from './kinds.ts';
import { engineType, filePath, id, none } from './shapes.ts';

export const voiceSchema = v.picklist(['coach', 'self']);
export type Voice = v.InferOutput<typeof voiceSchema>;

export const libraryStateSchema = v.variant('kind', [
  /** No library in the data folder yet: first start. */
  v.strictObject({ kind: v.literal('none') }),
  v.strictObject({ kind: v.literal('open'), folder: v.string(), voice: voiceSchema, coach: v.string() }),
  /** The library can't be opened; nothing was changed. */
  v.strictObject({ kind: v.literal('failed'), message: messageSchema }),
]);
export type LibraryState = v.InferOutput<typeof libraryStateSchema>;

/** What a person sees as a list, which a fault of the disk can make wrong. */
export const damagedLists = ['trainees', 'sessions', 'inbox'] as const;
export type DamagedList = (typeof damagedLists)[number];

/** Requests on the library as a whole, and on the judging data that ships with the app. */
export const libraryRequests = {
  'library.state': read({ params: none, result: libraryStateSchema }),
  /** First start: a new library, empty or with the demo session; the demo is made by a job. */
  'library.create': act({
    params: v.strictObject({
      contents: v.picklist(['demo', 'empty']),
      voice: voiceSchema,
      coach: v.optional(v.string(), ''),
    }),
    result: v.strictObject({ jobId: v.nullable(id) }),
  }),
  /** Adds the demo session; it is made by a job. */
  'library.addDemo': act({ params: none, result: v.strictObject({ jobId: id }) }),
  /** The lists of which something was changed or taken away on the disk by a fault, so that they may show wrong lines. */
  'library.damage': read({ params: none, result: v.array(v.picklist(damagedLists)) }),
  'library.verify': read({
    params: none,
    result: v.strictObject({
      sound: v.boolean(),
      findings: v.array(v.string()),
      clips: v.number(),
      sessions: v.number(),
    }),
  }),
  /** Writes versions, what `verify` finds and the log to a path, without names or footage. */
  'report.write': host({
    params: v.strictObject({ path: filePath }),
    result: v.strictObject({ path: filePath }),
  }),
  /** The judging data under a version of the rubric, under the newest without one; in English without a language. */
  'catalogue.get': read({
    params: v.strictObject({
      version: v.optional(v.pipe(v.number(), v.integer(), v.minValue(1))),
      language: v.optional(languageSchema),
    }),
    result: v.strictObject({
      rubric: engineType<Rubric>(),
      exercises: v.array(engineType<Exercise>()),
      cautions: v.array(engineType<Caution>()),
      /** The names of the exercises in other languages. */
      translations: v.array(engineType<Translation>()),
      /** The versions of the rubric there are, ascending. */
      rubricVersions: v.array(v.number()),
    }),
  }),
} as const;

export const libraryWindowRequests = {
  /** Asks where to save, then writes a problem report; `path` null = the person changed their mind. */
  'report.save': { params: none, result: v.strictObject({ path: v.nullable(v.string()) }) },
} as const;
