import type { ClipData } from '../../engine/handover/pageData.ts';

/** Half a millisecond: some browsers round the times of frames. */
export const slackS = 0.0005;
/** How long a note stays the current one after its moment. */
const currentForS = 3;

type Notes = ClipData['notes'];

/** The note to go to, by its index, from a time and the note that was jumped to (-1 = none); may be outside of the list. */
export function noteFrom(
  notes: Notes,
  { step, atS, frameStartS, jumpedTo }: NotePosition & { readonly step: number },
): number {
  const jumped = notes[jumpedTo];
  if (jumped !== undefined && Math.abs(jumped.seekS - atS) < 0.002) return jumpedTo + step;
  // A clip that stands where it began has shown none of its notes, not even one on its first frame.
  const isFresh = jumpedTo < 0 && atS <= frameStartS + slackS;
  if (step > 0) return notes.findIndex((note) => (isFresh ? note.atS >= atS - slackS : note.atS > atS + slackS));
  return notes.findLastIndex((note) => note.atS < frameStartS - slackS);
}

type NotePosition = { readonly atS: number; readonly frameStartS: number; readonly jumpedTo: number };

/** Marks the buttons of the notes that are current at a time, and scrolls their list to them. */
export function markCurrent(
  list: HTMLElement,
  buttons: readonly HTMLElement[],
  { notes, atS }: { readonly notes: Notes; readonly atS: number },
): void {
  const last = notes.findLast((note) => note.atS <= atS + slackS);
  const currentS = last !== undefined && atS < last.atS + currentForS ? last.atS : null;
  for (const [index, button] of buttons.entries()) {
    const isCurrent = notes[index]?.atS === currentS;
    if (isCurrent === button.hasAttribute('aria-current')) continue;
    if (isCurrent) {
      button.setAttribute('aria-current', 'true');
      scrollListTo(list, button);
    } else {
      button.removeAttribute('aria-current');
    }
  }
}

function scrollListTo(list: HTMLElement, button: HTMLElement): void {
  const item = button.parentElement;
  if (item === null || list.scrollHeight <= list.clientHeight) return;
  const above = item.offsetTop - list.offsetTop;
  const below = above + item.offsetHeight - list.clientHeight;
  if (above < list.scrollTop || below > list.scrollTop) list.scrollTop = above;
}
