/** What was done of an exercise: its sets, their repetitions and loads. */
export const work = {
  sets: '{count, plural, one {# set} other {# sets}}',
  reps: '{count, plural, one {# rep} other {# reps}}',
  holds: '{count, plural, one {# hold} other {# holds}}',
  held: '{seconds, number, ::.#} s',
  bodyWeight: 'body weight',
  added: 'body weight + {load}',
  help: '{load} of help',
  runOfReps: '{count} of {set}',
  runOfLoad: '{count} with {set}',
  unknownSets: '{count} not marked',
  planned: '{work} planned',
  plannedDone: '{work} planned, {count} done',
  plannedFilmed: '{work} planned, {count} filmed',
  doneFilmed: '{work} done, {count} filmed',
  listed: '{work}: {sets}',
  otherLoads: '{work}; on film: {loads}',
  notStated: 'not stated',
  oneRepMaxNote: 'an estimate, not a load to test alone',
} as const;

export type WorkMessageId = keyof typeof work;
