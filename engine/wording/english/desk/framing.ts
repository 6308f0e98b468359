/** How a clip's picture is shown, and which of its footage. */
export const framing = {
  frame: 'Turn, crop and trim',
  done: 'Done',
  intro:
    'The clip looks like this here and in everything that is handed over; the file itself stays as it is. Notes, drawings and covers keep their place.',
  direction: 'Orientation',
  crop: 'Crop',
  cropHow: 'Drag a box over the picture, or move it with the arrow keys; Alt with an arrow resizes it.',
  cropMiddle: 'Crop to the middle',
  cropNone: 'Remove the crop',
  cropped: 'Part of the picture to keep',
  brightness: 'Brightness',
  percent: '{percent, number} %',
  asFilmed: 'As filmed',
  section: 'Trim and split',
  wholeShown: 'All of the footage is shown.',
  sectionShown:
    'Shows {from} to {to} of the footage. Only this section is handed over, and times count from its start.',
  wholeFootage: 'Show all of the footage',
  splitSets: 'Split into {count} sets, at {at}',
  splitHere: 'Split here, at {at}',
  reset: 'Show the picture as filmed',
} as const;

export type FramingMessageId = keyof typeof framing;
