import type { WorkMessageId } from '../english/work.ts';

export const work: Readonly<Record<WorkMessageId, string>> = {
  sets: '{count, plural, one {# Satz} other {# Sätze}}',
  reps: '{count, plural, other {# Wdh.}}',
  holds: '{count}-mal halten',
  held: '{seconds, number, ::.#} s',
  bodyWeight: 'Körpergewicht',
  added: 'Körpergewicht + {load}',
  help: '{load} Hilfe',
  runOfReps: '{count} Sätze mit {set}',
  runOfLoad: '{count} Sätze mit {set}',
  unknownSets: '{count} nicht markiert',
  planned: '{work} geplant',
  plannedDone: '{work} geplant, {count} gemacht',
  plannedFilmed: '{work} geplant, {count} gefilmt',
  doneFilmed: '{work} gemacht, {count} gefilmt',
  listed: '{work}: {sets}',
  otherLoads: '{work}; im Video: {loads}',
  notStated: 'nicht angegeben',
  oneRepMaxNote: 'eine Schätzung, keine Last, die du allein testest',
};
