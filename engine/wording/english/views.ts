import type { View } from '../../exercises/exercise.ts';

/** Names of the views, as a coach chooses one. */
export const viewNames = {
  side: 'Side',
  front: 'Front',
  rear: 'Rear',
  oblique: 'Three-quarter',
} as const satisfies Readonly<Record<View, string>>;

/** Where the camera stands; `end` is the end of the lifter that a three-quarter view shows. */
export const seenFrom =
  '{view, select, side {from the side} front {from the front} rear {from behind} other {three-quarter from {end, select, front {the front} other {behind}}}}';

/** How far the camera is round the lifter: 0° in front, 90° at the side, 180° behind. */
export const seenFromAbout = `${seenFrom}, about {degrees}° ± {within}° round from the front`;

/** What a view can judge; either list may be empty. */
export const judgedFromHere =
  '{judgedCount, plural, =0 {From here nothing can be judged} other {From here you can judge: {judged}}}{notCount, plural, =0 {} other {; not: {not}}}';
