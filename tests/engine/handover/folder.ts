import { editionOf } from '../../../engine/edition/edition.ts';
import type { ClipInFolder, HandoverFolder } from '../../../engine/handover/handoverFolder.ts';
import type { NearSide } from '../../../engine/handover/nearSide.ts';
import type { RepMeasurement, SetMeasurement } from '../../../engine/motion/measurement.ts';
import type { CameraPath } from '../../../engine/recording/recording.ts';
import type { Review } from '../../../engine/review/review.ts';
import { catalogue, planOf } from '../letter/sample.ts';

/** Thirty frames a second over 30 seconds, as the clips of the letters' sample sessions have. */
export const table = {
  timeBase: { numerator: 1, denominator: 30 },
  ticks: Array.from({ length: 900 }, (_, frame) => frame),
  endTicks: 900,
};

const body: NearSide = {
  shoulder: { x: 300, y: 100 },
  hip: { x: 250, y: 200 },
  knee: { x: 320.04, y: 260 },
  ankle: null,
  kneeDeg: 92.34,
  trunkLeanDeg: null,
};

/** A rep of which nothing but its times is measured. */
export function repOf(index: number, startS: number, endS: number): RepMeasurement {
  return {
    ...{
      index,
      startS,
      endS,
      sureness: 1,
      doubts: [],
      manualEdges: [],
      bounces: null,
      downOnWayUpM: null,
      joints: null,
      reach: null,
      romM: null,
    },
    phases: { eccentric: null, pauseStretched: null, concentric: null, pauseShortened: null },
    durationsS: { eccentric: null, pauseStretched: null, concentric: null, pauseShortened: null },
    ...{ meanConcentricMps: null, peakConcentricMps: null, peakSpeedAtS: null },
    ...{ driftForwardM: null, driftBackM: null, largestDeviation: null },
  };
}

/** A load that goes down a pixel a frame, unseen in frame 50. */
export const measurement: SetMeasurement = {
  ...{
    calibration: null,
    follows: 'disc',
    followsBecause: 'discMovesWithLifter',
    facing: null,
    nearSide: null,
    view: null,
    warnings: [],
  },
  track: { frames: 900, lost: 1, meanConfidence: 1 },
  reps: [repOf(1, 1, 2), repOf(2, 3, 4)],
  offered: [],
  set: { speedLossPct: null, romSpreadM: null, eccentricSpreadS: null },
  curves: {
    timesS: table.ticks.map((tick) => tick / 30),
    positionPx: table.ticks.map((tick) => (tick === 50 ? null : { xPx: 320, yPx: tick })),
    heightM: table.ticks.map(() => null),
    forwardM: table.ticks.map(() => null),
    speedMps: table.ticks.map(() => null),
    heightPlusMinusM: null,
  },
};

/** A camera that turns and shifts from frame to frame. */
export const camera: CameraPath = {
  moves: true,
  removable: true,
  frames: table.ticks.map((tick) => ({
    shiftXPx: tick / 10,
    shiftYPx: -tick / 20,
    turnDeg: tick / 300,
    scale: 1 + tick / 9000,
  })),
  uprights: [],
};

export const clipInFolder = (rest: Partial<ClipInFolder> = {}): ClipInFolder => ({
  file: 'clips/back squat #1.mp4',
  table,
  shown: { width: 640, height: 480 },
  measurement,
  camera: null,
  body: (frame) => (frame < 10 ? null : body),
  ...rest,
});

/** What an edition of the review says on top and at the end. */
export const noticesOf = (review: Review): HandoverFolder['notices'] =>
  editionOf({ review, catalogue, style: { length: 'full', tone: 'plain', language: 'en' }, names: 'full' }).notices();

/** A folder with every clip of a review; its page has no script unless one is given. */
export const folderOf = (review: Review, rest: Partial<HandoverFolder> = {}): HandoverFolder => ({
  review,
  catalogue,
  plan: planOf(review),
  clips: new Map(review.entries.flatMap(({ clips }) => clips.map(({ id }) => [id, clipInFolder()]))),
  files: [],
  notices: noticesOf(review),
  script: { text: '', sha256: '' },
  faces: '',
  ...rest,
});
