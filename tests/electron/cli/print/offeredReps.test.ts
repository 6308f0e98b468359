import { describe, expect, it } from 'vitest';
import type { ClipProbe } from '../../../../electron/backend/media/probe/probeClip.ts';
import { measureJson } from '../../../../electron/cli/print/measureJson.ts';
import { measureReport } from '../../../../electron/cli/print/measureReport.ts';
import type { RepMeasurement } from '../../../../engine/motion/measurement.ts';
import { exercise } from '../../../engine/catalogue.ts';
import { measuredRep, measuredSet } from '../../../engine/sheet/measuredSample.ts';

const probe: ClipProbe = {
  plays: 'as-is',
  proxyReason: '',
  facts: {
    frames: 450,
    durationUs: 15_000_000,
    width: 640,
    height: 360,
    rotationDeg: 0,
    codec: 'h264',
    timeBase: { numerator: 1, denominator: 30 },
  },
  shown: { width: 640, height: 360 },
  table: {
    timeBase: { numerator: 1, denominator: 30 },
    ticks: Array.from({ length: 450 }, (_, frame) => frame),
    endTicks: 450,
  },
  constantRate: true,
  meanFps: 30,
  captureFps: null,
  recordedAt: null,
  realTimeFactor: 1,
  container: 'mp4',
  hasAudio: false,
  sizeBytes: 1_000_000,
};

const measured = (offered: readonly RepMeasurement[]) =>
  ({
    kind: 'measured',
    file: 'set.mp4',
    probe,
    measurement: measuredSet([measuredRep(1), measuredRep(2, { sureness: 0.6, doubts: ['otherHeight'] })], { offered }),
    suggestions: [],
  }) as const;

const unsure: readonly RepMeasurement[] = [
  measuredRep(1, { startS: 0.25, endS: 0.9, sureness: 0.31, doubts: ['maybeSetUp', 'short'] }),
  measuredRep(2, { startS: 12, endS: 14.5, sureness: 0.2, doubts: [] }),
];

describe('movements that were not counted', () => {
  it('stand beside the reps in JSON, each as a rep is, with what speaks against it in words', () => {
    const json = JSON.parse(JSON.stringify(measureJson(measured(unsure))));
    expect(json.reps.map(({ sureness, doubts }: RepMeasurement) => [sureness, doubts])).toEqual([
      [1, []],
      [0.6, ['otherHeight']],
    ]);
    expect(json.offered).toHaveLength(2);
    expect(json.offered[0]).toMatchObject({
      ...{ index: 1, startS: 0.25, endS: 0.9, sureness: 0.31, doubts: ['maybeSetUp', 'short'] },
      reasons: ['it may be setting up before the set', 'it covers much less range than the reps'],
    });
    expect(json.offered[1].reasons).toEqual([]);
    expect(Object.keys(json.offered[0])).toEqual([...Object.keys(json.reps[0]), 'reasons']);
  });

  it('are an empty list where there are none', () => {
    expect(measureJson(measured([]))).toHaveProperty('offered', []);
  });

  it('stand in the report under the reps, with their times and reasons, and are not counted among them', () => {
    const report = measureReport(measured(unsure), exercise());
    expect(report).toMatch(/^set\.mp4: Squat, 2 reps\n/);
    const lines = report.split('\n');
    const at = lines.indexOf('Not counted');
    expect(lines.slice(at, at + 3)).toEqual([
      'Not counted',
      '  0.25 s to 0.90 s: it may be setting up before the set; it covers much less range than the reps',
      '  12.00 s to 14.50 s: the clip has too few movements like it',
    ]);
    expect(at).toBeGreaterThan(lines.findIndex((line) => line.startsWith('Rep ')));
  });

  it('have no heading in the report where there are none', () => {
    expect(measureReport(measured([]), exercise())).not.toContain('Not counted');
  });
});
