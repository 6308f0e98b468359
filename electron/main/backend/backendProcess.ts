import type { ToChild } from '../../contract/childMessages.ts';

/** A running backend process, whichever way it was started. */
export type BackendProcess = {
  readonly post: (message: ToChild) => void;
  readonly onMessage: (listener: (message: unknown) => void) => void;
  /** Called once, when the process is gone for any reason. */
  readonly onExit: (listener: () => void) => void;
  /** Ends it at once, without asking. */
  readonly kill: () => void;
};
