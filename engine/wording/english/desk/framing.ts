/** How a clip's picture is shown, and which of its footage. */
export const framing = {
  frame: 'Turn, crop and trim',
  done: 'Done',
  intro:
    'The clip shows like this here and in everything that is handed over; the file itself stays as it is. Notes, drawings and covers keep their place.',
  direction: 'Direction',
  crop: 'Crop',
  cropHow: 'Drag a box over the picture, or move it with arrow keys; Alt with an arrow resizes it.',
  cropMiddle: 'Crop about the middle',
  cropNone: 'Show all of the picture',
  cropped: 'Part of the picture that stays',
  brightness: 'Brightness',
  percent: '{percent, number} %',
  asFilmed: 'As filmed',
  section: 'Trim and split',
  wholeShown: 'All of the footage shows.',
  sectionShown: 'Shows {from} to {to} of the footage. Only this leaves, and times count from its start.',
  wholeFootage: 'Show all of the footage',
  splitSets: 'Split into {count} sets, at {at}',
  splitHere: 'Split here, at {at}',
  reset: 'Picture as filmed',
} as const;

export type FramingMessageId = keyof typeof framing;
