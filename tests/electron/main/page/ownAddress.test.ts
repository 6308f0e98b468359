import { expect, test } from 'vitest';
import { isOwnAddress, isPreviewAddress } from '../../../../electron/main/page/ownAddress.ts';

test.each(['app://local/index.html', 'app://local', 'app://local/media/c1?x#y'])('%s is the app itself', (address) => {
  expect(isOwnAddress(address)).toBe(true);
});

test.each([
  undefined,
  null,
  '',
  'about:blank',
  'app:',
  'app://',
  'app://local.elsewhere.example/index.html',
  'app://local:80/',
  'app://elsewhere/index.html',
  'app://person@local/',
  'app://local:x@elsewhere/',
  'https://local/',
  'file:///app://local/',
  'data:text/html,app://local/',
  'javascript:app://local/',
  ' not an address ',
])('%s is not', (address) => {
  expect(isOwnAddress(address)).toBe(false);
});

test('a preview is an address below /preview/ of the app itself', () => {
  expect(isPreviewAddress('app://local/preview/s1/letter?revision=2')).toBe(true);
  expect(isPreviewAddress('app://local/preview/../index.html')).toBe(false);
  expect(isPreviewAddress('app://local/index.html#/preview/')).toBe(false);
  expect(isPreviewAddress('https://elsewhere.example/preview/s1/letter')).toBe(false);
});
