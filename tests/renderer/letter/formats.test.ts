import { expect, it } from 'vitest';
import type { DocumentKind } from '../../../electron/contract/documents.ts';
import type { Review } from '../../../engine/review/review.ts';
import { formatsOf, sayFormat, suggestedName } from '../../../renderer/letter/formats.ts';

const review: Review = {
  format: 'rackside-review',
  version: 4,
  voice: 'coach',
  trainee: { name: 'Zoë Ågren', goal: 'growth', experience: 'new', units: 'kg', minor: false },
  session: { id: 'session', title: '', date: '2026-03-04', notes: '', painNote: '' },
  entries: [],
};
const name = (document: DocumentKind, how: Partial<Parameters<typeof suggestedName>[2]> = {}) =>
  suggestedName(review, document, { format: 'pdf', sent: null, names: 'full', ...how });

it('offers timed notes, tables and data for the sheet alone', () => {
  expect(formatsOf('sheet')).toEqual(expect.arrayContaining(['pdf', 'csv', 'vtt', 'srt', 'json', 'jsonld']));
  for (const document of ['letter', 'breakdown', 'filmingCard'] as const) {
    expect(formatsOf(document)).toEqual(['pdf', 'html', 'md', 'txt']);
  }
  const offered = formatsOf('sheet');
  expect(new Set(offered.map(sayFormat)).size).toBe(offered.length);
});

it('suggests a name that every file system takes', () => {
  expect(name('letter')).toBe('letter-zoe-agren-2026-03-04.pdf');
  expect(name('filmingCard', { format: 'txt' })).toBe('filming-card-zoe-agren-2026-03-04.txt');
  expect(name('letter', { sent: 2 })).toBe('letter-zoe-agren-2026-03-04-version-2.pdf');
});

it('tells no more of a name than the trainee wants', () => {
  expect(name('letter', { names: 'first' })).toBe('letter-zoe-2026-03-04.pdf');
  expect(name('letter', { names: 'initials' })).toBe('letter-z-a-2026-03-04.pdf');
  expect(name('letter', { names: 'none' })).not.toMatch(/zo|gren/i);
});
