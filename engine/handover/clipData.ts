import type { Catalogue } from '../exercises/catalogue.ts';
import { fill } from '../language/fill.ts';
import { inverseOf } from '../motion/camera/similarity.ts';
import { ontoFirst, steadied } from '../motion/camera/steadied.ts';
import type { SetMeasurement } from '../motion/measurement.ts';
import type { CameraPath, PointPx } from '../recording/recording.ts';
import type { Clip, Review } from '../review/review.ts';
import type { FlagRow } from '../sheet/flagRows.ts';
import { timedNotes } from '../sheet/notes/timedNotes.ts';
import { sheetLanguage } from '../sheet/sheetLanguage.ts';
import { frameAtUs, frameEndUs, frameStartUs, seekTargetUs } from '../time/frames.ts';
import type { FrameTable } from '../time/frameTable.ts';
import { momentUs } from '../time/moment.ts';
import type { BodyOnPage, ClipInFolder } from './handoverFolder.ts';

/** A stretch of the clip with what it is called, in media seconds. */
export type Stretch = { readonly fromS: number; readonly toS: number; readonly text: string };

/** A numbered point or null; six numbers of an affine map as SVG's `matrix` takes them. */
type Point = readonly [x: number, y: number] | null;
type Matrix = readonly [number, number, number, number, number, number];

/** The way of the load: its places laid over the first frame, and what lays them over each frame. */
export type Way = {
  /** First and last frame of each rep. */
  readonly reps: readonly (readonly [first: number, last: number])[];
  readonly places: readonly Point[];
  /** One for each frame; null where the camera stood still. */
  readonly laid: readonly Matrix[] | null;
};

/** Shoulder, hip, knee and ankle; knee and trunk in degrees. */
export type BodyOfFrame = { readonly joints: readonly Point[]; readonly deg: readonly (number | null)[] };

/** What the page's script knows of a clip. */
export type ClipData = {
  readonly id: string;
  readonly timesS: readonly number[];
  readonly endS: number;
  /** Start of each note's frame and where to seek to, by the note's place in the list. */
  readonly notes: readonly { readonly atS: number; readonly seekS: number }[];
  readonly cues: readonly Stretch[];
  readonly reps: readonly Stretch[];
  readonly way: Way | null;
  readonly body: readonly (BodyOfFrame | null)[] | null;
};

const seconds = (us: number): number => us / 1e6;
/** Places to a tenth of a pixel; turns so that they hold that over the largest picture. */
const rounded = (value: number): number => Math.round(value * 10) / 10;
const exact = (value: number): number => Math.round(value * 1e6) / 1e6;

/** The frame of a moment, as near as the file's own table knows it. */
function frameOf(us: number, table: FrameTable): number {
  return frameAtUs(table, Math.round(us));
}

/** When a remark's frame begins, and the middle of it, where a seek shows that frame and no other. */
function momentOf(row: FlagRow, table: FrameTable): ClipData['notes'][number] | null {
  if (row.us === null) return null;
  const frame = frameOf(row.us, table);
  return { atS: seconds(frameStartUs(table, frame)), seekS: seconds(seekTargetUs(table, frame)) };
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
  const at = (moment: Parameters<typeof momentUs>[0]) => momentUs(moment, clip.facts?.timeBase);
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

/** What lays places of the first frame over another, as a matrix. */
function overFrame(camera: CameraPath, frame: number): Matrix {
  const { a, b, shiftXPx, shiftYPx } = inverseOf(ontoFirst(camera, frame));
  return [exact(a), exact(b), exact(-b), exact(a), rounded(shiftXPx), rounded(shiftYPx)];
}

function steadyPoint(camera: CameraPath | null, frame: number, place: PointPx): Point {
  const { xPx, yPx } = steadied(camera, frame, place);
  return [rounded(xPx), rounded(yPx)];
}

function wayOf(measurement: SetMeasurement | null, camera: CameraPath | null, table: FrameTable): Way | null {
  if (measurement === null || measurement.reps.length === 0) return null;
  const { curves, reps } = measurement;
  const firstUs = frameStartUs(table, 0);
  const frameAtS = (atS: number): number => frameOf(firstUs + atS * 1e6, table);
  return {
    reps: reps.map(({ startS, endS }) => [frameAtS(startS), frameAtS(endS)]),
    places: curves.placePx.map((place, frame) => (place === null ? null : steadyPoint(camera, frame, place))),
    laid: camera?.moves && camera.removable ? camera.frames.map((_, frame) => overFrame(camera, frame)) : null,
  };
}

function bodyOf(body: ClipInFolder['body'], table: FrameTable): ClipData['body'] {
  if (body === null) return null;
  const inFrame = (seen: BodyOnPage | null): BodyOfFrame | null => {
    if (seen === null) return null;
    const joints = [seen.shoulder, seen.hip, seen.knee, seen.ankle].map(
      (joint): Point => (joint === null ? null : [rounded(joint.x), rounded(joint.y)]),
    );
    return { joints, deg: [seen.kneeDeg, seen.trunkLeanDeg].map((deg) => (deg === null ? null : rounded(deg))) };
  };
  return table.ticks.map((_, frame) => inFrame(body(frame)));
}

/** What the script knows of a clip; `rows` are its remarks. */
export function clipData(
  clip: Clip,
  inFolder: ClipInFolder,
  rows: readonly FlagRow[],
  about: { readonly id: string; readonly review: Review; readonly catalogue: Catalogue },
): ClipData {
  const { table } = inFolder;
  const { words } = sheetLanguage(about.catalogue.language ?? 'en');
  return {
    id: about.id,
    timesS: table.ticks.map((_, frame) => seconds(frameStartUs(table, frame))),
    endS: seconds(frameEndUs(table, table.ticks.length - 1)),
    notes: timedRows(rows, table).map(({ moment }) => moment),
    cues: timedNotes(about.review, about.catalogue, { clipId: clip.id }).cues.map(({ startMs, endMs, lines }) => ({
      fromS: startMs / 1000,
      toS: endMs / 1000,
      text: lines.join('\n'),
    })),
    reps: repStretches(clip, table, (rep) => fill(words.inRep, { reps: String(rep) })),
    way: wayOf(inFolder.measurement, inFolder.camera, table),
    body: bodyOf(inFolder.body, table),
  };
}
