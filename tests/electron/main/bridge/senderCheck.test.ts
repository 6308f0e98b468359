import { expect, test } from 'vitest';
import { isFromPage } from '../../../../electron/main/bridge/senderCheck.ts';

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
