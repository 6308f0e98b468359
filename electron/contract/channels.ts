/** The only three channels between the page's preload script and the window's host. */
export const channels = {
  /** A request for the backend: name, params. */
  ask: 'rackside:ask',
  /** A request that the window's host answers itself: name, params. */
  askWindow: 'rackside:ask-window',
  /** An event, from the host to the page. */
  event: 'rackside:event',
} as const;
