import { stopCovering } from './coverState.ts';
import { stopSettingUp } from './setUpState.ts';

/** Puts away what has taken the place of card and measures: the set-up, or the covers. */
export function clearBeside(): void {
  stopSettingUp();
  stopCovering();
}
