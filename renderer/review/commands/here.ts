import type { Catalogue } from '../../../engine/exercises/catalogue.ts';
import type { Exercise } from '../../../engine/exercises/exercise.ts';
import type { EntryGrade } from '../../../engine/grading/grade.ts';
import { clipOf, entryOfClip } from '../../../engine/review/parts.ts';
import type { Clip, Entry } from '../../../engine/review/review.ts';
import { catalogueState } from '../../state/catalogueState.ts';
import { type ReviewData, reviewState } from '../../state/reviewState.ts';
import { type ClipTables, tablesState } from '../../state/tablesState.ts';

/** What is on the stage, looked up once. */
export type Here = {
  readonly sessionId: string;
  readonly data: ReviewData;
  readonly catalogue: Catalogue;
  readonly entry: Entry;
  readonly grade: EntryGrade;
  readonly exercise: Exercise | null;
  readonly clip: Clip;
  readonly tables: ClipTables | null;
};

/** null while no clip is on the stage. */
export function here(): Here | null {
  const { sessionId, data, clipId } = reviewState.getState();
  const { catalogue } = catalogueState.getState();
  if (sessionId === null || data === null || clipId === null || catalogue === null) return null;
  const entry = entryOfClip(data.review, clipId);
  const clip = entry === undefined ? undefined : clipOf(entry, clipId);
  const grade = data.grade.entries.find((known) => known.entryId === entry?.id);
  if (entry === undefined || clip === undefined || grade === undefined) return null;
  return {
    sessionId,
    data,
    catalogue,
    entry,
    grade,
    exercise: catalogue.exercises.find((known) => known.id === entry.exercise) ?? null,
    clip,
    tables: tablesState.getState().tables[clipId] ?? null,
  };
}
