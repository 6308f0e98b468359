import { useSyncExternalStore } from 'react';

/** From 1600 px on; in rem, so that a zoomed window counts for what it shows. */
const query = '(min-width: 100rem)';

const subscribe = (onChange: () => void): (() => void) => {
  const media = window.matchMedia(query);
  media.addEventListener('change', onChange);
  return () => media.removeEventListener('change', onChange);
};

/** Whether the window is wide enough for scorecard and measures side by side. */
export const useRoomForBoth = (): boolean => useSyncExternalStore(subscribe, () => window.matchMedia(query).matches);
