import {
  type DocumentFormat,
  type DocumentKind,
  documentFileName,
  documentFormats,
  sheetFormats,
} from '../../electron/contract/documents.ts';
import { type NameMode, shownName } from '../../engine/names/shownName.ts';
import type { Review } from '../../engine/review/review.ts';
import type { LetterMessageId } from '../../engine/wording/english/desk/letter.ts';
import { sayLetter } from '../words/sayLetter.ts';

/** What a document comes in, the usual first. */
export const formatsOf = (document: DocumentKind): readonly DocumentFormat[] =>
  document === 'sheet' ? [...documentFormats, ...sheetFormats] : documentFormats;

const idOf = {
  pdf: 'formatPdf',
  html: 'formatHtml',
  md: 'formatMarkdown',
  txt: 'formatText',
  csv: 'formatCsv',
  vtt: 'formatVtt',
  srt: 'formatSrt',
  json: 'formatJson',
  jsonld: 'formatAnnotation',
} as const satisfies Readonly<Record<DocumentFormat, LetterMessageId>>;

/** The name of a format: "CSV (spreadsheet)". */
export const sayFormat = (format: DocumentFormat): string => sayLetter(idOf[format]);

type Named = {
  readonly format: DocumentFormat;
  /** Version of the letter that was sent; null for what it says now. */
  readonly sent: number | null;
  readonly names: NameMode;
};

/** A file name every system takes: "letter-ada-2025-11-08.pdf"; of a letter as it was sent, with its version. */
export function suggestedName(review: Review, document: DocumentKind, { format, sent, names }: Named): string {
  const trainee = shownName(review.trainee.name, names)
    .normalize('NFKD')
    .replace(/\p{M}/gu, '')
    .toLowerCase()
    .replace(/[^\p{L}\p{N}]+/gu, '-')
    .replace(/^-|-$/g, '');
  const version = sent === null ? '' : `version-${sent}`;
  return `${[documentFileName[document], trainee, review.session.date, version].filter((part) => part !== '').join('-')}.${format}`;
}
