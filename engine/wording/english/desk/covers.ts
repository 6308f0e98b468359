/** Covering faces and areas of the picture. */
export const covers = {
  covers: 'Covers',
  done: 'Done',
  intro:
    'A dark box hides whatever it covers in every clip, loop and still that is handed over, and the original clip stays here. Use it for faces. A mosaic is no safe cover: a face may still be recognisable.',
  how: 'Drag a box over a face or an area. Go to a later frame and drag it along; between two positions it moves evenly.',
  add: 'Add a cover in the middle of the picture',
  addHead:
    '{voice, select, self {Cover my head (follows the joints)} other {Cover the lifter’s head (follows the joints)}}',
  jointsUnknown: 'To have the head covered automatically, measure this clip first ({key}).',
  byKeys:
    'By keyboard: arrows move the selected box, Alt with an arrow resizes it, Delete removes it. {back} and {on} step from frame to frame.',
  nothing: 'Nothing is covered in this clip yet.',
  list: 'Covers on this clip',
  box: 'Cover {number}: {look, select, filled {dark box} other {mosaic}}',
  head: 'Cover {number}: head, {look, select, filled {dark box} other {mosaic}}',
  placed: '{count, plural, one {# position} other {# positions}}',
  byJoints: 'follows the joints',
  wholeSpan: '{where}, whole clip',
  fromSpan: '{where}, from {from}',
  untilSpan: '{where}, until {until}',
  span: '{where}, from {from} until {until}',
  remove: 'Remove: {cover}',
  headLost: 'The head was not found in this clip. With this cover on, none of the clip is handed over.',
  look: 'How the cover looks',
  filled: 'Dark box (for faces)',
  mosaic: 'Mosaic',
  fromHere: 'From here',
  untilHere: 'Until here',
  wholeClip: 'Whole clip',
  placedHere: 'The box was placed at this frame.',
  notPlacedHere: 'The box was not placed at this frame; move it to place it here.',
  notCovering: 'The box does not cover this frame.',
  removePlace: 'Remove this position',
} as const;

export type CoverMessageId = keyof typeof covers;
