import { expect, it, vi } from 'vitest';
import type { Backend } from '../../../electron/contract/backend.ts';
import type { Bridge } from '../../../electron/contract/bridge.ts';
import { type ActName, type ReadName, type RequestName, requests } from '../../../electron/contract/requests.ts';
import { mutate } from '../../../renderer/bridge/mutate.ts';
import { read } from '../../../renderer/bridge/read.ts';
import { fakeRackside } from '../../renderer/harness/fakeRackside.ts';

const flag = { clipId: 'c', criterion: 'depth', severity: 'adjust', reps: 'set', frame: 1 } as const;

/** What the compiler takes and what it refuses; it complains where an error that is expected doesn't come. */
function askInEveryWay(bridge: Bridge, backend: Pick<Backend, 'ask'>): void {
  void mutate('flags.add', flag);
  // @ts-expect-error An act is not read.
  void read('flags.add', flag);
  void read('review.get', { sessionId: 's' });
  // @ts-expect-error A read changes nothing.
  void mutate('review.get', { sessionId: 's' });
  void backend.ask('documents.write', { sessionId: 's', document: 'letter', format: 'pdf', path: '/letter.pdf' });
  // @ts-expect-error No screen names a path to write to.
  void bridge.ask('documents.write', { sessionId: 's', document: 'letter', format: 'pdf', path: '/letter.pdf' });
  // @ts-expect-error Nor does it by this door.
  void mutate('documents.write', { sessionId: 's', document: 'letter', format: 'pdf', path: '/letter.pdf' });
}

it('lets a read be read and an act be sent, and keeps paths from the page', () => {
  const { asked } = fakeRackside({});
  const ask = vi.fn();
  askInEveryWay(window.rackside, { ask });
  expect(asked.map(({ name }) => name)).toEqual([
    ...['flags.add', 'flags.add', 'review.get', 'review.get'],
    ...['documents.write', 'documents.write'],
  ]);
  expect(ask).toHaveBeenCalledOnce();
});

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
