const typing = 'textarea, input:not([type=radio], [type=checkbox], [type=range]), [contenteditable=true]';
const choosing = 'select, input[type=radio], input[type=range]';
const pressing = 'button, a[href], summary, input[type=checkbox]';

/** Whether the focused control has its own use for a key. */
export function takesKey(event: KeyboardEvent): boolean {
  const target = event.target;
  if (!(target instanceof Element)) return false;
  if (target.closest('dialog[open]') !== null || target.closest(typing) !== null) return true;
  if (target.closest(choosing) !== null)
    return !event.ctrlKey && !event.metaKey && !event.shiftKey && event.key !== '?';
  if (target.closest(pressing) !== null) return event.key === 'Enter' || event.key === ' ';
  return false;
}
