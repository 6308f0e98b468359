import type { AnyEvent } from './events.ts';
import type { Reply } from './reply.ts';
import type { Params, Result, ScreenName, WindowParams, WindowRequestName, WindowResult } from './requests.ts';

/** What the preload script exposes to the page as `window.rackside`: this and nothing else. */
export type Bridge = {
  readonly ask: <N extends ScreenName>(name: N, params: Params<N>) => Promise<Reply<Result<N>>>;
  readonly askWindow: <N extends WindowRequestName>(
    name: N,
    params: WindowParams<N>,
  ) => Promise<Reply<WindowResult<N>>>;
  /** Calls back for every event; the returned function stops that. */
  readonly onEvent: (listener: (event: AnyEvent) => void) => () => void;
  /** The path of a file that a person dropped or picked. */
  readonly pathOfFile: (file: File) => string;
};

/** The only three channels between the page's preload script and the window's host. */
export const channels = {
  /** A request for the backend: name, params. */
  ask: 'rackside:ask',
  /** A request that the window's host answers itself: name, params. */
  askWindow: 'rackside:ask-window',
  /** An event, from the host to the page. */
  event: 'rackside:event',
} as const;
