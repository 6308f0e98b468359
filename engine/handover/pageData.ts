import type { Catalogue } from '../exercises/catalogue.ts';
import { seenPoint } from '../framing/picturePlaces.ts';
import { timedNotes } from '../notes/timedNotes.ts';
import type { Clip, Review } from '../review/review.ts';
import type { FlagRow } from '../sheet/flagRows.ts';
import { sheetLanguage } from '../sheet/sheetLanguage.ts';
import { browserSeekUs, frameAtUs, frameEndUs, frameStartUs } from '../time/frames.ts';
import type { FrameTable } from '../time/frameTable.ts';
import { momentUs } from '../time/moment.ts';
import type { ClipInFolder } from './handoverFolder.ts';
import { type LoadPath, loadPathOf, type PathPoint, pathInPart, roundedPx } from './loadPath.ts';
import { type NearSide, nearSideAngles, nearSideJoints } from './nearSide.ts';

/** A stretch of the clip with what it is called, in media seconds. */
export type Stretch = { readonly fromS: number; readonly toS: number; readonly text: string };

/** The near side in one frame, short: joints in the order of `nearSideJoints`, degrees in that of `nearSideAngles`. */
export type BodyOfFrame = { readonly joints: readonly PathPoint[]; readonly deg: readonly (number | null)[] };

/** What the start page's script knows of a clip. */
export type ClipData = {
  /** Id of the clip's section in the page. */
  readonly id: string;
  readonly table: FrameTable;
  /** What the clock says at each frame, in microseconds; null = the time of the file. */
  readonly clockUs: readonly number[] | null;
  /** Start of each note's frame and where to seek to, by the note's index in the list. */
  readonly notes: readonly { readonly atS: number; readonly seekS: number }[];
  readonly cues: readonly Stretch[];
  readonly reps: readonly Stretch[];
  readonly loadPath: LoadPath | null;
  readonly body: readonly (BodyOfFrame | null)[] | null;
};

/** What the start page's script says itself. */
export type PageWords = {
  /** BCP 47 tag for numbers. */
  readonly locale: string;
  readonly play: string;
  readonly pause: string;
  /** In the order of `nearSideAngles`. */
  readonly angles: readonly string[];
  readonly cues: string;
  readonly reps: string;
};

/** The JSON in the page's element `data`. */
export type PageData = { readonly clips: readonly ClipData[]; readonly words: PageWords };

const seconds = (us: number): number => us / 1e6;

/** When a remark's frame begins, and where a seek shows that frame and no other. */
function momentOf(row: FlagRow, table: FrameTable): ClipData['notes'][number] | null {
  if (row.us === null) return null;
  const frame = frameAtUs(table, Math.round(row.us));
  return { atS: seconds(frameStartUs(table, frame)), seekS: seconds(browserSeekUs(table, frame)) };
}

/** What the clock of a clip says at a media time of its file, in microseconds. */
export function clockAtUs({ table, clockUs }: Pick<ClipData, 'table' | 'clockUs'>, us: number): number {
  return clockUs?.[frameAtUs(table, us)] ?? us;
}

/** Remarks that have a time, with their moments, in the order of their times. */
export function timedRows(rows: readonly FlagRow[], table: FrameTable) {
  return rows
    .flatMap((row) => {
      const moment = momentOf(row, table);
      return moment === null ? [] : [{ row, moment }];
    })
    .sort((a, b) => a.moment.atS - b.moment.atS);
}

/** The reps as stretches: one without an end lasts till the next, or the clip's end. */
function repStretches(clip: Clip, table: FrameTable, name: (rep: number) => string): Stretch[] {
  const endS = seconds(frameEndUs(table, table.ticks.length - 1));
  const at = (moment: Parameters<typeof momentUs>[0]) => momentUs(moment, clip.facts);
  const starts = clip.reps
    .flatMap((rep) => {
      const startUs = at(rep.start);
      return startUs === null ? [] : [{ rep, startUs }];
    })
    .sort((a, b) => a.startUs - b.startUs);
  return starts.flatMap(({ rep, startUs }, index): Stretch[] => {
    const next = starts[index + 1];
    const latestS = next === undefined ? endS : Math.min(endS, seconds(next.startUs));
    const ownEndUs = rep.end === undefined ? null : at(rep.end);
    const toS = ownEndUs === null ? latestS : Math.min(latestS, seconds(ownEndUs));
    return toS > seconds(startUs) ? [{ fromS: seconds(startUs), toS, text: name(rep.index) }] : [];
  });
}

function pathOf({ measurement, camera, table, from }: ClipInFolder): LoadPath | null {
  if (measurement === null) return null;
  const path = loadPathOf(measurement, camera, from?.footage ?? table);
  return from === undefined ? path : path && pathInPart(path, from);
}

function bodyOf({ body, table, from }: ClipInFolder): ClipData['body'] {
  if (body === null) return null;
  const inFrame = (seen: NearSide | null): BodyOfFrame | null =>
    seen && {
      joints: nearSideJoints.map((joint) => {
        const joined = seen[joint];
        const point = joined && from ? seenPoint(from.part, joined) : joined;
        return point && [roundedPx(point.x), roundedPx(point.y)];
      }),
      deg: nearSideAngles.map(({ angle }) => seen[angle] && roundedPx(seen[angle])),
    };
  const firstFrame = from?.range.firstFrame ?? 0;
  return table.ticks.map((_, frame) => inFrame(body(firstFrame + frame)));
}

/** What the script knows of a clip; `rows` are its remarks. */
export function clipData(
  clip: Clip,
  inFolder: ClipInFolder,
  rows: readonly FlagRow[],
  about: { readonly id: string; readonly review: Review; readonly catalogue: Catalogue },
): ClipData {
  const { table } = inFolder;
  const { say } = sheetLanguage(about.catalogue.language ?? 'en');
  return {
    id: about.id,
    table,
    clockUs: inFolder.clockUs ?? null,
    notes: timedRows(rows, table).map(({ moment }) => moment),
    cues: timedNotes(about.review, about.catalogue, { clipId: clip.id }).cues.map(({ startMs, endMs, lines }) => ({
      fromS: startMs / 1000,
      toS: endMs / 1000,
      text: lines.join('\n'),
    })),
    reps: repStretches(clip, table, (rep) => say('inReps', { count: 1, reps: rep })),
    loadPath: pathOf(inFolder),
    body: bodyOf(inFolder),
  };
}
