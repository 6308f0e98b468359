import * as v from 'valibot';
import { warningSchema } from './warnings.ts';

/**
 * What was seen of a clip, before any exercise is thought of: positions in pixels of the upright picture, origin at its
 * top left corner, so that the first pixel's centre is (0.5, 0.5); one item a frame of the clip's frame table.
 */
const px = v.pipe(v.number(), v.finite());
const share = v.pipe(v.number(), v.minValue(0), v.maxValue(1));

export const pointPxSchema = v.strictObject({ xPx: px, yPx: px });
export type PointPx = v.InferOutput<typeof pointPxSchema>;

/** The disc, or a point the coach clicked, in one frame. `confidence`: 1 = sure. */
export const sightingSchema = v.strictObject({ xPx: px, yPx: px, confidence: share });
export type Sighting = v.InferOutput<typeof sightingSchema>;

/** `null` in a frame in which the thing could not be seen; positions are never made up. */
const sightings = v.array(v.nullable(sightingSchema));

/** The rim of the disc as it stands in the picture, over the whole clip. */
export const outlineSchema = v.strictObject({
  /** Half of the longest diameter, with the half-width of its 95 % interval. */
  radiusPx: v.pipe(px, v.minValue(1)),
  radiusPlusMinusPx: v.pipe(px, v.minValue(0)),
  /** Shortest diameter / longest: 1 = seen square on. */
  axisRatio: v.pipe(px, v.minValue(0), v.maxValue(1)),
  /** Direction of the longest diameter, degrees clockwise from the picture's x axis, 0-180. */
  majorAxisDeg: px,
  /** How far the ratio may be off: an outline that also shows a thick disc's side wall looks rounder than the rim is. */
  axisRatioPlusMinus: v.optional(share),
});
export type Outline = v.InferOutput<typeof outlineSchema>;

/** A straight thing that stands nearly upright in the first frame: its middle, lean (+ = its top to the right), length. */
export const uprightSchema = v.strictObject({ xPx: px, yPx: px, leanDeg: px, lengthPx: px });
export type Upright = v.InferOutput<typeof uprightSchema>;

const threePx = v.strictTuple([px, px, px]);

/**
 * What the background shows of the room and of the camera in it. A point that the first frame shows x and y focal lengths from
 * the middle, 1 / nearness away in depth, comes to q = R(turn) · (x, y, 1) + nearness · shift, and is then shown
 * exp(zoom) · focal length · (qx, qy) / qz from the middle. Distances are in units of their own.
 */
export const roomSchema = v.strictObject({
  focalPx: v.pipe(px, v.minValue(1)),
  middle: pointPxSchema,
  /** One item a frame: a rotation vector in radians (axes right, down, into the picture), a shift, the logarithm of the zoom. */
  frames: v.array(v.strictObject({ turn: threePx, shift: threePx, zoom: px })),
  /** Bits of the background where the first frame has them, with the standard deviation of their nearness. */
  patches: v.array(v.strictObject({ xPx: px, yPx: px, nearness: px, nearnessSd: px })),
  /** Standard deviation of what the above leaves of a patch's place along one axis. */
  spreadPx: v.pipe(px, v.minValue(0)),
});

/** How the background moved from the first frame, to be taken from positions; one item a frame. */
export const cameraPathSchema = v.strictObject({
  moves: v.boolean(),
  /** False: the camera moves and the background gives too little to take that out. */
  removable: v.boolean(),
  /**
   * x and y, in pixels, of the similarity that lays each frame over the first: first = scale × R(turnDeg) × here + shift.
   * Empty when the camera stands still.
   */
  frames: v.array(v.strictObject({ shiftXPx: px, shiftYPx: px, turnDeg: px, scale: px })),
  uprights: v.optional(v.array(uprightSchema), []),
  /** Where things at several distances tell the camera's own shift from its turn. */
  room: v.optional(roomSchema),
});
export type CameraPath = v.InferOutput<typeof cameraPathSchema>;

/** What speaks for a thing that was followed being a disc, for others to weigh. */
export const discEvidenceSchema = v.strictObject({
  /** Share of the rim that showed, on average over the frames it was seen in. */
  rimShare: share,
  /** Scatter of the rim's edge points about its ellipse, by the radius: a disc is under 0.02, a head above. */
  scatterShare: v.pipe(px, v.minValue(0)),
  /** Share of its face that looks the same all round: little of a head or a trunk does. */
  evenness: share,
  /** How many circles of its own it has within the rim; a plain disc has none. */
  circles: v.pipe(v.number(), v.integer(), v.minValue(0)),
  /** Standard deviation of its radius from frame to frame, by the radius. */
  radiusSpreadShare: v.pipe(px, v.minValue(0)),
  /** How far it went up and down, in radii. */
  travelRadii: v.pipe(px, v.minValue(0)),
});
export type DiscEvidence = v.InferOutput<typeof discEvidenceSchema>;

export const discRecordingSchema = v.strictObject({
  /** Name and version of the method; another one records again. */
  method: v.string(),
  frames: sightings,
  outline: outlineSchema,
  /** The rim's longest half diameter in each frame, as it was fitted there: how near the disc was to the camera. */
  radiiPx: v.optional(v.array(v.nullable(px))),
  evidence: v.optional(discEvidenceSchema),
  camera: cameraPathSchema,
});
export type DiscRecording = v.InferOutput<typeof discRecordingSchema>;

/** A point the coach clicked, followed by its looks: a dumbbell's head, a handle, a mark on a machine. */
export const pointRecordingSchema = v.strictObject({ method: v.string(), frames: sightings, camera: cameraPathSchema });
export type PointRecording = v.InferOutput<typeof pointRecordingSchema>;

export const jointNames = [
  'nose',
  'leftEye',
  'rightEye',
  'leftEar',
  'rightEar',
  'leftShoulder',
  'rightShoulder',
  'leftElbow',
  'rightElbow',
  'leftWrist',
  'rightWrist',
  'leftHip',
  'rightHip',
  'leftKnee',
  'rightKnee',
  'leftAnkle',
  'rightAnkle',
] as const;
export type JointName = (typeof jointNames)[number];

/** The lifter's joints in one frame, in the order of `jointNames`: the network's own confidence, nothing smoothed. */
export const bodySchema = v.pipe(v.array(sightingSchema), v.length(jointNames.length));
export type Body = v.InferOutput<typeof bodySchema>;

/** Raw joints of the lifter, frame by frame; `null` = nobody seen, or not looked at (see `everyFrames`). */
export const jointRecordingSchema = v.strictObject({
  method: v.string(),
  /** Every how many frames the network looked; 1 = at each. */
  everyFrames: v.pipe(v.number(), v.integer(), v.minValue(1)),
  frames: v.array(v.nullable(bodySchema)),
});
export type JointRecording = v.InferOutput<typeof jointRecordingSchema>;

/** Everything recorded of one clip; null for what was not asked for or not found. */
export const recordingSchema = v.strictObject({
  disc: v.nullable(discRecordingSchema),
  point: v.nullable(pointRecordingSchema),
  joints: v.nullable(jointRecordingSchema),
  /** How the camera moved, whether or not anything was found; older recordings have it with `disc` or `point` alone. */
  camera: v.optional(v.nullable(cameraPathSchema)),
  /** Why there is no disc, no lifter, and what else a person should know. */
  warnings: v.array(warningSchema),
});
export type Recording = v.InferOutput<typeof recordingSchema>;
