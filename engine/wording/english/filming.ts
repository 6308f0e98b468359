/** The filming card. Common practice, and the geometry of pictures; see its tests for the figures. */
export const film = {
  title: 'How to film your lifts',
  stillWhat: 'Stand the phone still.',
  stillWhy: 'On a stand, a shelf or a stack of discs: a camera that moves makes every line crooked.',
  distanceWhat: 'Three to five metres away.',
  distanceWhy: 'Nearer, what is close looks too large. Leave a hand’s width free above and below.',
  lensWhat: 'The main lens, no zoom beyond two times.',
  lensWhy: 'Wide lenses bend the edges of the picture.',
  rateWhat: 'Sixty frames a second where the phone has them.',
  rateWhy: 'Thirty is the least; slow motion is fine too.',
  lightWhat: 'Light from behind the camera.',
  lightWhy: 'A bright picture is a sharp one.',
  discWhat: 'The near disc in full view.',
  discWhy: 'No post and nobody in front of it, from the first rep to the last.',
  setWhat: 'The hardest set, with its set-up and at least three reps.',
  setWhy: 'Say the load, the set and how hard it was.',
  fileWhat: 'Send the file itself.',
  fileWhy: 'What a chat has made smaller has lost frames and times.',
  peopleWhat: 'Nobody else in the picture.',
  peopleWhy: 'Whoever can be seen has to agree; for a minor, a guardian.',
  exercises: 'Your exercises',
  view: 'Film {view, select, side {from the side, square to the way the weight goes} front {from the front} rear {from behind} other {from a front corner}}.',
  lensHeight:
    '{height, select, hip {Lens at the height of the hips at the deepest point, about knee height.} bench {Lens at the height of the bench.} other {Lens at the height of the chest.}}',
  hold: 'Hold the phone {turned, select, lengthways {lengthways} other {upright}}.',
} as const;

export type FilmMessageId = keyof typeof film;

/** The filming date; the advice itself comes from the filming card. */
export const calendar = {
  summary: 'Film your lifts{count, plural, =0 {} other {: {exercises}}}',
} as const;

export type CalendarMessageId = keyof typeof calendar;
