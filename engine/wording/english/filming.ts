/** How to film. Common practice, and the geometry of pictures; see its tests for the figures. */
export const film = {
  title: 'How to film',
  safety: 'Safety first',
  pathWhat: 'Phone and stand out of the way.',
  pathWhy: 'Out of the walkway, out of the bar’s path, and where nobody trips over them.',
  catchWhat: 'Safety arms set, or a spotter close by.',
  catchWhy: 'Set them before the first rep, a little below the lowest place the bar reaches.',
  aloneWhat: 'Not alone near failure.',
  aloneWhy: 'Alone, stop each set with three good reps left, on film too.',
  painWhat: 'Stop if something hurts.',
  painWhy: 'No clip is worth a rep in pain.',
  minorsWhat: 'Minors only with a guardian’s consent.',
  minorsWhy: 'It covers the filming and keeping the footage. An adult who can coach is there.',
  advice: 'How to film well',
  stillWhat: 'Stand the phone still.',
  stillWhy: 'On a stand, a shelf or a stack of discs: a camera that moves makes every line crooked.',
  distanceWhat: 'Three to five metres away.',
  distanceWhy: 'Any closer, and whatever is nearest looks too large. Leave a hand’s width free above and below.',
  lensWhat: 'The main lens, no zoom beyond two times.',
  lensWhy: 'Wide lenses bend the edges of the picture.',
  rateWhat: 'Sixty frames a second if the phone can do it.',
  rateWhy: 'Thirty is the minimum; slow motion is fine too.',
  lightWhat: 'Light from behind the camera.',
  lightWhy: 'A bright picture is a sharp one.',
  discWhat: 'The near disc in full view.',
  discWhy: 'Nothing and nobody in front of it, from the first rep to the last.',
  setWhat: '{effort, select, hardest {The hardest set} other {An easy set}}, with its set-up and at least three reps.',
  setWhy: 'Say which load and set it was and how many reps were left.',
  fileWhat: 'The file as the phone made it.',
  fileWhy: 'Chat apps shrink videos and lose frames and times.',
  peopleWhat: 'Nobody else in the picture.',
  peopleWhy: 'Everyone who can be seen has to agree; for a minor, a guardian has to.',
  exercises: 'Exercise by exercise',
  view: 'Film {view, select, side {from the side, square to the way the load moves} front {from the front} rear {from behind} other {from a front corner}}.',
  lensHeight:
    '{height, select, hip {Lens at the height of the hips at the deepest point, about knee height.} bench {Lens at the height of the bench.} other {Lens at the height of the chest.}}',
  hold: 'Hold the phone {turned, select, lengthways {sideways} other {upright}}.',
} as const;

export type FilmMessageId = keyof typeof film;

/** The filming date; its text is the page on how to film. */
export const calendar = {
  summary: 'Filming day{count, plural, =0 {} other {: {exercises}}}',
  clinicianFirst: 'Before the next film: see a clinician',
} as const;

export type CalendarMessageId = keyof typeof calendar;
