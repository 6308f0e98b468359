import { createHash } from 'node:crypto';
import type { SetMeasurement } from '../../../engine/motion/measurement.ts';
import { measureSection } from '../../../engine/motion/set/measureSection.ts';
import type { Recording } from '../../../engine/recording/recording.ts';
import type { Warning } from '../../../engine/recording/warnings.ts';
import type { Review } from '../../../engine/review/review.ts';
import type { Context } from '../context/context.ts';
import { findKeptSpeed, keepSpeed } from '../store/clipSpeeds.ts';
import type { Library } from '../store/library.ts';
import { findRecordingStamp, type RecordedParts, type RecordingStamp, readRecordedParts } from '../store/recordings.ts';
import { assertSound } from '../store/rowDigests.ts';
import { type ClipToMeasure, clipToMeasure, lookedAt } from './clipToMeasure.ts';
import { manualReps } from './measuredReps.ts';

/** A clip's recording and when its newest part was made. */
export type KnownRecording = { readonly recording: Recording; readonly recordedAt: string };

type Kept = {
  readonly recordingKey: string;
  readonly known: KnownRecording;
  readonly measuredKey: string;
  readonly measurement: SetMeasurement | null;
  /** Without what a person set, where that was asked for. */
  readonly unaided: { readonly measuredKey: string; readonly measurement: SetMeasurement | null } | null;
};

/** Unpacking and measuring take a while, and a screen asks after every act, so the clips asked for last are kept. */
const mostKept = 8;
const keptOf = new WeakMap<Library, Map<string, Kept>>();

/** The recording of a clip under its clicks, whichever method made it; undefined until it was recorded. */
export function recordingOfClip(library: Library, asked: ClipToMeasure): KnownRecording | undefined {
  return keptFor(library, asked)?.known;
}

/** What is measured of a clip, with its manual edges in place; null until it was recorded. */
export function measurementOfClip(library: Library, asked: ClipToMeasure): SetMeasurement | null {
  const kept = keptFor(library, asked);
  const measuredKey = measuredKeyOf(asked);
  if (!kept || measuredKey === null) return null;
  if (kept.measuredKey === measuredKey) return kept.measurement;
  const measurement = measureRecording(asked, kept.known.recording);
  keep(library, asked.clip.id, { ...kept, measuredKey, measurement });
  return measurement;
}

/** The same without the edges and depth clicks that a person set; null where there are none, or nothing was recorded. */
export function unaidedMeasurementOfClip(library: Library, asked: ClipToMeasure): SetMeasurement | null {
  const { setUp, reps, source } = asked;
  if (!source || (setUp.depthClicks.length === 0 && manualReps(reps, source.table).length === 0)) return null;
  const kept = keptFor(library, asked);
  const measuredKey = measuredKeyOf(asked);
  if (!kept || measuredKey === null) return null;
  if (kept.unaided?.measuredKey === measuredKey) return kept.unaided.measurement;
  const unaided = { ...asked, setUp: { ...setUp, depthClicks: [] }, reps: [] };
  const measurement = measureRecording(unaided, kept.known.recording);
  keep(library, asked.clip.id, { ...kept, unaided: { measuredKey, measurement } });
  return measurement;
}

/** Raise this when the same recording gives other numbers, so that kept measures are computed again. */
const arithmetic = 2;

/** A digest of everything that a clip's measures depend on; null until it was recorded. */
export function measuredFrom(library: Library, asked: ClipToMeasure): string | null {
  const stamps = stampsOf(library, asked);
  const measuredKey = measuredKeyOf(asked);
  if (stamps.length === 0 || measuredKey === null) return null;
  return createHash('sha256')
    .update(JSON.stringify([arithmetic, asked.clip.footage_id, stamps, measuredKey]))
    .digest('hex');
}

function measuredKeyOf(asked: ClipToMeasure): string | null {
  const { clip, setUp, reps, source } = asked;
  if (!source) return null;
  const edges = manualReps(reps, source.table);
  const { frames } = lookedAt(asked);
  const parts = [source.exercise.id, clip.view, clip.real_time_factor, setUp, edges];
  return JSON.stringify(frames === null ? parts : [...parts, frames]);
}

/** What is measured of a session's clips, by clip; those that were not measured are left out. */
export function measuresOf(context: Context, { entries }: Review): ReadonlyMap<string, SetMeasurement> {
  const library = context.library();
  const measured = entries.flatMap(({ clips }) =>
    clips.flatMap(({ id }) => {
      const measurement = measurementOfClip(library, clipToMeasure(context, library.reading, id));
      return measurement === null ? [] : [[id, measurement] as const];
    }),
  );
  return new Map(measured);
}

/** What is measured of a clip from parts that were just recorded; null when its footage or exercise is not known. */
export function measureParts(asked: ClipToMeasure, parts: RecordedParts): SetMeasurement | null {
  return measureRecording(asked, recordingOf(parts));
}

function measureRecording({ clip, setUp, reps, source }: ClipToMeasure, recording: Recording): SetMeasurement | null {
  if (!source) return null;
  const { table, exercise, shown, range } = source;
  const set = {
    ...{ recording, table, shown },
    realTimeFactor: clip.real_time_factor,
    exercise,
    view: clip.view,
    setUp,
    edges: manualReps(reps, table),
  };
  return measureSection(set, range);
}

function stampsOf(library: Library, asked: ClipToMeasure): RecordingStamp[] {
  const { clip, setUp } = asked;
  const { footage_id: footageId } = clip;
  if (footageId === null) return [];
  return (['disc', 'point', 'joints'] as const).flatMap(
    (part) => findRecordingStamp(library.reading, footageId, part, setUp.clicks, lookedAt(asked)) ?? [],
  );
}

function keptFor(library: Library, asked: ClipToMeasure): Kept | undefined {
  const { clip, setUp } = asked;
  const { footage_id: footageId } = clip;
  if (footageId === null) return undefined;
  const stamps = stampsOf(library, asked);
  if (stamps.length === 0) {
    assertSound(library.reading, 'recording', footageId, 'recordingDamaged');
    return undefined;
  }
  const recordingKey = JSON.stringify([footageId, stamps]);
  const before = keptOf.get(library)?.get(clip.id);
  if (before?.recordingKey === recordingKey) return before;
  const recording = recordingOf(readRecordedParts(library.reading, footageId, setUp.clicks, lookedAt(asked)));
  const known = { recording, recordedAt: newest(stamps) };
  return keep(library, clip.id, { recordingKey, known, measuredKey: '', measurement: null, unaided: null });
}

function newest(stamps: readonly RecordingStamp[]): string {
  const ascending = stamps.map(({ recordedAt }) => recordedAt).sort();
  return ascending.at(-1) ?? '';
}

function keep(library: Library, clipId: string, kept: Kept): Kept {
  const all = keptOf.get(library) ?? new Map<string, Kept>();
  keptOf.set(library, all);
  all.delete(clipId);
  all.set(clipId, kept);
  for (const oldest of [...all.keys()].slice(0, -mostKept)) all.delete(oldest);
  return kept;
}

/** The parts as one recording; what was not looked for is null, as is what was not found. */
export function recordingOf({ disc, point, joints }: RecordedParts): Recording {
  return {
    disc: disc?.found ?? null,
    point: point?.found ?? null,
    joints: joints?.found ?? null,
    camera: disc?.camera ?? point?.camera ?? null,
    warnings: distinct([disc, point, joints].flatMap((part) => part?.warnings ?? [])),
  };
}

/** Each warning once: disc and point both tell of a camera that moves. */
const distinct = (warnings: readonly Warning[]): Warning[] => [
  ...new Map(warnings.map((warning) => [JSON.stringify(warning), warning])).values(),
];

/**
 * Mean concentric speed of a clip's fastest rep, in metres a second; null where none is measured in metres, or they are
 * about only. Measured once and kept in the library until the recording, the set-up or the reps' edges are others.
 */
export function fastestMpsOfClip(library: Library, asked: ClipToMeasure): number | null {
  const madeFrom = measuredFrom(library, asked);
  if (madeFrom === null) return null;
  const kept = findKeptSpeed(library.reading, asked.clip.id);
  if (kept?.madeFrom === madeFrom) return kept.fastestMps;
  const measurement = measurementOfClip(library, asked);
  const reps = measurement?.calibration?.from === 'body' ? [] : (measurement?.reps ?? []);
  const speeds = reps.flatMap(({ meanConcentricMps: speed }) =>
    speed !== null && speed.value > 0 ? [speed.value] : [],
  );
  const fastestMps = speeds.length === 0 ? null : Math.max(...speeds);
  keepSpeed(library.writing, asked.clip.id, { madeFrom, fastestMps });
  return fastestMps;
}
