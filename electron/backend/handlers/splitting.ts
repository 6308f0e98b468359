import { randomUUID } from 'node:crypto';
import { type FrameRange, holds, nearestIn } from '../../../engine/framing/section.ts';
import type { FrameTable } from '../../../engine/time/frameTable.ts';
import type { Changes, Row } from '../store/changes.ts';
import { frameOf, momentColumns } from '../store/columns.ts';
import { coverOf, listCovers } from '../store/covers.ts';
import { listDrawings } from '../store/drawings.ts';
import { type FlagRow, listFlags, listTicks, repIdsOfFlag } from '../store/judgements.ts';
import { findSetUp, listSuggestionAnswers, setUpRow } from '../store/measuring.ts';
import { edgeMoment, listReps, type RepRow } from '../store/reps.ts';

/** One of the clips that a long one becomes; the first is the clip itself. */
export type Part = { readonly clipId: string; readonly range: FrameRange };

type Split = { readonly parts: readonly Part[]; readonly table: FrameTable };

/** Gives everything on a clip to the parts that show it, within one act. */
export function moveToParts(changes: Changes, clipId: string, split: Split): void {
  const { parts, table } = split;
  const partAt = (frame: number): Part => {
    const part = parts.find(({ range }) => holds(range, frame)) ?? parts.at(-1);
    if (!part) throw new Error('A clip was split into nothing.');
    return part;
  };
  copySetUp(changes, clipId, parts);
  copyDismissed(changes, clipId, parts);
  const reps = listReps(changes.reading, clipId);
  const homes = new Map(reps.map((rep) => [rep.id, partAt(frameOf(rep, 'start') ?? 0)]));
  for (const rep of reps) {
    const home = homes.get(rep.id);
    if (!home) continue;
    if (home.clipId !== clipId) changes.update('rep', { id: rep.id }, { clip_id: home.clipId });
    endWithin(changes, rep, home.range, table);
  }
  for (const flag of listFlags(changes.reading, clipId)) {
    moveFlag(changes, flag, { split, reps, homes, here: partAt(frameOf(flag, 'at') ?? 0) });
  }
  moveTicks(changes, clipId, { parts, homes });
  moveDrawings(changes, clipId, { table, partAt });
  copyCovers(changes, clipId, parts);
}

/** Lets a rep end with the section that it starts in; a stretched end beyond that was not seen. */
export function endWithin(changes: Changes, rep: RepRow, { lastFrame }: FrameRange, table: FrameTable): void {
  const last = { frame: lastFrame, ticks: table.ticks[lastFrame] ?? 0 };
  const end = frameOf(rep, 'end');
  const stretchedEnd = frameOf(rep, 'stretched_end');
  const isCut = end !== undefined && end > lastFrame;
  const isLost = stretchedEnd !== undefined && stretchedEnd >= lastFrame;
  if (!isCut && !isLost) return;
  const start = frameOf(rep, 'start') ?? 0;
  changes.update(
    'rep',
    { id: rep.id },
    {
      ...(isCut && edgeMoment('end', start < lastFrame ? last : undefined, 'person')),
      ...(isLost && edgeMoment('stretched_end', undefined, 'person')),
    },
  );
}

function copySetUp(changes: Changes, clipId: string, parts: readonly Part[]): void {
  const setUp = findSetUp(changes.reading, clipId);
  if (!setUp) return;
  for (const part of parts) {
    if (part.clipId !== clipId) changes.insert('clip_set_up', setUpRow(part.clipId, setUp));
  }
}

/** What was dismissed of the whole is dismissed in each part; from then on each part has its own answers. */
function copyDismissed(changes: Changes, clipId: string, parts: readonly Part[]): void {
  const dismissed = listSuggestionAnswers(changes.reading, clipId).filter(({ answer }) => answer === 'dismissed');
  for (const part of parts) {
    if (part.clipId === clipId) continue;
    for (const answer of dismissed) changes.insert('suggestion_answer', { ...answer, clip_id: part.clipId });
  }
}

type Homes = ReadonlyMap<string, Part>;
type FlagMove = {
  readonly split: Split;
  readonly reps: readonly RepRow[];
  readonly homes: Homes;
  readonly here: Part;
};

/**
 * A flag goes to the part that shows its moment. Where it names reps of several parts it is told in each of them, which judges the
 * same; where it names none of the part that shows it, it goes to its reps.
 */
function moveFlag(changes: Changes, flag: FlagRow, { split: { table }, reps, homes, here }: FlagMove): void {
  const named = new Set(repIdsOfFlag(changes.reading, flag.id));
  const own = reps.filter(({ id }) => named.has(id));
  const byPart = Map.groupBy(own, ({ id }) => homes.get(id)?.clipId ?? here.clipId);
  const home = byPart.size === 0 || byPart.has(here.clipId) ? here : (homes.get(own[0]?.id ?? '') ?? here);
  const at = nearestIn(home.range, frameOf(flag, 'at') ?? 0);
  if (home.clipId !== flag.clip_id) {
    // The suggestion that it was is one of the clip that it leaves.
    for (const answer of listSuggestionAnswers(changes.reading, flag.clip_id)) {
      const { clip_id, suggestion_id } = answer;
      if (answer.flag_id === flag.id) changes.remove('suggestion_answer', { clip_id, suggestion_id });
    }
  }
  changes.update('flag', { id: flag.id }, { clip_id: home.clipId, ...momentAt(table, at) });
  for (const [clipId, others] of byPart) {
    if (clipId === home.clipId) continue;
    const copy = randomUUID();
    changes.insert('flag', {
      ...flag,
      id: copy,
      clip_id: clipId,
      ...momentAt(table, frameOf(others[0] ?? {}, 'start') ?? 0),
    });
    for (const { id: rep_id } of others) {
      changes.remove('flag_rep', { flag_id: flag.id, rep_id });
      changes.insert('flag_rep', { flag_id: copy, rep_id });
    }
  }
}

const momentAt = ({ ticks }: FrameTable, frame: number): Row =>
  momentColumns('at', { frame, ticks: ticks[frame] ?? 0 });

/** A tick on a rep goes with the rep; one on the whole set is one on each. */
function moveTicks(
  changes: Changes,
  clipId: string,
  { parts, homes }: { readonly parts: readonly Part[]; readonly homes: Homes },
): void {
  for (const { id, criterion, rep_id } of listTicks(changes.reading, clipId)) {
    if (rep_id !== null) {
      const home = homes.get(rep_id);
      if (home && home.clipId !== clipId) changes.update('tick', { id }, { clip_id: home.clipId });
      continue;
    }
    for (const part of parts) {
      if (part.clipId === clipId) continue;
      changes.insert('tick', { id: randomUUID(), clip_id: part.clipId, criterion, rep_id: null });
    }
  }
}

function moveDrawings(
  changes: Changes,
  clipId: string,
  { table, partAt }: { readonly table: FrameTable; readonly partAt: (frame: number) => Part },
): void {
  for (const drawing of listDrawings(changes.reading, clipId)) {
    const home = partAt(frameOf(drawing, 'from') ?? 0);
    const last = Math.min(home.range.lastFrame, frameOf(drawing, 'to') ?? home.range.lastFrame);
    const to = momentColumns('to', { frame: last, ticks: table.ticks[last] ?? 0 });
    changes.update('drawing', { id: drawing.id }, { clip_id: home.clipId, ...to });
  }
}

/** What is covered stays covered in every part that shows it. */
function copyCovers(changes: Changes, clipId: string, parts: readonly Part[]): void {
  for (const row of listCovers(changes.reading, clipId)) {
    const { firstFrame, lastFrame } = coverOf(row);
    for (const { clipId: partId, range } of parts) {
      if (partId === clipId || lastFrame < range.firstFrame || firstFrame > range.lastFrame) continue;
      changes.insert('cover', { ...row, id: randomUUID(), clip_id: partId });
    }
  }
}
