import path from 'node:path';
import * as v from 'valibot';
import { loadCatalogue } from '../../../../electron/backend/catalogue/loadCatalogue.ts';
import { trackDisc } from '../../../../electron/backend/measure/trackDisc.ts';
import { type ClipProbe, probeClip } from '../../../../electron/backend/media/probe/probeClip.ts';
import { findMediaTools } from '../../../../electron/backend/media/tools/mediaTools.ts';
import type { SetMeasurement } from '../../../../engine/motion/measurement.ts';
import { measureSet } from '../../../../engine/motion/set/measureSet.ts';
import type { DiscRecording } from '../../../../engine/recording/recording.ts';
import { type Click, setUpSchema } from '../../../../engine/recording/setUp.ts';

export type MeasuredClip = {
  readonly probe: ClipProbe;
  readonly disc: DiscRecording | null;
  readonly measurement: SetMeasurement;
};

export type HowToMeasure = {
  readonly exercise: string;
  readonly facing: 'left' | 'right';
  readonly clicks?: readonly Click[];
  readonly realTimeFactor?: number;
};

/** Follows the disc of a clip file and measures it, with the product's own exercises. */
export async function measureClip(file: string, how: HowToMeasure): Promise<MeasuredClip> {
  const tools = await findMediaTools();
  const probe = await probeClip(tools, file);
  const { table, shown } = probe;
  const { disc, camera, warnings } = await trackDisc(tools, file, { table, shown, clicks: how.clicks ?? [] });
  const measurement = measureSet({
    recording: { disc, point: null, joints: null, camera, warnings },
    table,
    shown,
    realTimeFactor: how.realTimeFactor ?? 1,
    exercise: exerciseNamed(how.exercise),
    view: 'side',
    setUp: v.parse(setUpSchema, { facing: how.facing, clicks: how.clicks ?? [] }),
    edges: [],
  });
  return { probe, disc, measurement };
}

const catalogue = loadCatalogue(path.resolve(import.meta.dirname, '../../../..'));

function exerciseNamed(id: string) {
  const exercise = catalogue.exercises.find((one) => one.id === id);
  if (!exercise) throw new Error(`no exercise ${id}`);
  return exercise;
}
