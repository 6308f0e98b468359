import { EventEmitter } from 'node:events';
import type { CommandLine, Session, WebContents } from 'electron';
import { expect, test, vi } from 'vitest';
import {
  goOffline,
  lockContents,
  lockSession,
  mayLoad,
  mayUse,
  pagePreferences,
} from '../../../../electron/main/window/lockdown.ts';

const own = 'app://local/index.html';

test.each([own, 'app://local/media/c1', 'blob:app://local/7', 'data:image/png;base64,'])('%s may load', (address) => {
  expect(mayLoad(address, 'without-tools')).toBe(true);
});

test.each([
  'https://elsewhere.example/',
  'http://127.0.0.1/',
  'ws://127.0.0.1/',
  'wss://elsewhere.example/',
  'file:///etc/hosts',
  'ftp://elsewhere.example/',
  'chrome://gpu/',
  'chrome-extension://x/',
  'devtools://devtools/bundled/x.js',
  '',
  'no address',
])('%s may not', (address) => {
  expect(mayLoad(address, 'without-tools')).toBe(false);
});

test('the developer tools load only where they are wanted', () => {
  expect(mayLoad('devtools://devtools/bundled/x.js', 'with-tools')).toBe(true);
  expect(mayLoad('https://elsewhere.example/', 'with-tools')).toBe(false);
});

test.each(['geolocation', 'notifications', 'media', 'midi', 'hid', 'serial', 'usb', 'openExternal', 'clipboard-read'])(
  '%s is granted to nobody',
  (permission) => {
    expect(mayUse(permission, own)).toBe(false);
  },
);

test('full screen is granted to the page alone', () => {
  expect(mayUse('fullscreen', own)).toBe(true);
  for (const address of [undefined, '', 'https://elsewhere.example/'])
    expect(mayUse('fullscreen', address)).toBe(false);
});

test('a locked session refuses permissions, devices, downloads and the network', () => {
  const handlers = new Map<string, (...args: never[]) => unknown>();
  const keep = (name: string) => (handler: (...args: never[]) => unknown) => void handlers.set(name, handler);
  const emitter = new EventEmitter();
  const session = Object.assign(emitter, {
    setPermissionRequestHandler: keep('request'),
    setPermissionCheckHandler: keep('check'),
    setDevicePermissionHandler: keep('device'),
    setSpellCheckerEnabled: () => {},
    webRequest: { onBeforeRequest: keep('load') },
  });
  lockSession(session as unknown as Session, 'without-tools');
  const call = (name: string, ...args: unknown[]) => handlers.get(name)?.(...(args as never[]));

  const answer = vi.fn();
  call('request', { getURL: () => own }, 'media', answer);
  call('request', null, 'fullscreen', answer);
  expect(answer.mock.calls).toEqual([[false], [false]]);
  expect(call('check', null, 'geolocation', 'app://local')).toBe(false);
  expect(call('device', {})).toBe(false);

  const load = vi.fn();
  call('load', { url: 'https://elsewhere.example/' }, load);
  call('load', { url: own }, load);
  expect(load.mock.calls).toEqual([[{ cancel: true }], [{ cancel: false }]]);

  const preventDefault = vi.fn();
  emitter.emit('will-download', { preventDefault });
  expect(preventDefault).toHaveBeenCalledOnce();
});

/** A page that takes events and tells whether they were refused. */
function lockedPage() {
  const emitter = new EventEmitter();
  let openHandler: () => unknown = () => undefined;
  const contents = Object.assign(emitter, {
    setWindowOpenHandler: (handler: () => unknown) => {
      openHandler = handler;
    },
  });
  lockContents(contents as unknown as WebContents);
  const refused = (name: string, event: object = {}): boolean => {
    const preventDefault = vi.fn();
    emitter.emit(name, { ...event, preventDefault });
    return preventDefault.mock.calls.length > 0;
  };
  return { refused, open: () => openHandler() };
}

test('a locked page opens no window, goes nowhere and embeds nothing', () => {
  const page = lockedPage();
  expect(page.open()).toEqual({ action: 'deny' });
  expect(page.refused('will-attach-webview')).toBe(true);
  expect(page.refused('will-navigate', { url: 'app://local/index.html' })).toBe(true);
  expect(page.refused('will-redirect', { url: 'https://elsewhere.example/' })).toBe(true);
});

test('a frame inside the page shows a document of the preview and nothing else', () => {
  const page = lockedPage();
  const frame = (url: string) => page.refused('will-frame-navigate', { url, isMainFrame: false });
  expect(frame('app://local/preview/s1/letter?revision=1')).toBe(false);
  expect(frame('app://local/index.html')).toBe(true);
  expect(frame('https://elsewhere.example/preview/s1/letter')).toBe(true);
  expect(page.refused('will-frame-navigate', { url: 'app://local/preview/s1/letter', isMainFrame: true })).toBe(true);
});

test('the runtime is told to keep off the network on its own account', () => {
  const set = new Map<string, string | undefined>();
  goOffline({ appendSwitch: (name: string, value?: string) => void set.set(name, value) } as unknown as CommandLine);
  for (const name of [
    'disable-background-networking',
    'disable-component-update',
    'disable-domain-reliability',
    'no-pings',
  ]) {
    expect(set.has(name)).toBe(true);
  }
  expect(set.get('host-resolver-rules')).toBe('MAP * ~NOTFOUND');
});

test('no switch weakens the sandbox or the origin rules', () => {
  const names: string[] = [];
  goOffline({ appendSwitch: (name: string) => void names.push(name) } as unknown as CommandLine);
  for (const name of ['no-sandbox', 'disable-web-security', 'disable-site-isolation-trials', 'remote-debugging-port']) {
    expect(names).not.toContain(name);
  }
});

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
