import { useEffect, useRef } from 'react';
import { type Playhead, playhead } from '../../state/playhead.ts';

/**
 * Writes to the page whenever the playhead moves, at most once a picture and outside React's rendering.
 * `write` may close over anything; the newest one is used.
 */
export function usePlayhead(write: (now: Playhead) => void): void {
  const newest = useRef(write);
  newest.current = write;
  useEffect(() => {
    newest.current(playhead.getState());
    let asked = 0;
    const stop = playhead.subscribe(() => {
      if (asked !== 0) return;
      asked = requestAnimationFrame(() => {
        asked = 0;
        newest.current(playhead.getState());
      });
    });
    return () => {
      stop();
      cancelAnimationFrame(asked);
    };
  }, []);
  useEffect(() => {
    newest.current(playhead.getState());
  });
}
