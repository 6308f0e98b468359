import { expect, test } from 'vitest';
import { type RequestName, requests } from '../../../../electron/contract/requests.ts';
import { checkRequest, checkWindowRequest, isFromPage } from '../../../../electron/main/bridge/checkRequest.ts';

const page = 'app://local/index.html';
const main = { url: page, parent: null };

test("the window's main frame at the app's own address is trusted", () => {
  expect(isFromPage({ sender: { id: 4 }, senderFrame: main }, 4)).toBe(true);
});

test.each([
  ['another window', { sender: { id: 5 }, senderFrame: main }, 4],
  ['no window open', { sender: { id: 4 }, senderFrame: main }, null],
  ['a frame inside the page', { sender: { id: 4 }, senderFrame: { url: page, parent: main } }, 4],
  ['a frame that is gone', { sender: { id: 4 }, senderFrame: null }, 4],
  ['an empty address', { sender: { id: 4 }, senderFrame: { url: '', parent: null } }, 4],
  ['a blank page', { sender: { id: 4 }, senderFrame: { url: 'about:blank', parent: null } }, 4],
  ['a page from elsewhere', { sender: { id: 4 }, senderFrame: { url: 'https://local/index.html', parent: null } }, 4],
  ['a host that only begins alike', { sender: { id: 4 }, senderFrame: { url: 'app://local.x/', parent: null } }, 4],
])('%s is not', (_what, message, id) => {
  expect(isFromPage(message, id)).toBe(false);
});

test('a message that lacks what the platform promises is not', () => {
  const strange = { sender: { id: 4 }, senderFrame: { url: undefined, parent: null } } as unknown;
  const bare = { sender: { id: 4 } } as unknown;
  expect(isFromPage(strange as Parameters<typeof isFromPage>[0], 4)).toBe(false);
  expect(isFromPage(bare as Parameters<typeof isFromPage>[0], 4)).toBe(false);
});

const badRequest = {
  ok: false,
  problem: { code: 'bad-request', message: { id: expect.any(String), values: expect.anything() } },
};

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
