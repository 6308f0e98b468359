import { useEffect } from 'react';
import type { BoundCommand } from './boundCommand.ts';
import { isChord } from './chord.ts';
import { keysOf } from './keys.ts';
import { keysState } from './keysState.ts';

const typing = 'textarea, input:not([type=radio], [type=checkbox], [type=range]), [contenteditable=true]';
const choosing = 'select, input[type=radio], input[type=range]';
const pressing = 'button, a[href], summary, input[type=checkbox]';

/** Whether the focused control has its own use for a key. */
function isTakenByFocus(event: KeyboardEvent): boolean {
  const target = event.target;
  if (!(target instanceof Element)) return false;
  if (target.closest('dialog[open]') !== null || target.closest(typing) !== null) return true;
  if (target.closest(choosing) !== null)
    return !event.ctrlKey && !event.metaKey && !event.shiftKey && event.key !== '?';
  if (target.closest(pressing) !== null) return event.key === 'Enter' || event.key === ' ';
  return false;
}

/** The command that a key press asks for, with the keys as this person has them. */
export const commandOfPress = (
  commands: readonly BoundCommand[],
  event: Parameters<typeof isChord>[0],
): BoundCommand | undefined => {
  const { chosen } = keysState.getState();
  return commands.find(({ face }) => keysOf(chosen, face).some((chord) => isChord(event, chord)));
};

const keepsNothing = (): boolean => false;

/**
 * Runs commands when their keys are pressed. Keys that the focused control needs stay with it, and `keepsFirst` may
 * keep a key to itself.
 */
export function useCommandKeys(
  commands: readonly BoundCommand[],
  keepsFirst: (event: KeyboardEvent) => boolean = keepsNothing,
): void {
  useEffect(() => {
    const onKeyDown = (event: KeyboardEvent): void => {
      if (event.defaultPrevented || event.isComposing || isTakenByFocus(event)) return;
      const command = keepsFirst(event) ? 'kept' : commandOfPress(commands, event);
      if (command === undefined) return;
      event.preventDefault();
      if (command !== 'kept') command.run(event.repeat ? 'held' : 'pressed');
    };
    window.addEventListener('keydown', onKeyDown);
    return () => window.removeEventListener('keydown', onKeyDown);
  }, [commands, keepsFirst]);
}
