import { expect, it } from 'vitest';
import { type ActName, type ReadName, type RequestName, requests } from '../../../electron/contract/requests.ts';

it('gives every request one of three kinds', () => {
  const kinds = new Set(Object.values(requests).map(({ kind }) => kind));
  expect(kinds).toEqual(new Set(['read', 'act', 'host']));
});

/** What each of these does is plain from its name; the table must say the same. */
const known: Readonly<Partial<Record<RequestName, 'read' | 'act' | 'host'>>> = {
  ...({ 'review.get': 'read', 'letters.get': 'read', 'jobs.list': 'read' } satisfies Partial<Record<ReadName, 'read'>>),
  ...({ 'flags.add': 'act', 'history.undo': 'act', 'letters.send': 'act' } satisfies Partial<Record<ActName, 'act'>>),
  ...{ 'media.resolve': 'host', 'reviews.import': 'host', 'handover.start': 'host' },
};

it.each(Object.entries(known))('declares %s as %s', (name, kind) => {
  expect(requests[name as RequestName].kind).toBe(kind);
});
