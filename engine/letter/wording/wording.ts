import type { View } from '../../exercises/exercise.ts';
import type { Language } from '../../language/language.ts';
import type { Weight } from '../../rubric/rubric.ts';

/** A text per plural category of the language; `other` covers what isn't named. `{places}` are filled in. */
export type Counted = { readonly other: string } & { readonly [category in Intl.LDMLPluralRule]?: string };

/** Every sentence of the letter, with `{places}` for what it speaks of. */
export type Messages = {
  readonly title: string;
  readonly greeting: string;
  /** {exercises}, {date}, {clips}, {reps}. */
  readonly opening: string;
  /** Where no reps are marked. */
  readonly openingUnmarked: string;
  readonly openingWithoutFilm: string;
  readonly clipCount: Counted;
  readonly repCount: Counted;
  /** {letter}, {score}. */
  readonly graded: string;
  readonly provisional: string;
  readonly noGrade: string;
  readonly parts: string;
  /** {cap}. */
  readonly cappedByStop: string;
  /** {fault}, {exercise}, {points}. */
  readonly largestGain: Counted;
  readonly onlyProgrammeCosts: string;
  readonly nothingCosts: string;
  /** A grade set by hand: {reason}, {computed}. */
  readonly byHand: string;
  readonly byHandNone: string;
  /** {entries}, {low}, {high}. */
  readonly provisionalBecause: string;
  readonly provisionalEntry: string;
  readonly rangeSingle: string;

  readonly stopTitle: string;
  /** {fault}, {where}. */
  readonly stopSeen: string;
  readonly stopAdvice: string;
  readonly painTitle: string;
  /** {words}. */
  readonly painQuote: string;
  readonly painDefer: string;

  readonly keepTitle: string;
  /** {criterion}. */
  readonly keepLabel: string;
  /** {where}, {what}. */
  readonly keepFlag: string;
  readonly keepTicked: string;
  readonly keepTickedAll: Counted;

  readonly sinceTitle: string;
  /** {fault}, {exercise}; the last two also {before}, {now}. */
  readonly sinceGone: string;
  readonly sinceBack: string;
  readonly sinceBetter: string;
  readonly sinceWorse: string;
  /** {reps}, {of}: how often something was seen. */
  readonly sinceReps: string;

  readonly changeTitle: string;
  readonly changeStop: string;
  readonly changeIntro: Counted;
  readonly changeNothing: string;
  /** Where part of the film was not looked at. */
  readonly changeNothingYet: string;
  /** Where there are remarks, each on too few reps. */
  readonly changeNothingOften: string;
  /** Where pain was noted: nothing is praised as to be done again. */
  readonly changeNothingPain: string;
  readonly changeNothingSeen: string;
  readonly changeLater: Counted;
  /** The same where nothing else was asked. */
  readonly changeOnlyLater: Counted;
  /** {number}, {fault}, {exercise}. */
  readonly priority: string;
  readonly priorityAcross: string;
  readonly seenLabel: string;
  readonly seen: string;
  readonly seenPlain: string;
  /** What a still shows, for those who don't see it: {where}, {what}. */
  readonly stillAlt: string;
  readonly whyLabel: string;
  /** {why} without its full stop, {source}. */
  readonly why: string;
  readonly cueLabel: string;
  readonly cue: string;
  /** After a cue that takes the place of one that had three letters. */
  readonly cueIsNew: string;
  readonly choiceOrder: string;
  /** {other}: the other cue. */
  readonly choiceCue: string;
  readonly drillLabel: string;
  readonly proofLabel: string;
  /** {criterion}; for remarks without a named fault. */
  readonly proofPlain: string;

  /** Where something was seen. */
  readonly everyRep: Counted;
  readonly someReps: Counted;
  readonly wholeSet: string;
  readonly repSpan: string;
  /** {exercise}, {reps}. */
  readonly place: string;
  readonly placeInClip: string;
  /** {place}, {times}. */
  readonly placeAt: string;
  readonly moreMoments: Counted;
  readonly moreClips: Counted;

  readonly exercisesTitle: string;
  readonly exercisesCaption: string;
  readonly columnExercise: string;
  readonly columnWork: string;
  readonly columnGrade: string;
  readonly columnFilm: string;
  readonly sets: Counted;
  readonly reps: Counted;
  readonly gradeCell: string;
  readonly gradeCellProvisional: string;
  readonly gradeCellNone: string;
  /** {exercise}, {reason}. */
  readonly entryNone: string;
  readonly entryCapped: string;
  /** {exercise}, {reason}, {computed}. */
  readonly entryByHand: string;
  readonly entryByHandNone: string;
  readonly noFilm: string;

  readonly programmeTitle: string;

  readonly filmTitle: string;
  readonly filmNone: string;
  readonly filmOtherView: string;
  readonly filmNoView: string;
  readonly filmUnseen: string;
  readonly filmFirst: string;
  /** {exercise}, {view}. */
  readonly filmAfterStop: string;
  readonly filmAgain: string;
  /** Where pain was noted. */
  readonly filmAfterPain: string;
  readonly view: Readonly<Record<View, string>>;

  readonly cautionsTitle: string;
  readonly signOff: string;
  /** {date}, {clips}, {rubric}, {version}. */
  readonly basis: string;
  readonly basisWithoutFilm: string;

  /** {words}: names of clips in a list. */
  readonly quoted: string;
  /** Numbers in words, from none to the most priorities a letter has. */
  readonly numbers: readonly string[];
  readonly weight: Readonly<Record<Weight, string>>;
};

/** One language of the letter, as data. */
export type Wording = {
  /** BCP 47 tag of the document. */
  readonly language: Language;
  /** BCP 47 tag for numbers, lists and dates. */
  readonly locale: string;
  readonly coach: Messages;
  /** The athlete speaking to themselves. */
  readonly self: Messages;
  /** What a coach says otherwise in another tone; plain is the wording itself. */
  readonly tones: Readonly<Record<'warm' | 'direct', Partial<Messages>>>;
};

/** How a coach's letter sounds; a self-review has one tone. */
export const tones = ['plain', 'warm', 'direct'] as const;
export type Tone = (typeof tones)[number];
