import * as v from 'valibot';
import { languageSchema } from '../../engine/language/language.ts';
import { tones } from '../../engine/letter/letter.ts';
import { act, read } from './kinds.ts';
import { id, isoTime, none, schemeSchema } from './shapes.ts';

const paragraph = v.pipe(v.string(), v.minLength(1), v.maxLength(80));

export const letterStyleSchema = v.strictObject({
  length: v.picklist(['full', 'short']),
  tone: v.picklist(tones),
  language: languageSchema,
});

/** Which letter that was sent; without one, documents show the session as it is now. */
export const sentVersionSchema = v.pipe(v.number(), v.integer(), v.minValue(1));

export const sentLetterSchema = v.strictObject({
  version: v.number(),
  sentAt: isoTime,
  rubricVersion: v.number(),
  /** The session's mark when it was sent, or '' without one. */
  mark: v.string(),
  sha256: v.string(),
});
export type SentLetter = v.InferOutput<typeof sentLetterSchema>;

/** One paragraph of a letter as the coach edits it. */
export const letterParagraphSchema = v.strictObject({
  id: paragraph,
  /** A heading stands between paragraphs and is not edited; nor is what is fixed: cautions and the closing line. */
  kind: v.picklist(['heading', 'paragraph', 'fixed']),
  /** The label or grade that opens it and stays. */
  label: v.string(),
  /** What it says: the coach's words where they changed it. */
  words: v.string(),
  /** What it says by itself. */
  own: v.string(),
  edited: v.boolean(),
  /** It was edited, and what it said by itself then is not what it says now; of the coach's own: what it rested on. */
  stale: v.boolean(),
  /** Whose it is: the plan's, edited or not, or a paragraph of the coach's own beside it. */
  writer: v.picklist(['plan', 'coach']),
  /** What it moves, or stays, with: itself, or the notice whose line it is. */
  part: paragraph,
  /** The exercises it speaks of, as they stand in a sentence, for the phrases set into it. */
  exercise: v.string(),
});

const paragraphParams = v.strictObject({ sessionId: id, paragraph });

/** Requests on a session's letter: its style, its edits, the letters that were sent. */
export const letterRequests = {
  'letters.get': read({
    params: v.strictObject({ sessionId: id }),
    result: v.strictObject({
      style: letterStyleSchema,
      paragraphs: v.array(letterParagraphSchema),
      /** Edits of paragraphs that the letter does not have now; they come back with their paragraph. */
      waiting: v.array(v.strictObject({ id: paragraph, words: v.string() })),
      /** Paragraphs that the letter goes without; each can be brought back. */
      leftOut: v.array(letterParagraphSchema),
      /** How the letter calls the trainee. */
      name: v.string(),
      sent: v.array(sentLetterSchema),
      /** Nothing has changed since the newest version that was sent. */
      sentAlready: v.boolean(),
    }),
  }),
  'letters.style': act({
    params: v.strictObject({ sessionId: id, style: v.partial(letterStyleSchema) }),
    result: none,
  }),
  /** Puts the coach's words in place of a paragraph; null, or what it says by itself, takes the edit back. */
  'letters.edit': act({
    params: v.strictObject({
      sessionId: id,
      paragraph,
      words: v.nullable(v.pipe(v.string(), v.regex(/\S/), v.maxLength(4000))),
    }),
    result: none,
  }),
  /** Adds a paragraph of the coach's own after a line of the letter; it is in no document until it has words. */
  'letters.add': act({
    params: v.strictObject({ sessionId: id, after: paragraph }),
    result: v.strictObject({ paragraph }),
  }),
  /** Leaves a paragraph out of the letter, in its words; one of the coach's own without any is removed. */
  'letters.leaveOut': act({ params: paragraphParams, result: none }),
  'letters.bringBack': act({ params: paragraphParams, result: none }),
  /** Removes a paragraph of the coach's own. */
  'letters.remove': act({ params: paragraphParams, result: none }),
  /** Puts a paragraph after another line of the letter; null = before the first one. */
  'letters.move': act({
    params: v.strictObject({ sessionId: id, paragraph, after: v.nullable(paragraph) }),
    result: none,
  }),
  /** Keeps the letter as it is now, with its data and rubric, as the next version; it is never changed again. */
  'letters.send': act({ params: v.strictObject({ sessionId: id }), result: sentLetterSchema }),
  /** A letter that was sent, as one HTML page. */
  'letters.sent': read({
    params: v.strictObject({ sessionId: id, version: sentVersionSchema, scheme: v.optional(schemeSchema) }),
    result: v.strictObject({ html: v.string() }),
  }),
} as const;
