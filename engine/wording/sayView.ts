import type { Exercise, View } from '../exercises/exercise.ts';
import { viewJudges } from '../exercises/viewJudges.ts';
import { type Language, localeOf } from '../language/language.ts';
import { formatMessage } from '../message/formatMessage.ts';
import type { ViewRead } from '../motion/measurement.ts';
import type { CriterionId } from '../rubric/rubric.ts';
import {
  judgedFromHere as judgedInEnglish,
  viewNames as namesInEnglish,
  seenFromAbout as seenAboutInEnglish,
  seenFrom as seenInEnglish,
} from './english/views.ts';
import {
  judgedFromHere as judgedInGerman,
  viewNames as namesInGerman,
  seenFromAbout as seenAboutInGerman,
  seenFrom as seenInGerman,
} from './german/views.ts';
import { withinSentence } from './wordings.ts';

const wordingOf = {
  en: { names: namesInEnglish, seen: seenInEnglish, seenAbout: seenAboutInEnglish, judged: judgedInEnglish },
  de: { names: namesInGerman, seen: seenInGerman, seenAbout: seenAboutInGerman, judged: judgedInGerman },
} as const satisfies Readonly<Record<Language, unknown>>;

/** Joints tell no azimuth finer than this. */
const azimuthStepDeg = 5;

const valuesOf = ({ view, azimuthDeg: { value, plusMinus } }: ViewRead) => ({
  view,
  end: value < 90 ? 'front' : 'rear',
  degrees: azimuthStepDeg * Math.round(value / azimuthStepDeg),
  within: azimuthStepDeg * Math.ceil(plusMinus / azimuthStepDeg),
});

/** The name of a view, as the coach chooses one: "Three-quarter". */
export const sayViewName = (view: View, language: Language): string => wordingOf[language].names[view];

/** Where the camera stands, said to the coach: "three-quarter from behind". */
export const sayView = (read: ViewRead, language: Language): string =>
  formatMessage(wordingOf[language].seen, localeOf[language], valuesOf(read));

/** The same with its number: "three-quarter from behind, about 140° ± 15° round from the front". */
export const sayViewWithAzimuth = (read: ViewRead, language: Language): string =>
  formatMessage(wordingOf[language].seenAbout, localeOf[language], valuesOf(read));

type Judged = { readonly exercise: Exercise; readonly view: View; readonly nameOf: (id: CriterionId) => string };

/** What a view can judge of an exercise, said to the coach; `nameOf` names a criterion. */
export function sayJudgedFromHere({ exercise, view, nameOf }: Judged, language: Language): string {
  const { judged, not } = viewJudges(exercise, view);
  const named = (ids: readonly CriterionId[]) => ids.map((id) => withinSentence(language, nameOf(id))).join(', ');
  return formatMessage(wordingOf[language].judged, localeOf[language], {
    ...{ judgedCount: judged.length, judged: named(judged) },
    ...{ notCount: not.length, not: named(not) },
  });
}
