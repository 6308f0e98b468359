import { expect, test } from 'vitest';
import { type RequestName, requests } from '../../../../electron/contract/requests.ts';
import { checkRequest, checkWindowRequest } from '../../../../electron/main/bridge/checkRequest.ts';

const badRequest = { ok: false, problem: { code: 'bad-request', sentence: expect.any(String) } };

test('a well-formed question passes with its params', () => {
  expect(checkRequest('review.get', { sessionId: 's1' })).toEqual({
    ok: true,
    value: { name: 'review.get', params: { sessionId: 's1' } },
  });
});

test('params get the defaults of their schema', () => {
  const checked = checkRequest('library.create', { contents: 'empty', voice: 'self' });
  expect(checked.ok && checked.value.params).toEqual({ contents: 'empty', voice: 'self', coach: '' });
});

test.each(['library.burn', '__proto__', 'constructor', 'toString', '', 7, null, undefined, {}, ['library.state']])(
  'the name %j is refused',
  (name) => {
    expect(checkRequest(name, {})).toEqual(badRequest);
    expect(checkWindowRequest(name, {})).toEqual(badRequest);
  },
);

const hostNames = (Object.keys(requests) as RequestName[]).filter((name) => requests[name].kind === 'host');

test.each(hostNames)('%s is for the host alone', (name) => {
  expect(checkRequest(name, { clipId: 'c1', what: 'clip', sessionId: 's', path: '/x' })).toEqual(badRequest);
});

test.each([
  ['a surplus parameter', 'library.state', { further: true }],
  ['a missing parameter', 'review.get', {}],
  ['params that are none', 'library.state', undefined],
  ['an id with a path in it', 'review.get', { sessionId: '../x' }],
  ['a number that is none', 'position.set', { sessionId: 's', clipId: 'c', frame: Number.NaN }],
  ['a note without end', 'flags.update', { flagId: 'f', change: { note: 'x'.repeat(1_000_000) } }],
])('%s is refused', (_what, name, params) => {
  expect(checkRequest(name, params)).toEqual(badRequest);
});

test("the host's own questions are checked against their own table", () => {
  expect(checkWindowRequest('clips.choose', {})).toEqual({ ok: true, value: { name: 'clips.choose', params: {} } });
  expect(checkWindowRequest('review.get', { sessionId: 's1' })).toEqual(badRequest);
  expect(checkWindowRequest('documents.save', { sessionId: 's1' })).toEqual(badRequest);
});
