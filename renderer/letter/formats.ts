import {
  type DocumentFormat,
  type DocumentKind,
  documentFileName,
  documentFormats,
  sheetFormats,
} from '../../electron/contract/documents.ts';
import { type NameMode, shownName } from '../../engine/names/shownName.ts';

import type { Review } from '../../engine/review/review.ts';

/** What a document comes in, the usual first. */
export const formatsOf = (document: DocumentKind): readonly DocumentFormat[] =>
  document === 'sheet' ? [...documentFormats, ...sheetFormats] : documentFormats;

export const formatWords: Readonly<Record<DocumentFormat, string>> = {
  pdf: 'PDF',
  html: 'HTML',
  md: 'Markdown',
  txt: 'Text',
  csv: 'CSV, for spreadsheets',
  vtt: 'WebVTT, notes over the clip',
  srt: 'SubRip, notes over the clip',
  json: 'JSON, with measures',
  jsonld: 'Web Annotation (JSON-LD)',
};

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
