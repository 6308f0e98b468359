import { contextBridge, ipcRenderer, webUtils } from 'electron';
import { appOrigin } from '../contract/addresses.ts';
import { type Bridge, channels } from '../contract/bridge.ts';
import type { AnyEvent } from '../contract/events.ts';

// The host is not asked about addresses that load nothing, such as about:blank, and hears of them too late.
navigation.addEventListener('navigate', (event) => {
  if (!event.destination.url.startsWith(`${appOrigin}/`)) event.preventDefault();
});

const listeners = new Set<(event: AnyEvent) => void>();
// The first argument is the platform's own event object and stays on this side.
ipcRenderer.on(channels.event, (_platformEvent, event: AnyEvent) => {
  for (const listener of listeners) listener(event);
});

const bridge: Bridge = {
  ask: (name, params) => ipcRenderer.invoke(channels.ask, name, params),
  askWindow: (name, params) => ipcRenderer.invoke(channels.askWindow, name, params),
  onEvent: (listener) => {
    // A listener handed in twice counts twice, and each stop stops one.
    const own = (event: AnyEvent) => listener(event);
    listeners.add(own);
    return () => {
      listeners.delete(own);
    };
  },
  pathOfFile: (file) => webUtils.getPathForFile(file),
};

contextBridge.exposeInMainWorld('rackside', bridge);
