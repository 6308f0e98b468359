/** What is left to do: states of sessions, what is late, how long it takes. */
export const night = {
  next: 'Next up',
  nextOf: 'Next up: {step}, {session}',
  import: 'add clips',
  judge: 'judge',
  letter: 'letter and handover',
  nothingDue: 'Nothing else is due.',
  allDone: 'Nothing is due. Everything is {voice, select, self {judged and kept} other {sent}}.',

  due: '{more, select, yes {More than {count} sessions due} other {{count, plural, one {# session due} other {# sessions due}}}}',
  late: '{count} late',
  minutes: 'about {minutes} min left for {clips, plural, one {# clip} other {# clips}}',
  hours: 'about {hours} h left for {clips, plural, one {# clip} other {# clips}}',
  clipsLeft: '{clips, plural, =0 {every clip judged} one {# clip left to judge} other {# clips left to judge}}',
  paceToday: 'At today’s pace: about {minutes} min per clip, not counting long breaks.',
  paceLastDays: 'At the pace of the last few days: about {minutes} min per clip, not counting long breaks.',

  state: 'State',
  new: 'New',
  inWork: 'In progress',
  judged: 'Judged',
  sent: '{voice, select, self {Kept} other {Sent}}',
  changedSince: '{voice, select, self {Changed since kept} other {Changed since sent}}',
  finished: 'Finished, {voice, select, self {nothing kept} other {no letter}}',
  measuredOf: '{measured} of {clips} measured',
  dueIn: '{days, plural, one {due tomorrow} other {due in # days}}',
  dueToday: 'due today',
  daysLate: '{days, plural, one {1 day late} other {# days late}}',
  came: 'First clip arrived on {day}',
  waitsForClips: 'waiting for clips',

  toDo: 'To do',
  doneSessions: 'Done',
} as const;

export type NightMessageId = keyof typeof night;
