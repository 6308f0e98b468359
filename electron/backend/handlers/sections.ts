import { randomUUID } from 'node:crypto';
import { partsOf } from '../../../engine/framing/cuts.ts';
import { type FrameRange, framesShown, holds, isWhole, type Section } from '../../../engine/framing/section.ts';
import type { FrameTable } from '../../../engine/time/frameTable.ts';
import { ProblemError } from '../../contract/reply.ts';
import type { Changes } from '../store/changes.ts';
import { type ClipHome, type ClipRow, findClip, listClips } from '../store/clips.ts';
import { frameOf } from '../store/columns.ts';
import type { Reading } from '../store/connection.ts';
import { readFrameTable } from '../store/frameTables.ts';
import { sectionColumns, sectionOf } from '../store/framing.ts';
import { flagIdsOfRep, listFlags, listTicks } from '../store/judgements.ts';
import { listReps, type RepRow } from '../store/reps.ts';
import { actOnSession } from './acts.ts';
import { assertNotNarrated } from './framing.ts';
import type { Handler } from './handler.ts';
import { endWithin, moveToParts } from './splitting.ts';

/** Shows a stretch of the footage alone, or all of it. Reps outside of it go; nothing that was judged does. */
export const trimClip: Handler<'clips.trim'> = (context, { clipId, section: asked }) => {
  const { reading } = context.library();
  const clip = findClip(reading, clipId);
  const table = tableOfClip(reading, clip);
  assertNotNarrated(reading, clip);
  const range = asked === null ? framesShown(null, table) : inTable(clip, table, asked);
  assertNothingJudgedOutside(reading, clip, range);
  return actOnSession(context, clip.session_id, (changes) => {
    changes.update('clip', { id: clipId }, sectionColumns(isWhole(range, table) ? null : sectionAt(table, range)));
    for (const rep of listReps(changes.reading, clipId)) {
      if (holdsRep(range, rep)) endWithin(changes, rep, range, table);
      else changes.remove('rep', { id: rep.id });
    }
    const how = asked === null ? 'whole' : 'section';
    return { name: { id: 'clipTrimmed', values: { clip: clip.name, how } }, value: {} };
  });
};

/** Makes a clip for each part of a long one, all on the same footage; what was judged goes to the clip that shows it. */
export const splitClip: Handler<'clips.split'> = (context, { clipId, cuts }) => {
  const { reading } = context.library();
  const clip = findClip(reading, clipId);
  const table = tableOfClip(reading, clip);
  assertNotNarrated(reading, clip);
  const parts = partsOf(framesShown(sectionOf(clip), table), cuts);
  if (parts.length < 2) throw new ProblemError('conflict', 'nothingToSplit', { clip: clip.name });
  return actOnSession(context, clip.session_id, (changes) => {
    const clipIds = addParts(changes, clip, { parts, table });
    moveToParts(changes, clip.id, {
      parts: parts.map((range, index) => ({ range, clipId: clipIds[index] ?? '' })),
      table,
    });
    return { name: { id: 'clipSplit', values: { clip: clip.name, count: parts.length } }, value: { clipIds } };
  });
};

type Parts = { readonly parts: readonly FrameRange[]; readonly table: FrameTable };

/** The clip itself becomes the first part; the others stand after it. */
function addParts(changes: Changes, { id, entry_id, name }: ClipHome, { parts, table }: Parts): string[] {
  const clips = listClips(changes.reading, entry_id);
  const own = clips.find((clip) => clip.id === id);
  if (!own) throw new Error('The clip is not among its entry’s clips.');
  for (const later of clips.filter(({ ordinal }) => ordinal > own.ordinal).reverse()) {
    changes.update('clip', { id: later.id }, { ordinal: later.ordinal + parts.length - 1 });
  }
  return parts.map((range, index) => {
    const columns = { ...sectionColumns(sectionAt(table, range)), name: partName(name, index + 1) };
    if (index === 0) {
      changes.update('clip', { id }, columns);
      return id;
    }
    const partId = randomUUID();
    changes.insert('clip', { ...own, ...columns, id: partId, ordinal: own.ordinal + index });
    return partId;
  });
}

const partName = (name: string, number: number): string => `${name.slice(0, 190)} (${number})`;

function tableOfClip(reading: Reading, clip: ClipRow): FrameTable {
  const table = clip.footage_id === null ? undefined : readFrameTable(reading, clip.footage_id, 'original');
  if (table && table.ticks.length > 0) return table;
  throw new ProblemError('conflict', 'nothingToFrame', { clip: clip.name });
}

function inTable(clip: ClipRow, { ticks }: FrameTable, { firstFrame, lastFrame }: FrameRange): FrameRange {
  for (const frame of [firstFrame, lastFrame]) {
    if (frame >= ticks.length) throw new ProblemError('conflict', 'noFrame', { clip: clip.name, frame });
  }
  if (lastFrame > firstFrame) return { firstFrame, lastFrame };
  throw new ProblemError('conflict', 'sectionEndsEarly');
}

const sectionAt = ({ ticks }: FrameTable, { firstFrame, lastFrame }: FrameRange): Section => ({
  from: { frame: firstFrame, ticks: ticks[firstFrame] ?? 0 },
  to: { frame: lastFrame, ticks: ticks[lastFrame] ?? 0 },
});

/** A rep belongs to the section that it starts in. */
const holdsRep = (range: FrameRange, rep: RepRow): boolean => holds(range, frameOf(rep, 'start') ?? 0);

function assertNothingJudgedOutside(reading: Reading, clip: ClipRow, range: FrameRange): void {
  const gone = new Set(
    listReps(reading, clip.id)
      .filter((rep) => !holdsRep(range, rep))
      .map(({ id }) => id),
  );
  const flags = new Set([
    ...listFlags(reading, clip.id)
      .filter((flag) => !holds(range, frameOf(flag, 'at') ?? 0))
      .map(({ id }) => id),
    ...[...gone].flatMap((id) => flagIdsOfRep(reading, id)),
  ]);
  const ticks = listTicks(reading, clip.id).filter(({ rep_id }) => rep_id !== null && gone.has(rep_id));
  if (flags.size + ticks.length === 0) return;
  throw new ProblemError('conflict', 'judgedOutside', { clip: clip.name });
}
