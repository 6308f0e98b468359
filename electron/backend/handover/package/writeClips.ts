import type { SeenPart } from '../../../../engine/framing/picturePlaces.ts';
import type { FrameRange } from '../../../../engine/framing/section.ts';
import type { SetMeasurement } from '../../../../engine/motion/measurement.ts';
import type { CameraPath } from '../../../../engine/recording/recording.ts';
import { isJudging } from '../../../../engine/review/parts.ts';
import type { Clip, ClipFacts } from '../../../../engine/review/review.ts';
import { exerciseName, flagRows } from '../../../../engine/sheet/flagRows.ts';
import { sheetLanguage } from '../../../../engine/sheet/sheetLanguage.ts';
import type { FrameTable } from '../../../../engine/time/frameTable.ts';
import { sayProblem } from '../../../../engine/wording/sayProblem.ts';
import type { Undelivered } from '../../../contract/handover.ts';
import type { MediaTools } from '../../media/tools/mediaTools.ts';
import { framesOf, partSeenOf } from '../render/picture.ts';
import type { HandoverSource, HandoverWork, OpenedClip } from '../source/handoverSource.ts';
import type { WrittenClip } from './clipParts.ts';
import { type ClipNames, packageNames } from './fileNames.ts';
import { undelivered, type WantedFiles, writeClip } from './writeClip.ts';

/** One clip of a session when all that could be written of it is written. */
export type ClipOfHandover = {
  readonly clipId: string;
  readonly names: ClipNames;
  /** Null: its footage could not be opened. */
  readonly opened: {
    readonly facts: ClipFacts;
    readonly table: FrameTable;
    /** The frames of its section. */
    readonly range: FrameRange;
    /** What is seen of its upright picture. */
    readonly part: SeenPart;
    readonly camera: CameraPath | null;
    readonly body: OpenedClip['clip']['body'];
    readonly measurement: SetMeasurement | null;
    readonly written: WrittenClip;
  } | null;
  readonly failed: readonly Undelivered[];
};

/** Writes what is wanted of every clip of a session into a folder, one after the other. Throws `cancelled` and `disk`. */
export async function writeClips(
  tools: MediaTools,
  folder: string,
  { source, wanted }: { readonly source: HandoverSource; readonly wanted: WantedFiles },
  work: HandoverWork,
): Promise<readonly ClipOfHandover[]> {
  const { review, catalogue, names } = source.edition;
  const rows = flagRows(review, catalogue);
  const { format, severityKey } = sheetLanguage(catalogue.language ?? 'en');
  const all = review.entries.flatMap(({ exercise, clips }) => clips.map((clip) => ({ clip, exercise })));
  const rowsOf = ({ id }: Clip) => rows.filter((row) => row.clip === id);
  const namesOf = packageNames(all.map(({ clip }) => ({ clip, noteCount: rowsOf(clip).length })));
  const done: ClipOfHandover[] = [];
  for (const [index, { clip, exercise }] of all.entries()) {
    const files = namesOf.get(clip.id);
    if (files === undefined) continue;
    const report: HandoverWork['report'] = (share, message) => work.report((index + share) / all.length, message);
    const about = {
      review: clip,
      rows: rowsOf(clip),
      catalogue,
      files,
      card: {
        heading: exerciseName(catalogue, exercise),
        lines: [clip.name, ...(names === 'none' ? [] : [review.trainee.name]), format.date(review.session.date)],
        legend: rowsOf(clip).some(isJudging) ? severityKey : '',
      },
    };
    done.push(await oneClip(tools, folder, { source, wanted, clip, about }, { signal: work.signal, report }));
  }
  const { hideName } = source.edition;
  return done.map((clip) => ({ ...clip, failed: clip.failed.map((part) => withoutName(part, hideName)) }));
}

/** Why something is missing, with no name in what it quotes: a file is called as the trainee called it. */
function withoutName({ clip, sentence, message }: Undelivered, hide: (text: string) => string): Undelivered {
  if (message === undefined) return { clip, sentence: hide(sentence) };
  const hidden = <T extends string | number>(value: T) => (typeof value === 'string' ? hide(value) : value);
  const values = Object.fromEntries(
    Object.entries(message.values).map(([id, value]) => [
      id,
      typeof value === 'object' ? value.map(hidden) : hidden(value),
    ]),
  );
  const told = { ...message, values };
  return { clip, sentence: sayProblem(told, 'en'), message: told };
}

async function oneClip(
  tools: MediaTools,
  folder: string,
  {
    source,
    wanted,
    clip,
    about,
  }: {
    readonly source: HandoverSource;
    readonly wanted: WantedFiles;
    readonly clip: Clip;
    readonly about: Parameters<typeof writeClip>[2]['about'];
  },
  { signal, report }: HandoverWork,
): Promise<ClipOfHandover> {
  const { files } = about;
  try {
    const openShare = 0.2;
    const opened = await source.openClip(clip.id, {
      signal,
      report: (share, message) => report(openShare * share, message),
    });
    const written = await writeClip(
      tools,
      folder,
      { opened, about, wanted },
      { signal, report: (share, message) => report(openShare + (1 - openShare) * share, message) },
    );
    const { table, camera, body, measurement } = opened.clip;
    const [range, part] = [framesOf(opened.clip), partSeenOf(opened.clip)];
    const known = { facts: opened.facts, table, range, part, camera, body, measurement, written };
    return { clipId: clip.id, names: files, opened: known, failed: written.failed };
  } catch (error) {
    return { clipId: clip.id, names: files, opened: null, failed: [undelivered(clip.name, error)] };
  }
}
