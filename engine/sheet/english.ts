import type { Weight } from '../rubric/index.ts';
import { strokes } from './strokes.ts';

/** The words of the sheet. */
export const words = {
  language: 'en',
  locale: 'en-GB',
  title: 'Review sheet: {trainee}, {date}',
  basis:
    'Coaching opinion from video; not medical advice. Session of {date}; clips: {clips}. Graded with {rubric}, version {version}.',
  noClips: 'none',
  quoted: '“{words}”',
  grades: 'Grades',
  gradesCaption: 'Grade of each exercise and of the session',
  session: 'Session',
  exercise: 'Exercise',
  sets: 'Sets',
  grade: 'Grade',
  score: 'Score',
  coverage: 'Looked at',
  range: 'Range',
  provisional: '{letter}, provisional',
  noGrade: 'none',
  parts: 'Technique {technique}; programme {programme}.',
  capped: 'A stop remark caps the session at {cap}.',
  noReason: '{exercise}: no grade. {reason}',
  raises: 'What would raise the grade',
  raisesCaption: 'Points the session would gain if a group of equal remarks were gone',
  remark: 'Remark',
  gain: 'Gain',
  flags: '{exercise}: remarks',
  flagsCaption: 'Remarks on {exercise}, by clip and time',
  noFlags: 'No remarks on this exercise.',
  time: 'Time',
  frame: 'frame\u00A0{frame}',
  noTime: 'not known',
  rep: 'Rep',
  wholeSet: 'set',
  criterion: 'Criterion',
  weight: 'Weight',
  seen: 'Seen',
  note: 'Note',
  cue: 'Cue',
  clip: 'Clip',
  tree: '{exercise}: how the grade comes about',
  treeCaption: 'Criteria of {exercise}: share, score, and the score of each rep',
  share: 'Share',
  reps: 'Reps',
  repScore: '{rep}: {score}',
  notLookedAt: 'not looked at',
  notShown: 'not shown by this view',
  lowest: 'Weighted mean {mean}; lowest criterion {criterion} at {score}.',
  programme: 'Programme',
  timesOf: 'The times are those of the clip that each note names.',
  timesOfOne: 'Notes on the clip {clip}.',
  leftOut: 'Remarks left out, because the time base of their clip is not known: {count}.',
  inRep: 'Rep {reps}',
  inReps: 'Reps {reps}',
  inSet: 'Whole set',
  seenLine: 'Seen: {seen}',
  cueLine: 'Cue: {cue}',
} as const;

/** A weight as word and strokes: "correct |||". */
export const weightText = (weight: Weight): string => `${weight} ${strokes[weight]}`;

/** The same where a line may break: word and strokes stay together. */
export const weightLine = (weight: Weight): string => `${weight}\u00A0${strokes[weight]}`;

/** Fills the `{places}` of a text of the sheet. */
export const fill = (template: string, values: Readonly<Record<string, string>>): string =>
  template.replace(/\{(\w+)\}/g, (_, place: string) => values[place] ?? '');
