import type { DocumentFormat, DocumentKind } from '../../electron/contract/requests.ts';
import type { Review } from '../../engine/review/review.ts';

export const formatsOf: Readonly<Record<DocumentKind, readonly DocumentFormat[]>> = {
  letter: ['pdf', 'html', 'md', 'txt'],
  sheet: ['html', 'pdf', 'csv', 'vtt', 'md'],
  breakdown: ['pdf', 'html', 'md', 'txt'],
  filmingCard: ['pdf', 'html', 'md', 'txt'],
};

export const formatWords: Readonly<Record<DocumentFormat, string>> = {
  pdf: 'PDF',
  html: 'HTML',
  md: 'Markdown',
  txt: 'text',
  csv: 'CSV',
  vtt: 'WebVTT',
};

/** A file name every system takes: "letter-ada-2025-11-08.pdf"; of a letter as it was sent, with its version. */
export function suggestedName(
  review: Review,
  document: DocumentKind,
  { format, sent }: { readonly format: DocumentFormat; readonly sent: number | null },
): string {
  const who = review.trainee.name
    .normalize('NFKD')
    .replace(/\p{M}/gu, '')
    .toLowerCase()
    .replace(/[^\p{L}\p{N}]+/gu, '-')
    .replace(/^-|-$/g, '');
  const version = sent === null ? '' : `version-${sent}`;
  const what = document === 'filmingCard' ? 'filming-card' : document;
  return `${[what, who, review.session.date, version].filter((part) => part !== '').join('-')}.${format}`;
}
