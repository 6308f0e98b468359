import type { SetMeasurement } from '../../../engine/motion/measurement.ts';
import { measureSet } from '../../../engine/motion/set/measureSet.ts';
import type { Recording } from '../../../engine/recording/recording.ts';
import type { Library } from '../store/library.ts';
import { findRecordingStamp, type RecordedParts, type RecordingStamp, readRecordedParts } from '../store/recordings.ts';
import type { ClipToMeasure } from './clipToMeasure.ts';
import { recordingOf } from './recordingOf.ts';
import { manualReps } from './repTimes.ts';

/** A clip's recording and when its newest part was made. */
export type KnownRecording = { readonly recording: Recording; readonly recordedAt: string };

type Kept = {
  readonly recordingKey: string;
  readonly known: KnownRecording;
  readonly measuredKey: string;
  readonly measurement: SetMeasurement | null;
};

/** Unpacking and measuring take a while, and a screen asks after every act: the clips asked for last are kept. */
const mostKept = 8;
const keptOf = new WeakMap<Library, Map<string, Kept>>();

/** The recording of a clip under its clicks, whichever method made it; undefined until it was recorded. */
export function recordingOfClip(library: Library, asked: ClipToMeasure): KnownRecording | undefined {
  return keptFor(library, asked)?.known;
}

/** What is measured of a clip, with its manual edges in place; null until it was recorded. */
export function measurementOfClip(library: Library, asked: ClipToMeasure): SetMeasurement | null {
  const kept = keptFor(library, asked);
  const { clip, setUp, reps, source } = asked;
  if (!kept || !source) return null;
  const { table, exercise } = source;
  const edges = manualReps(reps, table);
  const measuredKey = JSON.stringify([exercise.id, clip.view, clip.real_time_factor, setUp, edges]);
  if (kept.measuredKey === measuredKey) return kept.measurement;
  const measurement = measureRecording(asked, kept.known.recording);
  keep(library, clip.id, { ...kept, measuredKey, measurement });
  return measurement;
}

/** The same from parts in hand. */
export function measureParts(asked: ClipToMeasure, parts: RecordedParts): SetMeasurement | null {
  return measureRecording(asked, recordingOf(parts));
}

function measureRecording({ clip, setUp, reps, source }: ClipToMeasure, recording: Recording): SetMeasurement | null {
  if (!source) return null;
  const { footage, table, exercise } = source;
  return measureSet({
    recording,
    table,
    shown: { width: footage.shown_width, height: footage.shown_height },
    realTimeFactor: clip.real_time_factor,
    exercise,
    view: clip.view,
    setUp,
    edges: manualReps(reps, table),
  });
}

function keptFor(library: Library, { clip, setUp }: ClipToMeasure): Kept | undefined {
  const { footage_id: footageId } = clip;
  if (footageId === null) return undefined;
  const stamps = (['disc', 'point', 'joints'] as const).flatMap(
    (part) => findRecordingStamp(library.reading, footageId, part, setUp.clicks) ?? [],
  );
  if (stamps.length === 0) return undefined;
  const recordingKey = JSON.stringify([footageId, stamps]);
  const before = keptOf.get(library)?.get(clip.id);
  if (before?.recordingKey === recordingKey) return before;
  const recording = recordingOf(readRecordedParts(library.reading, footageId, setUp.clicks));
  const known = { recording, recordedAt: newest(stamps) };
  return keep(library, clip.id, { recordingKey, known, measuredKey: '', measurement: null });
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
