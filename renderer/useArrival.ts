import { useEffect, useRef } from 'react';
import { everyRefresh } from './base/later.ts';
import { type Screen, screenState } from './state/screenState.ts';
import { deskLanguage } from './words/deskLanguage.ts';
import { sayApp } from './words/sayApp.ts';

/** How many screen refreshes a screen may take to show its heading. */
const mostRefreshes = 300;

/**
 * Tells people who don't see the screen that another one is on: the window's title names it, and the focus is on its heading, which a
 * screen reader reads and Tab goes on from. A screen that puts the focus somewhere itself keeps it.
 *
 * @param screen null before there is a library
 */
export function useArrival(screen: Screen | null): void {
  const language = deskLanguage((state) => state.language);
  const isFirst = useRef(true);
  const kind = screen?.kind ?? 'start';
  // biome-ignore lint/correctness/useExhaustiveDependencies: the title is in the desk's language
  useEffect(() => {
    document.title = sayApp('windowTitle', { screen: kind });
  }, [kind, language]);
  useEffect(() => {
    if (screen === null) return;
    const starts = isFirst.current;
    isFirst.current = false;
    if (starts) return;
    let left = mostRefreshes;
    const stop = everyRefresh(() => {
      left -= 1;
      if (left === 0 || screenState.getState().screen !== screen || arrive()) stop();
    });
    return stop;
  }, [screen]);
}

/** Puts the focus on the screen's heading, where nothing has it yet; gives whether that is settled. */
function arrive(): boolean {
  if (document.activeElement !== document.body && document.activeElement !== null) return true;
  const heading = document.querySelector('h1');
  if (heading === null) return false;
  heading.tabIndex = -1;
  heading.focus({ preventScroll: true });
  return true;
}
