import { afterEach, expect, test, vi } from 'vitest';
import type { Bridge } from '../../../electron/contract/bridge.ts';

const platform = vi.hoisted(() => ({
  invoke: vi.fn(async (..._args: unknown[]) => ({ ok: true, value: null })),
  on: vi.fn((_channel: string, _listener: (platformEvent: unknown, event: unknown) => void) => {}),
  exposed: new Map<string, unknown>(),
}));

vi.mock('electron', () => ({
  ipcRenderer: { invoke: platform.invoke, on: platform.on },
  contextBridge: { exposeInMainWorld: (name: string, value: unknown) => platform.exposed.set(name, value) },
  webUtils: { getPathForFile: (file: File) => `/chosen/${file.name}` },
}));

const leaving = vi.hoisted(() => new Map<string, (event: unknown) => void>());
vi.stubGlobal('navigation', {
  addEventListener: (name: string, listener: (event: unknown) => void) => leaving.set(name, listener),
});

await import('../../../electron/preload/preload.ts');
const bridge = platform.exposed.get('rackside') as Bridge;
const tell = (event: unknown) => platform.on.mock.calls[0]?.[1]({ sender: 'raw' }, event);

afterEach(() => {
  platform.invoke.mockClear();
});

test('the page gets the bridge and nothing else', () => {
  expect([...platform.exposed.keys()]).toEqual(['rackside']);
  expect(Object.keys(bridge).sort()).toEqual(['ask', 'askWindow', 'onEvent', 'pathOfFile']);
});

test.each([
  ['about:blank', true],
  ['about:srcdoc', true],
  ['blob:app://local/7', true],
  ['data:text/html,x', true],
  ['https://elsewhere.example/', true],
  ['app://local.elsewhere.example/', true],
  ['app://other/index.html', true],
  ['app://local/index.html?language=de', false],
  ['app://local/index.html#review', false],
] as const)('on the way to %s the page is stopped: %s', (url, stopped) => {
  const preventDefault = vi.fn();
  leaving.get('navigate')?.({ destination: { url }, preventDefault });
  expect(preventDefault).toHaveBeenCalledTimes(stopped ? 1 : 0);
});

test('questions go out on two fixed channels with name and params', async () => {
  await bridge.ask('library.state', {});
  await bridge.askWindow('clips.choose', {});
  expect(platform.invoke.mock.calls).toEqual([
    ['rackside:ask', 'library.state', {}],
    ['rackside:ask-window', 'clips.choose', {}],
  ]);
});

test("a listener hears the event alone, never the platform's own event object, until it stops", () => {
  const listener = vi.fn();
  const stop = bridge.onEvent(listener);
  const event = { name: 'traineesChanged', data: {} };
  tell(event);
  expect(listener.mock.calls).toEqual([[event]]);
  stop();
  tell(event);
  expect(listener).toHaveBeenCalledOnce();
});

test('two listeners are two, even when they are the same function', () => {
  const listener = vi.fn();
  const stopFirst = bridge.onEvent(listener);
  const stopSecond = bridge.onEvent(listener);
  stopFirst();
  tell({ name: 'traineesChanged', data: {} });
  expect(listener).toHaveBeenCalledOnce();
  stopSecond();
});

test('the path of a dropped file can be had', () => {
  expect(bridge.pathOfFile(new File([], 'clip.mp4'))).toBe('/chosen/clip.mp4');
});
