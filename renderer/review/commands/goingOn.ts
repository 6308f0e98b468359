import type { Clip } from '../../../engine/review/review.ts';
import { goToNextDue, isStillDue } from '../../state/night.ts';
import { reviewState } from '../../state/reviewState.ts';
import { screenState } from '../../state/screenState.ts';
import { type Cell, scorecardModel } from '../model/scorecardModel.ts';
import { unseenCells } from '../model/unseen.ts';
import { goToCell } from './moving.ts';
import type { ReviewContext } from './reviewContext.ts';

/** What nobody has looked at yet in a session, clip by clip in its order. */
function leftToSee({ data, stage }: ReviewContext): readonly Cell[] {
  if (data === null || stage === null) return [];
  return data.review.entries.flatMap((entry) => {
    const grade = data.grade.entries.find(({ entryId }) => entryId === entry.id);
    return grade === undefined ? [] : unseenCells(scorecardModel(entry, grade, stage.catalogue, stage.clip.id));
  });
}

/** The clips that nobody has judged in anything. */
function untouchedClips({ data }: ReviewContext): ReadonlySet<string> {
  const entries = data?.review.entries ?? [];
  const touched = new Set(
    entries.flatMap(({ flags, ticks }) =>
      [...flags.filter(({ severity }) => severity !== null), ...ticks].map(({ clip }) => clip),
    ),
  );
  const untouched = (clip: Clip): boolean => !touched.has(clip.id);
  return new Set(entries.flatMap(({ clips }) => clips.filter(untouched).map(({ id }) => id)));
}

/** Shows a cell, on whichever clip it is. */
function show(context: ReviewContext, { criterion, column }: Cell): void {
  const { stage } = context;
  if (stage?.entry.clips.some(({ id }) => id === column.clipId)) goToCell(context, criterion, column);
  else reviewState.getState().show({ clipId: column.clipId, frame: 0 });
}

/**
 * Goes on from the review: to the next clip that nobody has begun, then to what is left until the grade is whole, then to
 * the letter; from a session that is sent, or not one's own to send, to the next one due.
 */
export async function goOnFromReview(context: ReviewContext): Promise<void> {
  const { sessionId, data, readOnly, secondLook } = context;
  if (data === null) return;
  await context.saveDrafts();
  if (readOnly || secondLook || !(await isStillDue(sessionId))) return goToNextDue(sessionId);
  const left = leftToSee(context);
  const untouched = untouchedClips(context);
  const next = left.find(({ column }) => untouched.has(column.clipId)) ?? left[0];
  const isWhole = data.grade.state.kind === 'graded';
  if (next !== undefined && (!isWhole || untouched.has(next.column.clipId))) return show(context, next);
  if (data.grade.state.kind === 'none') return goToNextDue(sessionId);
  screenState.getState().go({ kind: 'letter', sessionId });
}
