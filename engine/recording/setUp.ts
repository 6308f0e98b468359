import * as v from 'valibot';
import { pointPxSchema } from './recording.ts';

const metres = v.pipe(v.number(), v.minValue(0.01), v.maxValue(5));
const edgePx = v.pipe(v.number(), v.finite(), v.minValue(-100_000), v.maxValue(100_000));
const frame = v.pipe(v.number(), v.integer(), v.minValue(0), v.maxValue(10_000_000));

/** A box drawn round the disc: the coach's own, so a little too large or too small. */
export const discBoxSchema = v.pipe(
  v.strictObject({ leftPx: edgePx, topPx: edgePx, rightPx: edgePx, bottomPx: edgePx }),
  v.check(
    ({ leftPx, topPx, rightPx, bottomPx }) => rightPx - leftPx >= 4 && bottomPx - topPx >= 4,
    'a box is at least 4 px wide and high, left before right and top before bottom',
  ),
);
export type DiscBox = v.InferOutput<typeof discBoxSchema>;

/** What the coach clicked at a frame, to show where something or somebody is. */
export const clickSchema = v.strictObject({
  frame,
  /** `lifter`: the person who lifts, of several in the picture. */
  what: v.picklist(['disc', 'point', 'lifter']),
  at: pointPxSchema,
  /** Radius of the disc in pixels, where it was drawn out. */
  radiusPx: v.optional(v.pipe(v.number(), v.minValue(2), v.maxValue(5000))),
  /** The box drawn round the disc; it says its size and how far it is turned. */
  box: v.optional(discBoxSchema),
});
export type Click = v.InferOutput<typeof clickSchema>;

/** What the coach states about a clip so that it can be measured. Everything has a default. */
export const setUpSchema = v.strictObject({
  /** Diameter of the near disc; 450 mm is the full size of competition discs (IWF rules, sport equipment). */
  discDiameterM: v.optional(metres, 0.45),
  /** A known length in the plane of the bar, in place of the disc. */
  knownLength: v.optional(
    v.nullable(v.strictObject({ from: pointPxSchema, to: pointPxSchema, lengthM: metres })),
    null,
  ),
  /** Which way the lifter faces in the picture; null = read from the joints. */
  facing: v.optional(v.nullable(v.picklist(['left', 'right'])), null),
  /** What shows the load; `auto` = whatever shows it best. */
  follow: v.optional(v.picklist(['auto', 'disc', 'hands', 'shoulders', 'hips', 'head', 'legs']), 'auto'),
  /** Two points of something upright in the room (a rack's post): the camera's roll. */
  plumb: v.optional(v.nullable(v.strictObject({ top: pointPxSchema, bottom: pointPxSchema })), null),
  clicks: v.optional(v.pipe(v.array(clickSchema), v.maxLength(200)), []),
  /** Hip crease and top of the knee, clicked at a frame: judged in place of the joints. */
  depthClicks: v.optional(
    v.pipe(v.array(v.strictObject({ frame, hipCrease: pointPxSchema, kneeTop: pointPxSchema })), v.maxLength(500)),
    [],
  ),
  /** Three points along the back (seat, middle, shoulders) at a frame: how far its shape changes. */
  backClicks: v.optional(
    v.pipe(
      v.array(v.strictObject({ frame, points: v.strictTuple([pointPxSchema, pointPxSchema, pointPxSchema]) })),
      v.maxLength(500),
    ),
    [],
  ),
});
export type SetUp = v.InferOutput<typeof setUpSchema>;
