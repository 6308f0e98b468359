import * as v from 'valibot';
import { equipmentSchema } from '../../engine/exercises/equipment.ts';
import type { SessionGrade } from '../../engine/grading/grade.ts';
import { languageSchema } from '../../engine/language/language.ts';
import { messageSchema } from '../../engine/message/message.ts';
import type { TrainedSession } from '../../engine/programme/week.ts';
import { planSchema } from '../../engine/review/plan.ts';
import type { Review } from '../../engine/review/review.ts';
import { clipMediaSchema } from './clips.ts';
import { keptCoverSchema } from './covers.ts';
import { act, host, read } from './kinds.ts';
import {
  engineType,
  filePath,
  frame,
  historyStateSchema,
  id,
  isoDate,
  isoTime,
  nameModeSchema,
  none,
  remark,
} from './shapes.ts';

/** Requests on a session as a whole: what it is, what was done in it, its grade. */
export const sessionRequests = {
  'sessions.add': act({
    params: v.strictObject({ traineeId: id, title: v.optional(v.string(), ''), date: isoDate }),
    result: v.strictObject({ sessionId: id }),
  }),
  'sessions.update': act({
    params: v.strictObject({
      sessionId: id,
      title: v.optional(v.pipe(v.string(), v.maxLength(200))),
      date: v.optional(isoDate),
      notes: v.optional(remark),
      painNote: v.optional(remark),
      /** What was at hand on that day; null = what the trainee usually has. */
      equipment: v.optional(v.nullable(equipmentSchema)),
    }),
    result: none,
  }),
  /**
   * Takes back a session that nothing came into, as if it had never been added; with it the trainee where wanted and
   * where it was their only one. `conflict` when it holds a clip.
   */
  'sessions.discard': act({
    params: v.strictObject({ sessionId: id, trainee: v.picklist(['keep', 'discard']) }),
    result: none,
  }),
  /** Judges a session by another version of the rubric: flags move to where their faults belong there. */
  'sessions.rejudge': act({
    params: v.strictObject({ sessionId: id, version: v.pipe(v.number(), v.integer(), v.minValue(1)) }),
    result: none,
  }),
  /**
   * A session whole, as the review format has it, with what the player needs. In a language, cues and notes in the
   * library's own words are said in it; what the coach wrote stays as written.
   */
  'review.get': read({
    params: v.strictObject({ sessionId: id, language: v.optional(languageSchema) }),
    result: v.strictObject({
      /** As it is kept: one that is larger than a file may be is shown whole. */
      review: engineType<Review>(),
      media: v.array(clipMediaSchema),
      /** What is covered in its clips, clip by clip. */
      covers: v.array(keptCoverSchema),
      history: historyStateSchema,
      /** What the trainee did in the week before it. */
      weekBefore: v.array(engineType<TrainedSession>()),
      /** It came from another coach's Rackside: acts on it are refused. */
      readOnly: v.boolean(),
      /** The session it judges again, blind; null for a session of its own. */
      secondLookOf: v.nullable(id),
      /** How the trainee wants to be named in what leaves the desk. */
      names: nameModeSchema,
      /** Where the coach was: clip and frame. */
      position: v.nullable(v.strictObject({ clipId: id, frame })),
    }),
  }),
  /** The footage that a review file names outside its own folder, to be shown to a person before it is imported. */
  'reviews.footageOutside': host({ params: v.strictObject({ path: filePath }), result: v.array(v.string()) }),
  /**
   * Imports a review file and its clips as a new session; clips are read by a job. Refused where it names footage outside its folder that is
   * not in `footageOutside`, which a person has seen and allowed.
   */
  'reviews.import': host({
    params: v.strictObject({ path: filePath, footageOutside: v.optional(v.array(filePath), []) }),
    result: v.strictObject({ sessionId: id, jobId: id }),
  }),
  /** Remembers where the coach was; a view change, never a step of the history. */
  'position.set': act({ params: v.strictObject({ sessionId: id, clipId: id, frame }), result: none }),
  'history.undo': act({ params: v.strictObject({ sessionId: id }), result: none }),
  'history.redo': act({ params: v.strictObject({ sessionId: id }), result: none }),
  'history.list': read({
    params: v.strictObject({ sessionId: id }),
    result: v.array(
      v.strictObject({ id: v.number(), name: messageSchema, at: isoTime, undone: v.boolean(), dropped: v.boolean() }),
    ),
  }),
  'grade.get': read({ params: v.strictObject({ sessionId: id }), result: engineType<SessionGrade>() }),
} as const;

/** Requests on the exercises of a session: each is an entry with its plan and clips. */
export const entryRequests = {
  'entries.add': act({
    params: v.strictObject({ sessionId: id, exercise: v.string(), plan: v.optional(planSchema) }),
    result: v.strictObject({ entryId: id }),
  }),
  'entries.update': act({
    params: v.strictObject({
      entryId: id,
      exercise: v.optional(v.string()),
      plan: v.optional(v.nullable(planSchema)),
      setsDone: v.optional(v.nullable(v.pipe(v.number(), v.integer(), v.minValue(1), v.maxValue(50)))),
    }),
    result: none,
  }),
  'entries.remove': act({ params: v.strictObject({ entryId: id }), result: none }),
} as const;
