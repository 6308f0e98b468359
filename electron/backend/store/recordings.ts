import { createHash } from 'node:crypto';
import { gunzipSync, gzipSync } from 'node:zlib';
import * as v from 'valibot';
import type { TurnDeg } from '../../../engine/framing/framing.ts';
import type { FrameRange } from '../../../engine/framing/section.ts';
import {
  type CameraPath,
  cameraPathSchema,
  type DiscRecording,
  discRecordingSchema,
  type JointRecording,
  jointRecordingSchema,
  type PointRecording,
  pointRecordingSchema,
} from '../../../engine/recording/recording.ts';
import type { Click } from '../../../engine/recording/setUp.ts';
import { type Warning, warningSchema } from '../../../engine/recording/warnings.ts';
import { first, inTransaction, type Reading, run, type Writing } from './connection.ts';
import { agreesWithDigest, assertSound, takeForSound } from './rowDigests.ts';

/** What is recorded of footage, each by itself: a click records the disc again and leaves the joints alone. */
export type RecordingPart = 'disc' | 'point' | 'joints';

/** One part as it was recorded: `found` null = it was looked for and is not there. */
export type Recorded<T> = {
  /** Name and version of the method that looked. */
  readonly method: string;
  readonly found: T | null;
  readonly warnings: readonly Warning[];
  /** How the camera moved, where the method tells it, whether or not it found what it looked for. */
  readonly camera?: CameraPath;
};
export type RecordedParts = {
  readonly disc?: Recorded<DiscRecording>;
  readonly point?: Recorded<PointRecording>;
  readonly joints?: Recorded<JointRecording>;
};

/** Which recording of footage: that of these clicks over these frames, and its state. */
export type RecordingStamp = {
  readonly clicks: string;
  readonly method: string;
  readonly recordedAt: string;
} & FrameRange;

/** How footage was looked at: turned as the coach turned it, and which of its frames; null = all of them. */
export type LookedAt = { readonly turnDeg: TurnDeg; readonly frames: FrameRange | null };

const wholeUpright: LookedAt = { turnDeg: 0, frames: null };
/** All frames of any footage. */
const allFrames: FrameRange = { firstFrame: 0, lastFrame: 10_000_000 };

/** What is clicked to show where a part is. */
const clickedFor = { disc: 'disc', point: 'point', joints: 'lifter' } as const satisfies Record<
  RecordingPart,
  Click['what']
>;

/** The name of a part's clicks on a picture that is turned so: clicks in another order, or of other things, make no difference. */
export function clicksKey(part: RecordingPart, clicks: readonly Click[], turnDeg: TurnDeg = 0): string {
  const mine = clicks
    .filter(({ what }) => what === clickedFor[part])
    .map(({ frame, at, radiusPx, box }) => [
      ...[frame, at.xPx, at.yPx, radiusPx ?? null],
      ...(box === undefined ? [] : [box.leftPx, box.topPx, box.rightPx, box.bottomPx]),
    ])
    .sort((one, other) => Number(one[0]) - Number(other[0]));
  return createHash('sha256')
    .update(JSON.stringify(turnDeg === 0 ? mine : [turnDeg, mine]))
    .digest('hex');
}

const inFrames = `footage_id = ? AND what = ? AND clicks = ? AND first_frame <= ? AND last_frame >= ?
  ORDER BY last_frame - first_frame LIMIT 1`;

/** Which recording of a part there is under the clicks, of the wanted frames or of more; undefined when there is none. */
export function findRecordingStamp(
  reading: Reading,
  footageId: string,
  part: RecordingPart,
  clicks: readonly Click[],
  { turnDeg, frames }: LookedAt = wholeUpright,
): RecordingStamp | undefined {
  const { firstFrame, lastFrame } = frames ?? allFrames;
  return first<RecordingStamp>(
    reading,
    `SELECT clicks, method, recorded_at AS recordedAt, first_frame AS firstFrame, last_frame AS lastFrame
      FROM recording WHERE ${inFrames}`,
    footageId,
    part,
    clicksKey(part, clicks, turnDeg),
    firstFrame,
    lastFrame,
  );
}

/** What was recorded of footage under the clicks, part by part: of the wanted frames or of more. */
export function readRecordedParts(
  reading: Reading,
  footageId: string,
  clicks: readonly Click[],
  looked: LookedAt = wholeUpright,
): RecordedParts {
  assertSound(reading, 'recording', footageId, 'recordingDamaged');
  const of = { footageId, clicks, looked };
  const disc = readPart(reading, 'disc', of, discRecordingSchema);
  const point = readPart(reading, 'point', of, pointRecordingSchema);
  const joints = readPart(reading, 'joints', of, jointRecordingSchema);
  return { ...(disc && { disc }), ...(point && { point }), ...(joints && { joints }) };
}

/** Forgets what was recorded of footage where that changed on the disk by itself, so that it can be recorded anew. */
export function forgetDamagedRecording(writing: Writing, footageId: string): void {
  if (agreesWithDigest(writing, 'recording', footageId)) return;
  inTransaction(writing, () => {
    run(writing, 'DELETE FROM recording WHERE footage_id = ?', footageId);
    takeForSound(writing, 'recording', footageId);
  });
}

/** Keeps what was recorded, in place of what the same clicks gave before and of what older methods gave. */
export function writeRecordedParts(
  writing: Writing,
  footageId: string,
  clicks: readonly Click[],
  parts: RecordedParts,
  { turnDeg, frames }: LookedAt = wholeUpright,
): void {
  const { firstFrame, lastFrame } = frames ?? allFrames;
  const recordedAt = new Date().toISOString();
  for (const part of ['disc', 'point', 'joints'] as const) {
    const recorded = parts[part];
    if (recorded === undefined) continue;
    const { method } = recorded;
    run(writing, 'DELETE FROM recording WHERE footage_id = ? AND what = ? AND method <> ?', footageId, part, method);
    run(
      writing,
      `INSERT OR REPLACE INTO recording (footage_id, what, clicks, first_frame, last_frame, method, recorded_at, data, warnings)
        VALUES (?, ?, ?, ?, ?, ?, ?, ?, ?)`,
      footageId,
      part,
      clicksKey(part, clicks, turnDeg),
      firstFrame,
      lastFrame,
      method,
      recordedAt,
      gzipSync(JSON.stringify({ found: recorded.found, camera: recorded.camera })),
      JSON.stringify(recorded.warnings),
    );
  }
}

function readPart<T>(
  reading: Reading,
  part: RecordingPart,
  {
    footageId,
    clicks,
    looked: { turnDeg, frames },
  }: { readonly footageId: string; readonly clicks: readonly Click[]; readonly looked: LookedAt },
  schema: v.GenericSchema<unknown, T>,
): Recorded<T> | undefined {
  const { firstFrame, lastFrame } = frames ?? allFrames;
  const row = first<{ method: string; data: Uint8Array; warnings: string }>(
    reading,
    `SELECT method, data, warnings FROM recording WHERE ${inFrames}`,
    footageId,
    part,
    clicksKey(part, clicks, turnDeg),
    firstFrame,
    lastFrame,
  );
  if (!row) return undefined;
  const stored: unknown = JSON.parse(gunzipSync(row.data).toString('utf8'));
  // Older rows hold their warnings here too, as sentences.
  const { found, camera } = v.parse(
    v.object({ found: v.nullable(schema), camera: v.optional(cameraPathSchema) }),
    stored,
  );
  const warnings = v.parse(v.array(warningSchema), JSON.parse(row.warnings));
  return { method: row.method, found, warnings, ...(camera && { camera }) };
}
