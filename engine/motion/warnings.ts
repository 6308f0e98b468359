import { fill } from '../language/fill.ts';

/** What a measure can warn of, for the coach who can mend it; `{places}` for numbers. */
export const warningTexts = {
  tooFewFrames: 'The clip has {frames} frames, which is too few to find a rep in.',
  fewFramesPerSecond: 'The clip has about {rate} frames a second, so phases are told to a frame, {seconds} s, at best.',
  fromBody: 'Reps and tempo are read from the body, which is less exact than a disc; lengths and speeds are not told.',
  noScale:
    'There is no scale, so lengths and speeds are not told; give the length of something in the plane of the bar.',
  farOffAxis: 'The camera is turned {degrees}° out of square, so sideways drift is not told.',
  offAxis: 'The camera is turned about {degrees}° out of square; sideways measures are corrected for it and less sure.',
  notFromSide: 'The clip is not filmed from the side, so sideways drift is not told.',
  nothingUpright:
    'Nothing upright was found in the room, so the camera is taken to be level; draw a plumb line along a post.',
  facingUnknown: 'Which way the lifter faces is not known, so drift is not told; say which.',
  hold: 'A hold has no reps; its length is told by the edges you set.',
  noRep: 'Nothing that was followed goes there and back as a rep does, so no rep is told.',
  unlikelyHeight:
    'With this scale the lifter would be {metres} m tall; check that the disc is the bar’s and its diameter.',
  cameraMoves:
    'The camera moves and the background shows too little to take that out, so heights, drift and speeds are not told.',
  noDisc:
    'No disc was found that moves with the lifter; click the middle of the near disc at a frame that shows all of it.',
  discLost: 'The disc can’t be seen in {lost} of {frames} frames; click it where it is lost, if it shows there.',
  discDoubtful: 'The disc’s place is doubtful in {doubtful} of {frames} frames; click its middle to make sure.',
  noRimAtClick: 'No rim of a disc shows round the click at frame {frame}, so that click was left out.',
  nobodySeen:
    'Nobody could be seen in this clip, so there are no joints; film from the side with the whole body in the picture.',
  seldomSeen:
    'The lifter could be seen in {percent} % of the clip only, so joints are missing elsewhere; film from the side with the whole body in the picture.',
} as const;
export type WarningId = keyof typeof warningTexts;

type PlacesOf<Text extends string> = Text extends `${string}{${infer Place}}${infer Rest}`
  ? Place | PlacesOf<Rest>
  : never;

/** The numbers that a warning tells, as they stand in its sentence. */
export type WarningValues<Id extends WarningId> = Readonly<Record<PlacesOf<(typeof warningTexts)[Id]>, string>>;

/** A warning's sentence. */
export const warning = <Id extends WarningId>(id: Id, values: WarningValues<Id>): string =>
  fill(warningTexts[id], values);

export type KnownWarning = { readonly id: WarningId; readonly values: Readonly<Record<string, string>> };

const patterns = (Object.keys(warningTexts) as WarningId[]).map((id) => {
  const literal = warningTexts[id].replace(/[.*+?^$()|[\]\\]/g, '\\$&');
  return { id, pattern: new RegExp(`^${literal.replace(/\{(\w+)\}/g, '(?<$1>[\\d.]+)')}$`) };
});

/** Which warning a sentence is, to tell it in other words; null for one that is none of these. */
export function readWarning(sentence: string): KnownWarning | null {
  for (const { id, pattern } of patterns) {
    const found = pattern.exec(sentence);
    if (found !== null) return { id, values: { ...found.groups } };
  }
  return null;
}
