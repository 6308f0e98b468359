import * as v from 'valibot';
import { paperSchema, undeliveredSchema } from './handover.ts';
import { host, read } from './kinds.ts';
import { sentVersionSchema } from './letters.ts';
import { filePath, id, schemeSchema } from './shapes.ts';

export const documentKindSchema = v.picklist(['letter', 'sheet', 'shortSheet', 'breakdown', 'filmingCard']);
export type DocumentKind = v.InferOutput<typeof documentKindSchema>;
/** What a document's file is called. */
export const documentFileName: Readonly<Record<DocumentKind, string>> = {
  letter: 'letter',
  sheet: 'sheet',
  shortSheet: 'sheet-short',
  breakdown: 'breakdown',
  filmingCard: 'filming-card',
};
/** What every document comes in. */
export const documentFormats = ['pdf', 'html', 'md', 'txt'] as const;
/** What the sheet comes in besides. */
export const sheetFormats = ['csv', 'vtt', 'srt', 'json', 'jsonld'] as const;
export const documentFormatSchema = v.picklist([...documentFormats, ...sheetFormats]);
export type DocumentFormat = v.InferOutput<typeof documentFormatSchema>;

/** Whether a document in a format has room for stills of what it says. */
export const showsStills = (document: DocumentKind, format: DocumentFormat): boolean =>
  (document === 'letter' || document === 'sheet') && (format === 'pdf' || format === 'html');

const what = {
  sessionId: id,
  document: documentKindSchema,
  format: documentFormatSchema,
  /** Restricts the timed notes (`vtt`, `srt`) to one clip. */
  clipId: v.optional(id),
  sentVersion: v.optional(sentVersionSchema),
  /** Whether it shows the remarks as pictures, where it has room for them. */
  stills: v.optional(v.boolean(), false),
  /** Paper of a PDF. */
  paper: v.optional(paperSchema, 'a4'),
};

/** Clips that have no stills in it, and why; there only where stills were asked for and some are missing. */
const without = { failed: v.optional(v.array(undeliveredSchema)) };

/** Requests for a session's documents: the trainee named in them as they want to be. */
export const documentRequests = {
  /** A document as one HTML page, for the preview; without a scheme it follows the device's. */
  'documents.preview': read({
    params: v.strictObject({ sessionId: id, document: documentKindSchema, scheme: v.optional(schemeSchema) }),
    result: v.strictObject({ html: v.string() }),
  }),
  /** Writes a document to a path: to a temporary name first, then renamed. */
  'documents.write': host({
    params: v.strictObject({ ...what, path: filePath }),
    result: v.strictObject({ path: filePath, bytes: v.number(), ...without }),
  }),
} as const;

export const documentWindowRequests = {
  /** Asks where to save, then writes; `path` null = the person changed their mind. */
  'documents.save': {
    params: v.strictObject({ ...what, suggestedName: v.pipe(v.string(), v.maxLength(200)) }),
    result: v.strictObject({ path: v.nullable(v.string()), ...without }),
  },
} as const;
