import { randomUUID } from 'node:crypto';
import { drawnOf } from '../../../engine/review/drawings/drawing.ts';
import type { Clip, Entry, MeasuredEdge, Rep, Reps, Review } from '../../../engine/review/review.ts';
import type { FrameTable } from '../../../engine/time/frameTable.ts';
import { firstRubricVersion } from '../catalogue/loadCatalogue.ts';
import type { Changes } from '../store/changes.ts';
import { momentColumns, overrideColumns } from '../store/columns.ts';
import { drawnColumns } from '../store/drawings.ts';
import { planColumns } from '../store/entries.ts';
import { setUpRow } from '../store/measuring.ts';
import { edgeMoment } from '../store/reps.ts';

import { listTrainees, traineeColumns, traineeOf } from '../store/trainees.ts';
import { placeMoment } from './placeMoments.ts';

/** What a clip of a review stands on in the library. */
export type ClipSource = {
  readonly footageId: string | null;
  readonly table: FrameTable | undefined;
  readonly realTimeFactor: number;
};

type Placed = {
  readonly id: string;
  readonly clip: Clip;
  readonly footing: ClipSource;
  readonly repIds: ReadonlyMap<number, string>;
};

/**
 * Adds the rows of a checked review as a session of a given id, within one act. Everything else gets new ids, given
 * back for the clips. Throws `bad-review` when a moment does not lie in its footage.
 */
export function writeReviewRows(
  changes: Changes,
  review: Review,
  footings: ReadonlyMap<string, ClipSource>,
  {
    sessionId,
    speaks,
    readOnly = false,
  }: { readonly sessionId: string; readonly speaks: 'file' | 'library'; readonly readOnly?: boolean },
): ReadonlyMap<string, string> {
  const { session } = review;
  changes.insert('session', {
    id: sessionId,
    trainee_id: traineeFor(changes, review),
    title: session.title,
    date: session.date,
    notes: session.notes,
    pain_note: session.painNote,
    voice: speaks === 'file' ? review.voice : null,
    coach: speaks === 'file' ? (review.coach ?? null) : null,
    created_at: new Date().toISOString(),
    rubric_version: review.rubric?.version ?? firstRubricVersion,
    ...(readOnly && { read_only: 1 }),
    ...overrideColumns(session.override),
  });
  const placed = new Map<string, Placed>();
  review.entries.forEach((entry, index) => {
    const entryId = writeEntry(changes, sessionId, entry, index);
    entry.clips.forEach((clip, ordinal) => {
      const footing = footings.get(clip.id) ?? { footageId: null, table: undefined, realTimeFactor: 1 };
      placed.set(clip.id, writeClip(changes, { entryId, clip, ordinal, footing }));
    });
    writeFlags(changes, entry, placed);
    writeTicks(changes, entry, placed);
  });
  return new Map([...placed].map(([clipId, { id }]) => [clipId, id]));
}

/** The trainee of the review if the library has exactly this one, else a new one. */
function traineeFor(changes: Changes, { trainee }: Review): string {
  const { name, goal, experience, units, minor } = trainee;
  const known = listTrainees(changes.reading)
    .map(traineeOf)
    .find(
      (each) =>
        each.name === name &&
        each.goal === goal &&
        each.experience === experience &&
        each.units === units &&
        each.minor === minor,
    );
  if (known) return known.id;
  const id = randomUUID();
  changes.insert('trainee', { id, ...traineeColumns(trainee), created_at: new Date().toISOString() });
  return id;
}

function writeEntry(changes: Changes, sessionId: string, entry: Entry, index: number): string {
  const id = randomUUID();
  changes.insert('entry', {
    id,
    session_id: sessionId,
    ordinal: index + 1,
    exercise: entry.exercise,
    ...planColumns(entry.plan),
    sets_done: entry.setsDone ?? null,
    ...overrideColumns(entry.override),
  });
  return id;
}

function writeClip(
  changes: Changes,
  {
    entryId,
    clip,
    ordinal,
    footing,
  }: Omit<Placed, 'id' | 'repIds'> & { readonly entryId: string; readonly ordinal: number },
): Placed {
  const id = randomUUID();
  changes.insert('clip', {
    id,
    entry_id: entryId,
    footage_id: footing.footageId,
    ordinal: ordinal + 1,
    name: clip.name,
    view: clip.view,
    real_time_factor: Math.min(100, Math.max(0.01, footing.realTimeFactor)),
    load_kg: clip.loadKg ?? null,
  });
  const repIds = new Map<number, string>();
  for (const rep of clip.reps) {
    const place = (moment: typeof rep.end) => moment && placeMoment(moment, footing.table, clip);
    const repId = randomUUID();
    changes.insert('rep', {
      id: repId,
      clip_id: id,
      ...edgeMoment('start', place(rep.start), byOf(rep, 'start')),
      ...edgeMoment('long_end', place(rep.longEnd), byOf(rep, 'longEnd')),
      ...edgeMoment('end', place(rep.end), byOf(rep, 'end')),
    });
    repIds.set(rep.index, repId);
  }
  if (clip.setUp) changes.insert('clip_set_up', setUpRow(id, clip.setUp));
  clip.drawings?.forEach((drawing, index) => {
    changes.insert('drawing', {
      id: randomUUID(),
      clip_id: id,
      ordinal: index + 1,
      ...drawnColumns(drawnOf(drawing)),
      ...momentColumns('from', placeMoment(drawing.from, footing.table, clip)),
      ...momentColumns('to', placeMoment(drawing.to, footing.table, clip)),
    });
  });
  return { id, clip, footing, repIds };
}

const byOf = (rep: Rep, edge: MeasuredEdge) => (rep.measured?.includes(edge) ? 'measure' : 'person');

function writeFlags(changes: Changes, entry: Entry, placed: ReadonlyMap<string, Placed>): void {
  entry.flags.forEach((flag, index) => {
    const { id: clipId, clip, footing, repIds } = placedClip(placed, flag.clip);
    const id = randomUUID();
    changes.insert('flag', {
      id,
      clip_id: clipId,
      ordinal: index + 1,
      criterion: flag.criterion,
      fault: flag.fault,
      weight: flag.weight,
      whole_set: flag.reps === 'set' ? 1 : 0,
      ...momentColumns('at', placeMoment(flag.at, footing.table, clip)),
      note: flag.note,
      cue: flag.cue,
    });
    for (const repId of idsOf(flag.reps, repIds)) changes.insert('flag_rep', { flag_id: id, rep_id: repId });
  });
}

function writeTicks(changes: Changes, entry: Entry, placed: ReadonlyMap<string, Placed>): void {
  const written = new Set<string>();
  for (const { clip, criterion, reps } of entry.ticks) {
    const { id: clipId, repIds } = placedClip(placed, clip);
    for (const repId of reps === 'set' ? [null] : idsOf(reps, repIds)) {
      const key = `${clipId} ${criterion} ${repId}`;
      if (written.has(key)) continue;
      written.add(key);
      changes.insert('tick', { id: randomUUID(), clip_id: clipId, criterion, rep_id: repId });
    }
  }
}

function placedClip(placed: ReadonlyMap<string, Placed>, clipId: string): Placed {
  const found = placed.get(clipId);
  if (!found) throw new Error('A judgement names a clip that its entry does not hold.');
  return found;
}

function idsOf(reps: Reps, repIds: ReadonlyMap<number, string>): string[] {
  return reps === 'set' ? [] : [...new Set(reps)].flatMap((number) => repIds.get(number) ?? []);
}
