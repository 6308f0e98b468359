import * as v from 'valibot';
import {
  choiceSchema,
  exerciseBases,
  loadBases,
  sessionBases,
  traineeBases,
  viewBases,
} from '../../engine/arrival/arrival.ts';
import { viewSchema } from '../../engine/exercises/exercise.ts';
import { messageSchema } from '../../engine/message/message.ts';
import { act, host, read } from './kinds.ts';
import { filePath, id, isoDate, isoTime, keptDate, name, none } from './shapes.ts';

const ownerSchema = v.variant('kind', [
  v.strictObject({ kind: v.literal('known'), traineeId: id }),
  v.strictObject({ kind: v.literal('new'), name }),
]);

const guess = <T extends v.GenericSchema, const B extends readonly [string, ...string[]]>(value: T, bases: B) =>
  v.nullable(v.strictObject({ value, basis: v.picklist(bases) }));

/** Where a file of the inbox would go, each part with what it rests on; null = nothing is known. */
export const placementSchema = v.strictObject({
  trainee: guess(ownerSchema, traineeBases),
  session: guess(v.strictObject({ id: v.nullable(id), date: keptDate }), sessionBases),
  exercise: guess(v.string(), exerciseBases),
  view: guess(v.nullable(viewSchema), viewBases),
  loadKg: guess(v.nullable(v.number()), loadBases),
});

const inboxFileSchema = v.strictObject({
  arrivalId: id,
  name: v.string(),
  /** Where the file lay. */
  folder: v.string(),
  /** `stopped`: reading it was called off. */
  state: v.picklist(['waiting', 'read', 'failed', 'stopped']),
  /** Why it could not be read, as `sayProblem` says it. */
  trouble: v.nullable(messageSchema),
  recordedAt: isoTime,
  /** Whether the film itself says when it was made, or only its file. */
  recordedBy: v.picklist(['film', 'file']),
  /** Null until it has been read. */
  durationUs: v.nullable(v.number()),
  hasPoster: v.boolean(),
  filmstripPictures: v.number(),
  /** Where the library has the same film already. */
  twins: v.array(v.strictObject({ sessionId: id, traineeName: v.string(), date: keptDate, exercise: v.string() })),
  /** The name of the file of the inbox that holds the same film and came before it; null where it is the first. */
  sameAs: v.nullable(v.string()),
  /** It is to come in although the library holds the same film. */
  anyway: v.boolean(),
  placement: placementSchema,
});
export type InboxFile = v.InferOutput<typeof inboxFileSchema>;

const inboxSessionSchema = v.strictObject({ id, traineeId: id, date: keptDate, title: v.string() });
export type InboxSession = v.InferOutput<typeof inboxSessionSchema>;

/** The folder whose new files come in by themselves. */
const watchSchema = v.strictObject({ folder: v.string(), there: v.boolean() });

const arrivalIds = v.pipe(v.array(id), v.minLength(1), v.maxLength(500));

/** What a person may take back of what they said, so that it is guessed again. */
const partsOfChoice = ['trainee', 'session', 'exercise', 'view', 'load'] as const;
export type PartOfChoice = (typeof partsOfChoice)[number];

export const inboxRequests = {
  /** What came in and belongs to no session, in the order it was filmed; `more` = how many are not listed. */
  'inbox.get': read({
    params: none,
    result: v.strictObject({
      files: v.array(inboxFileSchema),
      more: v.number(),
      /** How much room those films take that no clip shows. */
      bytes: v.number(),
      /** Sessions that a file may go to: the last ones of each trainee that is named. */
      sessions: v.array(inboxSessionSchema),
      watch: v.nullable(watchSchema),
    }),
  }),
  'inbox.count': read({ params: none, result: v.strictObject({ files: v.number() }) }),
  /**
   * Takes files, and the videos of folders with those inside, into the inbox; one job reads them. Files that are no videos
   * are passed over, and so are those that lie in the inbox already.
   */
  'inbox.take': act({
    params: v.strictObject({ paths: v.pipe(v.array(filePath), v.minLength(1), v.maxLength(2000)) }),
    result: v.strictObject({
      taken: v.number(),
      alreadyThere: v.number(),
      /** How many were passed over, and the names of the first of them. */
      passedOver: v.number(),
      passedOverNames: v.array(v.string()),
      jobId: v.nullable(id),
    }),
  }),
  /** Says something of files of the inbox; `forget` has a part guessed again. */
  'inbox.choose': act({
    params: v.strictObject({
      arrivalIds,
      choice: v.optional(choiceSchema, {}),
      forget: v.optional(v.array(v.picklist(partsOfChoice)), []),
    }),
    result: none,
  }),
  /** Brings files of the inbox into sessions as clips: one act a session; those that are not there yet are added first. */
  'inbox.bringIn': act({
    params: v.strictObject({
      clips: v.pipe(
        v.array(
          v.strictObject({
            arrivalId: id,
            trainee: ownerSchema,
            /** Null = a new session of that day. */
            sessionId: v.nullable(id),
            date: isoDate,
            exercise: v.string(),
            view: v.nullable(viewSchema),
            loadKg: v.nullable(v.pipe(v.number(), v.finite(), v.minValue(0), v.maxValue(1000))),
          }),
        ),
        v.minLength(1),
        v.maxLength(500),
      ),
    }),
    result: v.strictObject({ sessionIds: v.array(id), clipIds: v.array(id) }),
  }),
  /** Takes files out of the inbox; they can be put back. */
  'inbox.remove': act({ params: v.strictObject({ arrivalIds }), result: none }),
  'inbox.putBack': act({ params: v.strictObject({ arrivalIds }), result: none }),
  /** Has files read that could not be read, or whose reading was called off. */
  'inbox.readAgain': act({ params: v.strictObject({ arrivalIds }), result: v.strictObject({ jobId: id }) }),
  /** Where a picture of a file of the inbox lies on disk; asked by the media protocol. */
  'inbox.picture': host({
    params: v.strictObject({ arrivalId: id, what: v.picklist(['poster', 'filmstrip']) }),
    result: v.strictObject({ path: filePath, type: v.string() }),
  }),
} as const;

export const inboxWindowRequests = {
  /** Asks for a folder of clips; `path` null = the person changed their mind. */
  'inbox.chooseFolder': { params: none, result: v.strictObject({ path: v.nullable(filePath) }) },
  /** Asks for the folder to watch, and watches it; `path` null = the person changed their mind. */
  'inbox.watch': { params: none, result: v.strictObject({ path: v.nullable(filePath) }) },
} as const;
