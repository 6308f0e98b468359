import type { Exercise, View } from '../exercises/exercise.ts';
import { viewJudges } from '../exercises/viewJudges.ts';
import { localeOf } from '../language/language.ts';
import { formatMessage } from '../message/formatMessage.ts';
import type { ViewRead } from '../motion/measurement.ts';
import type { CriterionId } from '../rubric/rubric.ts';
import { judgedFromHere, seenFrom, seenFromAbout, viewNames } from './english/views.ts';

/** Joints tell no azimuth finer than this. */
const azimuthStepDeg = 5;

const valuesOf = ({ view, azimuthDeg: { value, plusMinus } }: ViewRead) => ({
  view,
  end: value < 90 ? 'front' : 'rear',
  degrees: azimuthStepDeg * Math.round(value / azimuthStepDeg),
  within: azimuthStepDeg * Math.ceil(plusMinus / azimuthStepDeg),
});

/** The name of a view, as the coach chooses one: "Three-quarter". */
export const sayViewName = (view: View): string => viewNames[view];

/** Where the camera stands, said to the coach: "three-quarter from behind". */
export const sayView = (read: ViewRead): string => formatMessage(seenFrom, localeOf.en, valuesOf(read));

/** The same with its number: "three-quarter from behind, about 140° ± 15° round from the front". */
export const sayViewWithAzimuth = (read: ViewRead): string => formatMessage(seenFromAbout, localeOf.en, valuesOf(read));

/** What a view can judge of an exercise, said to the coach; `nameOf` names a criterion. */
export function sayJudgedFromHere(exercise: Exercise, view: View, nameOf: (id: CriterionId) => string): string {
  const { judged, not } = viewJudges(exercise, view);
  const named = (ids: readonly CriterionId[]) => ids.map((id) => nameOf(id).toLowerCase()).join(', ');
  return formatMessage(judgedFromHere, localeOf.en, {
    ...{ judgedCount: judged.length, judged: named(judged) },
    ...{ notCount: not.length, not: named(not) },
  });
}
