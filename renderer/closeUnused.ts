import { statusState } from './bridge/statusState.ts';
import { narrationState } from './review/state/narrationState.ts';
import { jobsState } from './state/jobsState.ts';
import { settingsState } from './state/settingsState.ts';
import { saySettings } from './words/saySettings.ts';

/** How long before closing it is said. */
const warningMs = 60_000;
/** What a person does; the pointer that only moves counts too. */
const uses = ['keydown', 'pointerdown', 'pointermove', 'wheel'] as const;

export type Closing = {
  /** Saves what is typed; then closes the window. */
  readonly close: () => void;
  /** The time of day in milliseconds: a machine that slept was not used meanwhile. */
  readonly nowMs: () => number;
};

/**
 * Closes the window once nobody has used it for as long as the settings say. Whatever plays, records or runs counts as use, and a
 * window whose last text could not be saved stays. Give it a tick every few seconds.
 */
export function closeWhenUnused({ close, nowMs }: Closing): { readonly tick: () => void; readonly stop: () => void } {
  let usedMs = nowMs();
  let warning: string | null = null;
  const used = (): void => {
    usedMs = nowMs();
    if (warning === null) return;
    // Something else may be said there meanwhile.
    if (statusState.getState().notice === warning) statusState.getState().dismiss();
    warning = null;
  };
  for (const use of uses) window.addEventListener(use, used, { capture: true, passive: true });

  const tick = (): void => {
    const minutes = settingsState.getState().settings?.closeAfterMinutes ?? null;
    if (minutes === null || isAtWork()) return used();
    const leftMs = usedMs + minutes * 60_000 - nowMs();
    if (leftMs <= 0) return close();
    if (leftMs > warningMs || warning !== null) return;
    warning = saySettings('closesSoon');
    statusState.getState().tell(warning);
    // A key pressed within a previewed document is not heard out here.
    if (document.activeElement instanceof HTMLIFrameElement) document.activeElement.blur();
  };
  return {
    tick,
    stop: () => {
      for (const use of uses) window.removeEventListener(use, used, { capture: true });
    },
  };
}

function isAtWork(): boolean {
  const { saving } = statusState.getState();
  return (
    saving === 'saving' ||
    saving === 'failed' ||
    narrationState.getState().phase !== 'idle' ||
    jobsState.getState().jobs.some(({ state }) => state === 'running') ||
    [...document.querySelectorAll('video')].some((video) => !video.paused)
  );
}
