import type { Bridge } from '../../electron/contract/bridge.ts';

declare global {
  interface Window {
    readonly rackside: Bridge;
  }
}

/** The one door out of the page. */
export const rackside = (): Bridge => window.rackside;
