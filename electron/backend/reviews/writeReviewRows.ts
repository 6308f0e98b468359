import { randomUUID } from 'node:crypto';
import { type Equipment, isSameEquipment } from '../../../engine/exercises/equipment.ts';
import type { Section } from '../../../engine/framing/section.ts';
import { isSameName } from '../../../engine/names/folding.ts';
import { isNameless, namelessBeside } from '../../../engine/names/shownName.ts';
import { drawnOf } from '../../../engine/review/drawings/drawing.ts';
import type { Clip, Entry, MeasuredEdge, Rep, Reps, Review } from '../../../engine/review/review.ts';
import { frameOfMoment, frameStartUs } from '../../../engine/time/frames.ts';
import type { FrameTable } from '../../../engine/time/frameTable.ts';
import { type Moment, ticksToUs } from '../../../engine/time/moment.ts';
import { ProblemError } from '../../contract/reply.ts';
import type { Trainee } from '../../contract/trainees.ts';
import { firstRubricVersion } from '../catalogue/loadCatalogue.ts';
import type { Changes } from '../store/changes.ts';
import { equipmentColumn, momentColumns, overrideColumns } from '../store/columns.ts';
import { drawnColumns } from '../store/drawings.ts';
import { planColumns } from '../store/entries.ts';
import { framingColumns, sectionColumns } from '../store/framing.ts';
import { setUpRow } from '../store/measuring.ts';
import { edgeMoment } from '../store/reps.ts';
import { listTrainees, traineeColumns, traineeOf } from '../store/trainees.ts';

/** The footage a clip of a review has in the library. */
export type ClipSource = {
  readonly footageId: string | null;
  readonly table: FrameTable | undefined;
  readonly realTimeFactor: number;
};

type WrittenClip = {
  readonly id: string;
  readonly clip: Clip;
  readonly source: ClipSource;
  readonly repIds: ReadonlyMap<number, string>;
};

/**
 * Adds the rows of a checked review as a session of a given id, within one act. Everything else gets new ids, given
 * back for the clips. Throws `bad-review` when a moment does not lie in its footage.
 */
export function writeReviewRows(
  changes: Changes,
  review: Review,
  sources: ReadonlyMap<string, ClipSource>,
  {
    sessionId,
    speaks,
    readOnly = false,
  }: { readonly sessionId: string; readonly speaks: 'file' | 'library'; readonly readOnly?: boolean },
): ReadonlyMap<string, string> {
  const { session } = review;
  const trainee = traineeFor(changes, review);
  changes.insert('session', {
    id: sessionId,
    trainee_id: trainee.id,
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
    ...equipmentColumn(session.equipment ?? equipmentOnDay(review, trainee)),
  });
  const written = new Map<string, WrittenClip>();
  review.entries.forEach((entry, index) => {
    const entryId = writeEntry(changes, sessionId, entry, index);
    entry.clips.forEach((clip, ordinal) => {
      const source = sources.get(clip.id) ?? { footageId: null, table: undefined, realTimeFactor: 1 };
      written.set(clip.id, writeClip(changes, { entryId, clip, ordinal, source }));
    });
    tieCameras(changes, entry, written);
    writeFlags(changes, entry, written);
    writeTicks(changes, entry, written);
  });
  return new Map([...written].map(([clipId, { id }]) => [clipId, id]));
}

/**
 * The trainee of the review if the library has this one, whatever they train with; else a new one. Whoever is not named is somebody of
 * their own each time.
 */
function traineeFor(changes: Changes, { trainee: reviewed }: Review): Trainee {
  const there = listTrainees(changes.reading).map(traineeOf);
  const nameless = isNameless(reviewed.name);
  const trainee = nameless ? { ...reviewed, name: namelessBeside(there.map((each) => each.name)) } : reviewed;
  const { name, goal, experience, units, minor } = trainee;
  const known =
    !nameless &&
    there.find(
      (each) =>
        isSameName(each.name, name) &&
        each.goal === goal &&
        each.experience === experience &&
        each.units === units &&
        each.minor === minor,
    );
  if (known) return known;
  const id = randomUUID();
  changes.insert('trainee', { id, ...traineeColumns(trainee), created_at: new Date().toISOString() });
  return { ...trainee, id };
}

/** What the review's trainee had, where the library knows the trainee with something else. */
function equipmentOnDay({ trainee }: Review, known: Trainee): Equipment | undefined {
  const { equipment } = trainee;
  const isKnown =
    equipment !== undefined && known.equipment !== undefined && isSameEquipment(equipment, known.equipment);
  return isKnown ? undefined : equipment;
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
    source,
  }: Omit<WrittenClip, 'id' | 'repIds'> & { readonly entryId: string; readonly ordinal: number },
): WrittenClip {
  const id = randomUUID();
  changes.insert('clip', {
    id,
    entry_id: entryId,
    footage_id: source.footageId,
    ordinal: ordinal + 1,
    name: clip.name,
    view: clip.view,
    real_time_factor: Math.min(100, Math.max(0.01, source.realTimeFactor)),
    load_kg: clip.loadKg ?? null,
    ...framingColumns(clip.framing),
    ...sectionColumns(clip.section && sectionInFootage(clip.section, source.table, clip)),
  });
  const repIds = new Map<number, string>();
  for (const rep of clip.reps) {
    const toMoment = (moment: typeof rep.end) => moment && momentInFootage(moment, source.table, clip);
    const repId = randomUUID();
    changes.insert('rep', {
      id: repId,
      clip_id: id,
      ...edgeMoment('start', toMoment(rep.start), byOf(rep, 'start')),
      ...edgeMoment('stretched_end', toMoment(rep.stretchedEnd), byOf(rep, 'stretchedEnd')),
      ...edgeMoment('end', toMoment(rep.end), byOf(rep, 'end')),
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
      ...momentColumns('from', momentInFootage(drawing.from, source.table, clip)),
      ...momentColumns('to', momentInFootage(drawing.to, source.table, clip)),
    });
  });
  return { id, clip, source, repIds };
}

/** Clips of one set name the one that leads, and their reps are the same under the same numbers. */
function tieCameras(changes: Changes, { clips }: Entry, written: ReadonlyMap<string, WrittenClip>): void {
  for (const { id, sameSet } of clips) {
    const other = written.get(id);
    const lead = written.get(sameSet?.clip ?? '');
    if (sameSet === undefined || other === undefined || lead === undefined) continue;
    const columns = { same_set_as: lead.id, same_set_offset_us: sameSet.offsetUs };
    changes.update('clip', { id: other.id }, columns);
    for (const [index, repId] of other.repIds) {
      const same = lead.repIds.get(index) ?? repId;
      for (const rep of [same, repId]) changes.update('rep', { id: rep }, { same_rep: same });
    }
  }
}

const byOf = (rep: Rep, edge: MeasuredEdge) => (rep.measured?.includes(edge) ? 'measure' : 'person');

function writeFlags(changes: Changes, entry: Entry, clips: ReadonlyMap<string, WrittenClip>): void {
  entry.flags.forEach((flag, index) => {
    const { id: clipId, clip, source, repIds } = writtenClip(clips, flag.clip);
    const id = randomUUID();
    changes.insert('flag', {
      id,
      clip_id: clipId,
      ordinal: index + 1,
      criterion: flag.criterion,
      fault: flag.fault,
      severity: flag.severity,
      whole_set: flag.reps === 'set' ? 1 : 0,
      ...momentColumns('at', momentInFootage(flag.at, source.table, clip)),
      note: flag.note,
      cue: flag.cue,
    });
    for (const repId of idsOf(flag.reps, repIds)) changes.insert('flag_rep', { flag_id: id, rep_id: repId });
  });
}

function writeTicks(changes: Changes, entry: Entry, clips: ReadonlyMap<string, WrittenClip>): void {
  const written = new Set<string>();
  for (const { clip, criterion, reps } of entry.ticks) {
    const { id: clipId, repIds } = writtenClip(clips, clip);
    for (const repId of reps === 'set' ? [null] : idsOf(reps, repIds)) {
      const key = `${clipId} ${criterion} ${repId}`;
      if (written.has(key)) continue;
      written.add(key);
      changes.insert('tick', { id: randomUUID(), clip_id: clipId, criterion, rep_id: repId });
    }
  }
}

function writtenClip(clips: ReadonlyMap<string, WrittenClip>, clipId: string): WrittenClip {
  const found = clips.get(clipId);
  if (!found) throw new Error('A judgement names a clip that its entry does not hold.');
  return found;
}

function idsOf(reps: Reps, repIds: ReadonlyMap<number, string>): string[] {
  return reps === 'set' ? [] : [...new Set(reps)].flatMap((number) => repIds.get(number) ?? []);
}

/**
 * A moment of a review as a frame of the footage it was made on: seconds become the frame showing then. Without a
 * frame table it stays as it is. Throws `bad-review` when it does not lie in the footage.
 */
function momentInFootage(moment: Moment, table: FrameTable | undefined, clip: Clip): Moment {
  if (!table) return moment;
  if ('frame' in moment) {
    if (table.ticks[moment.frame] === moment.ticks) return moment;
    throw misplacedFrame(clip, moment.frame);
  }
  const lastsUs = ticksToUs(table.endTicks, table.timeBase) - frameStartUs(table, 0);
  if (Math.round(moment.seconds * 1_000_000) > lastsUs) throw misplacedSeconds(clip, moment.seconds);
  const frame = frameOfMoment(moment, table);
  const ticks = table.ticks[frame];
  if (ticks === undefined) throw misplacedFrame(clip, frame);
  return { frame, ticks };
}

/** Throws `bad-review` for a section that is not one of the footage. */
function sectionInFootage({ from, to }: Section, table: FrameTable | undefined, clip: Clip): Section {
  for (const { frame, ticks } of [from, to]) {
    if (table !== undefined && table.ticks[frame] !== ticks) throw misplacedFrame(clip, frame);
  }
  return { from, to };
}

const misplacedFrame = (clip: Clip, frame: number): ProblemError =>
  new ProblemError('bad-review', 'reviewFrameMisplaced', { clip: clip.name.slice(0, 60), frame });

const misplacedSeconds = (clip: Clip, seconds: number): ProblemError =>
  new ProblemError('bad-review', 'reviewSecondsMisplaced', {
    clip: clip.name.slice(0, 60),
    seconds: seconds.toFixed(3),
  });
