import { expect, it, onTestFinished } from 'vitest';
import type { Calibration, RepJoints, RepMeasurement } from '../../../../engine/motion/measurement.ts';
import {
  cellsOfRep,
  columnsOf,
  type MeasureCell,
  measureColumns,
} from '../../../../renderer/review/measures/repCells.ts';
import { deskLanguage } from '../../../../renderer/words/deskLanguage.ts';
import { shippedUnder } from '../../../seeds/shippedCatalogue.ts';
import { rep } from './rep.ts';

const calibration: Calibration = {
  from: 'disc',
  metresPerPixel: 0.0039,
  relativeUncertainty: 0.008,
  offAxisDeg: 2,
  rollDeg: 0,
  cutOffHz: 6,
};

const joints: RepJoints = {
  kneeDeg: { value: 108, plusMinus: 6 },
  hipDeg: null,
  trunkLeanDeg: { value: 34, plusMinus: 6 },
  shankLeanDeg: null,
  trunkLeanMaxDeg: null,
  headTrunkDeg: null,
  depthM: { value: -0.076, plusMinus: 0.021 },
  depthOutcome: 'reached',
  depthFrom: 'joints',
  backChangeDeg: null,
  unseen: [{ part: 'shoulder', why: 'behindDisc', lost: ['trunkLean'] }],
};

function cell(id: string, of: RepMeasurement, scale: Calibration | null = calibration): MeasureCell | undefined {
  return cellsOfRep(of, { calibration: scale }, null)[measureColumns.findIndex((column) => column.id === id)];
}

it('has a cell for every column', () => {
  expect(cellsOfRep(rep, { calibration }, null)).toHaveLength(measureColumns.length);
});

it('gives each measure with its uncertainty and the moment to look at', () => {
  expect(cell('eccentric', rep)).toEqual({ kind: 'figure', figure: { value: '2.00', margin: '0.03' }, atS: 1 });
  expect(cell('range', rep)).toEqual({ kind: 'figure', figure: { value: '52.9', margin: '0.5' }, atS: 3 });
  expect(cell('peakSpeed', rep)).toMatchObject({ figure: { value: '0.83' }, atS: 4.1 });
  expect(cell('forward', rep)).toMatchObject({ figure: { value: '3.1' }, atS: 3.9 });
});

it('says that lengths by the size of a usual adult are about, and writes them no finer than they are', () => {
  const byBody = { ...calibration, from: 'body', relativeUncertainty: 0.12 } as const;
  const seen = { ...rep, romM: { value: 0.529, plusMinus: 0.104 } };
  expect(cell('range', seen, byBody)).toMatchObject({ figure: { value: 'about 53', margin: '11' } });
  expect(cell('peakSpeed', rep, byBody)).toMatchObject({ figure: { value: 'about 0.8' } });
  expect(cell('eccentric', rep, byBody)).toMatchObject({ figure: { value: '2.00', margin: '0.03' } });
});

it('says why a measure can’t be had', () => {
  const unscaled = { ...rep, romM: null, driftForwardM: null };
  expect(cell('range', unscaled, null)).toMatchObject({ kind: 'none', why: expect.stringContaining('known size') });
  expect(cell('forward', unscaled)).toMatchObject({
    kind: 'none',
    why: expect.stringContaining('can’t be told apart'),
  });
  expect(cell('knee', rep)).toMatchObject({ kind: 'none', why: expect.stringContaining('Joints were not looked for') });
  expect(cell('pauseShortened', rep)).toMatchObject({ kind: 'none' });
  expect(cell('hip', { ...rep, joints })).toEqual({
    kind: 'none',
    why: 'The shoulder is behind the disc, so trunk lean can’t be measured.',
  });
});

it('speaks German on a German desk, with commas', () => {
  deskLanguage.getState().choose('de');
  onTestFinished(() => deskLanguage.getState().choose('en'));
  const seen = { ...rep, joints };
  expect(cell('eccentric', rep)).toMatchObject({ figure: { value: '2,00', margin: '0,03' } });
  expect(cell('depth', seen)).toMatchObject({ words: 'erreicht, 7,6 ± 2,1 cm darunter' });
  expect(cell('hip', seen)).toMatchObject({
    why: 'Die Schulter ist hinter der Scheibe; nicht messbar: die Vorneigung.',
  });
});

it('has no depth where an exercise is judged by its range', () => {
  const ids = (exerciseId: string) => columnsOf(shippedUnder(3), exerciseId).map(({ id }) => id);
  expect(ids('back-squat')).toContain('depth');
  expect(ids('bench-press')).not.toContain('depth');
  expect(ids('bench-press')).toContain('range');
});

it('words the depth, and rounds angles to ten degrees', () => {
  const seen = { ...rep, joints };
  expect(cell('depth', seen)).toMatchObject({ kind: 'words', words: 'reached, 7.6 ± 2.1 cm below', atS: 3 });
  expect(cell('knee', seen)).toMatchObject({ figure: { value: '110', margin: '10' } });
  expect(cell('trunk', seen)).toMatchObject({ figure: { value: '30' } });
});

it('says where a depth comes from when it was clicked', () => {
  const clicked = { ...rep, joints: { ...joints, depthFrom: 'clicks' as const } };
  expect(cell('depth', clicked)).toMatchObject({ words: 'reached, 7.6 ± 2.1 cm below, from the points clicked' });
});

it('tells of a bounce and of a load that sank, but not of what is within the uncertainty', () => {
  expect(cell('also', rep)).toMatchObject({ kind: 'none' });
  const odd = { ...rep, bounces: 2, downOnWayUpM: { value: 0.02, plusMinus: 0.004 } };
  expect(cell('also', odd)).toMatchObject({ words: 'turned twice at the bottom; sank 2.0 cm on the way up' });
});
