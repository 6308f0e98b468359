import type { View } from '../../exercises/exercise.ts';

/** Names of the views, as a coach chooses one. */
export const viewNames: Readonly<Record<View, string>> = {
  side: 'Seite',
  front: 'Vorn',
  rear: 'Hinten',
  oblique: 'Schräg',
};

export const seenFrom =
  '{view, select, side {von der Seite} front {von vorn} rear {von hinten} other {von schräg {end, select, front {vorn} other {hinten}}}}';

export const seenFromAbout = `${seenFrom}, rund {degrees}° ± {within}° von vorn aus gemessen`;

export const judgedFromHere =
  '{judgedCount, plural, =0 {Von hier lässt sich nichts beurteilen} other {Von hier lässt sich beurteilen: {judged}}}{notCount, plural, =0 {} other {; nicht: {not}}}';
