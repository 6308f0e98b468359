import { expect, test } from 'vitest';
import { pagePreferences } from '../../../../electron/main/window/webPreferences.ts';

// The items of Electron's own security list that are settings of a window.
test.each([
  ['sandbox', true],
  ['contextIsolation', true],
  ['nodeIntegration', false],
  ['nodeIntegrationInWorker', false],
  ['nodeIntegrationInSubFrames', false],
  ['webSecurity', true],
  ['allowRunningInsecureContent', false],
  ['experimentalFeatures', false],
  ['webviewTag', false],
  ['navigateOnDragDrop', false],
] as const)('%s is %s', (name, value) => {
  expect(pagePreferences('/app/preload.cjs')[name]).toBe(value);
});

test('no engine feature is switched on by name', () => {
  expect(pagePreferences('/app/preload.cjs')).not.toHaveProperty('enableBlinkFeatures');
});

test('the page gets the preload script it is told', () => {
  expect(pagePreferences('/app/preload.cjs').preload).toBe('/app/preload.cjs');
});
