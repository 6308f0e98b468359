import { EventEmitter } from 'node:events';
import type { CommandLine, Session, WebContents } from 'electron';
import { describe, expect, test, vi } from 'vitest';
import {
  goOffline,
  lockContents,
  lockSession,
  mayLoad,
  mayUse,
  pagePreferences,
} from '../../../../electron/main/window/lockdown.ts';
import { type MicrophoneGate, microphoneGate } from '../../../../electron/main/window/microphone.ts';

const own = 'app://local/index.html';
const shut = microphoneGate();
const wish = (permission: string, address: string | null | undefined) => ({ permission, address, isMainFrame: true });

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
    expect(mayUse(wish(permission, own), shut)).toBe(false);
  },
);

test('full screen is granted to the page alone', () => {
  expect(mayUse(wish('fullscreen', own), shut)).toBe(true);
  for (const address of [undefined, '', 'https://elsewhere.example/'])
    expect(mayUse(wish('fullscreen', address), shut)).toBe(false);
});

describe('the microphone', () => {
  const done = { ok: true, value: {} } as const;
  const refused = { ok: false, problem: { code: 'conflict', message: { id: 'narratedAlready', values: {} } } } as const;
  const sound = { ...wish('media', own), mediaTypes: ['audio'] };
  const recording = (): MicrophoneGate => {
    const gate = microphoneGate();
    gate.follow('narrations.begin', done);
    return gate;
  };

  test('is granted to the page while a narration is recorded, for sound alone', () => {
    expect(mayUse(sound, shut)).toBe(false);
    expect(mayUse(sound, recording())).toBe(true);
    expect(mayUse({ ...wish('media', own), mediaType: 'audio' }, recording())).toBe(true);
    const others = [['video'], ['audio', 'video'], []].map((mediaTypes) => ({ ...sound, mediaTypes }));
    const strangers = ['https://elsewhere.example/', '', null].map((address) => ({ ...sound, address }));
    const inFrame = { ...sound, isMainFrame: false };
    const unsaid = wish('media', own);
    for (const each of [...others, ...strangers, inFrame, unsaid]) expect(mayUse(each, recording())).toBe(false);
    expect(mayUse(wish('geolocation', own), recording())).toBe(false);
  });

  test.each(['narrations.keep', 'narrations.remove'] as const)('is shut again by %s, whatever it answers', (name) => {
    for (const reply of [done, refused]) {
      const gate = recording();
      gate.follow(name, reply);
      expect(gate.isOpen()).toBe(false);
    }
  });

  test('stays shut where nothing could be begun, and is shut when a piece is refused or the page goes', () => {
    const gate = microphoneGate();
    gate.follow('narrations.begin', refused);
    expect(gate.isOpen()).toBe(false);
    const begun = recording();
    begun.follow('narrations.append', done);
    begun.follow('review.get', done);
    expect(begun.isOpen()).toBe(true);
    begun.follow('narrations.append', refused);
    expect(begun.isOpen()).toBe(false);
    const left = recording();
    left.shut();
    expect(left.isOpen()).toBe(false);
  });
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
  const gate = microphoneGate();
  lockSession(session as unknown as Session, 'without-tools', gate);
  const call = (name: string, ...args: unknown[]) => handlers.get(name)?.(...(args as never[]));

  const answer = vi.fn();
  const sound = { isMainFrame: true, mediaTypes: ['audio'] };
  call('request', { getURL: () => own }, 'media', answer, sound);
  call('request', null, 'fullscreen', answer, { isMainFrame: true });
  gate.follow('narrations.begin', { ok: true, value: {} });
  call('request', { getURL: () => own }, 'media', answer, sound);
  call('request', { getURL: () => own }, 'media', answer, { ...sound, mediaTypes: ['audio', 'video'] });
  expect(answer.mock.calls).toEqual([[false], [false], [true], [false]]);
  expect(call('check', null, 'geolocation', 'app://local', { isMainFrame: true })).toBe(false);
  expect(call('check', null, 'media', own, { isMainFrame: true, mediaType: 'audio' })).toBe(true);
  expect(call('check', null, 'media', own, { isMainFrame: true, mediaType: 'video' })).toBe(false);
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
  const ownLine = vi.fn();
  const contents = Object.assign(emitter, {
    setWebRTCIPHandlingPolicy: ownLine,
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
  return { refused, open: () => openHandler(), ownLine };
}

test('a locked page opens no window, goes nowhere and embeds nothing', () => {
  const page = lockedPage();
  expect(page.open()).toEqual({ action: 'deny' });
  expect(page.refused('will-attach-webview')).toBe(true);
  expect(page.refused('will-navigate', { url: 'app://local/index.html' })).toBe(true);
  expect(page.refused('will-redirect', { url: 'https://elsewhere.example/' })).toBe(true);
});

test('a locked page has no sockets of its own', () => {
  expect(lockedPage().ownLine.mock.calls).toEqual([['disable_non_proxied_udp']]);
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
