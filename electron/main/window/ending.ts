/** What the end of the program does with the platform. */
export type EndingParts = {
  /** Closes the library. */
  readonly close: () => Promise<void>;
  /** Asks the platform to quit; while it is quitting already, and for a moment after, it does not hear that. */
  readonly quit: () => void;
  /** Ends at once. */
  readonly exit: () => void;
  /** Has the program started again when this one has ended. */
  readonly startAgain: () => void;
  /** Calls back after a time. */
  readonly after: (delayMs: number, run: () => void) => void;
};

/** The end of the program, once nothing of it shows any more. */
export type Ending = {
  /** The platform is about to quit: whether it has to wait. */
  readonly mustWait: () => boolean;
  /** Another start wants the window, which is gone already. */
  readonly wantedAgain: () => void;
};

/** A quit that the platform did not hear is made up for by an end without asking. */
const unheardMs = 2000;

/** Closes the library before the program ends, and ends it then, whatever the library does. */
export function endingOf({ close, quit, exit, startAgain, after }: EndingParts): Ending {
  let state: 'running' | 'closing' | 'closed' = 'running';
  let isWanted = false;
  const end = (): void => {
    state = 'closed';
    if (isWanted) startAgain();
    // Not within the platform's own turn: it takes a quit then for the one that is being prevented.
    after(0, quit);
    after(unheardMs, exit);
  };
  return {
    mustWait: () => {
      if (state === 'running') {
        state = 'closing';
        close().then(end, end);
      }
      return state !== 'closed';
    },
    wantedAgain: () => {
      if (state === 'closed' && !isWanted) startAgain();
      isWanted = true;
    },
  };
}
