import { beforeEach, expect, it, onTestFinished } from 'vitest';
import { factsOnlyRow } from '../../../../electron/backend/jobs/importFootage.ts';
import { recordingOf } from '../../../../electron/backend/measure/measurementOfClip.ts';
import { insertFootage } from '../../../../electron/backend/store/footage.ts';
import { createLibrary, type Library } from '../../../../electron/backend/store/library.ts';
import {
  clicksKey,
  findRecordingStamp,
  type Recorded,
  readRecordedParts,
  writeRecordedParts,
} from '../../../../electron/backend/store/recordings.ts';
import type { DiscRecording } from '../../../../engine/recording/recording.ts';
import type { Click } from '../../../../engine/recording/setUp.ts';
import { type Warning, warning } from '../../../../engine/recording/warnings.ts';
import { knownDisc } from '../measure/knownRecording.ts';
import { appFolder, temporaryFolder } from '../workbench.ts';

let library: Library;
let footageId: string;

beforeEach(() => {
  library = createLibrary(temporaryFolder(), appFolder, { voice: 'coach', coach: '' });
  onTestFinished(() => library.close());
  const footage = factsOnlyRow({
    ...{ codec: 'h264', width: 854, height: 480, rotationDeg: 0, frames: 423 },
    ...{ timeBase: { numerator: 1, denominator: 30 }, durationUs: 14_100_000 },
  });
  insertFootage(library.writing, footage);
  footageId = footage.id;
});

const click = (frame: number, what: Click['what'] = 'disc'): Click => ({ frame, what, at: { xPx: 10, yPx: 20 } });
const atClick = (frame: number) => warning('noRimAtClick', { frame });
const disc = (method: string, warnings: readonly Warning[] = []): Recorded<DiscRecording> => ({
  method,
  found: knownDisc(method),
  warnings,
});

it('gives back exactly what was kept, part by part', () => {
  const parts = {
    disc: disc('ring/1', [warning('cameraMoves', {})]),
    joints: { method: 'pose/1', found: null, warnings: [warning('nobodySeen', {})] },
  };
  writeRecordedParts(library.writing, footageId, [], parts);
  expect(readRecordedParts(library.reading, footageId, [])).toEqual(parts);
});

it('keeps how the camera moved where no disc was found', () => {
  const frames = [{ shiftXPx: 1.5, shiftYPx: -2, turnDeg: 0.1, scale: 1.01 }];
  const camera = { moves: true, removable: true, frames, uprights: [] };
  const parts = { disc: { method: 'ring/1', found: null, warnings: [warning('noDisc', {})], camera } };
  writeRecordedParts(library.writing, footageId, [], parts);
  expect(readRecordedParts(library.reading, footageId, [])).toEqual(parts);
  expect(recordingOf(parts).camera).toEqual(camera);
});

it('keeps the disc by the clicks on it, and the joints by none', () => {
  const joints = { method: 'pose/1', found: null, warnings: [] };
  writeRecordedParts(library.writing, footageId, [], { disc: disc('ring/1', [atClick(1)]), joints });
  writeRecordedParts(library.writing, footageId, [click(3)], { disc: disc('ring/1', [atClick(2)]) });
  const warningsUnder = (clicks: readonly Click[]) =>
    readRecordedParts(library.reading, footageId, clicks).disc?.warnings;
  expect(warningsUnder([])).toEqual([atClick(1)]);
  expect(warningsUnder([click(3)])).toEqual([atClick(2)]);
  expect(warningsUnder([click(3), click(9, 'point')])).toEqual([atClick(2)]);
  expect(warningsUnder([click(4)])).toBeUndefined();
  expect(readRecordedParts(library.reading, footageId, [click(4)]).joints).toEqual(joints);
});

it('keeps the joints by the clicks on the lifter', () => {
  const joints = (frame: number) => ({
    method: 'pose/1',
    found: null,
    warnings: [warning('nobodyAtClick', { frame })],
  });
  writeRecordedParts(library.writing, footageId, [], { joints: joints(1) });
  writeRecordedParts(library.writing, footageId, [click(3, 'lifter')], { joints: joints(3) });
  const under = (clicks: readonly Click[]) => readRecordedParts(library.reading, footageId, clicks).joints;
  expect(under([click(9)])).toEqual(joints(1));
  expect(under([click(9), click(3, 'lifter')])).toEqual(joints(3));
  expect(under([click(4, 'lifter')])).toBeUndefined();
});

it('names clicks the same in whatever order they came', () => {
  expect(clicksKey('disc', [click(3), click(9)])).toBe(clicksKey('disc', [click(9), click(3)]));
  expect(clicksKey('disc', [click(3)])).not.toBe(clicksKey('disc', [{ ...click(3), radiusPx: 40 }]));
  const box = { leftPx: 80, topPx: 70, rightPx: 120, bottomPx: 130 };
  expect(clicksKey('disc', [click(3)])).not.toBe(clicksKey('disc', [{ ...click(3), box }]));
});

it('forgets what an older method gave, under any clicks, when a newer one has recorded', () => {
  writeRecordedParts(library.writing, footageId, [], { disc: disc('ring/1') });
  writeRecordedParts(library.writing, footageId, [click(3)], { disc: disc('ring/1') });
  writeRecordedParts(library.writing, footageId, [click(3)], { disc: disc('ring/2') });
  expect(findRecordingStamp(library.reading, footageId, 'disc', [])).toBeUndefined();
  expect(findRecordingStamp(library.reading, footageId, 'disc', [click(3)])?.method).toBe('ring/2');
});
