import type { AnyEvent } from './events.ts';
import type { Reply } from './reply.ts';
import type { Params, RequestName, Result } from './requests.ts';

/** What a host needs to give the backend. */
export type BackendSettings = {
  /** Folder of the library: database, clips, pictures. */
  readonly libraryFolder: string;
  /** Folder that holds `migrations/` and `seeds/`. */
  readonly appFolder: string;
  /** `known`: it was opened before, so that a folder that is not there is no first start. */
  readonly library?: 'known' | undefined;
  /** `window`: somebody works at a window meanwhile, and long work gives way to it. */
  readonly host?: 'window';
};

/**
 * The backend as its hosts see it: the window's main process over a child process, the command line and the
 * tests directly. Never throws: every answer is a reply.
 */
export type Backend = {
  readonly ask: <N extends RequestName>(name: N, params: Params<N>) => Promise<Reply<Result<N>>>;
  readonly onEvent: (listener: (event: AnyEvent) => void) => () => void;
  /** Cancels work, closes the database, resolves when nothing is left running. */
  readonly close: () => Promise<void>;
};
