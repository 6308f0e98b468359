import { createHash } from 'node:crypto';
import { gunzipSync, gzipSync } from 'node:zlib';
import * as v from 'valibot';
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
import { first, type Reading, run, type Writing } from './connection.ts';

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

/** Which recording of footage: that of these clicks, and its state. */
export type RecordingStamp = { readonly clicks: string; readonly method: string; readonly recordedAt: string };

/** What is clicked to show where a part is. */
const clickedFor = { disc: 'disc', point: 'point', joints: 'lifter' } as const satisfies Record<
  RecordingPart,
  Click['what']
>;

/** The name of a part's clicks: clicks in another order, or of other things, make no difference. */
export function clicksKey(part: RecordingPart, clicks: readonly Click[]): string {
  const mine = clicks
    .filter(({ what }) => what === clickedFor[part])
    .map(({ frame, at, radiusPx, box }) => [
      ...[frame, at.xPx, at.yPx, radiusPx ?? null],
      ...(box === undefined ? [] : [box.leftPx, box.topPx, box.rightPx, box.bottomPx]),
    ])
    .sort((one, other) => Number(one[0]) - Number(other[0]));
  return createHash('sha256').update(JSON.stringify(mine)).digest('hex');
}

/** Which recording of a part there is under the clicks; undefined when there is none. */
export function findRecordingStamp(
  reading: Reading,
  footageId: string,
  part: RecordingPart,
  clicks: readonly Click[],
): RecordingStamp | undefined {
  return first<RecordingStamp>(
    reading,
    `SELECT clicks, method, recorded_at AS recordedAt FROM recording
      WHERE footage_id = ? AND what = ? AND clicks = ?`,
    footageId,
    part,
    clicksKey(part, clicks),
  );
}

/** What was recorded of footage under the clicks, part by part. */
export function readRecordedParts(reading: Reading, footageId: string, clicks: readonly Click[]): RecordedParts {
  const disc = readPart(reading, footageId, 'disc', clicks, discRecordingSchema);
  const point = readPart(reading, footageId, 'point', clicks, pointRecordingSchema);
  const joints = readPart(reading, footageId, 'joints', clicks, jointRecordingSchema);
  return { ...(disc && { disc }), ...(point && { point }), ...(joints && { joints }) };
}

/** Keeps what was recorded, in place of what the same clicks gave before and of what older methods gave. */
export function writeRecordedParts(
  writing: Writing,
  footageId: string,
  clicks: readonly Click[],
  parts: RecordedParts,
): void {
  const recordedAt = new Date().toISOString();
  for (const part of ['disc', 'point', 'joints'] as const) {
    const recorded = parts[part];
    if (recorded === undefined) continue;
    const { method } = recorded;
    run(writing, 'DELETE FROM recording WHERE footage_id = ? AND what = ? AND method <> ?', footageId, part, method);
    run(
      writing,
      `INSERT OR REPLACE INTO recording (footage_id, what, clicks, method, recorded_at, data, warnings)
        VALUES (?, ?, ?, ?, ?, ?, ?)`,
      footageId,
      part,
      clicksKey(part, clicks),
      method,
      recordedAt,
      gzipSync(JSON.stringify({ found: recorded.found, camera: recorded.camera })),
      JSON.stringify(recorded.warnings),
    );
  }
}

function readPart<T>(
  reading: Reading,
  footageId: string,
  part: RecordingPart,
  clicks: readonly Click[],
  schema: v.GenericSchema<unknown, T>,
): Recorded<T> | undefined {
  const row = first<{ method: string; data: Uint8Array; warnings: string }>(
    reading,
    'SELECT method, data, warnings FROM recording WHERE footage_id = ? AND what = ? AND clicks = ?',
    footageId,
    part,
    clicksKey(part, clicks),
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
