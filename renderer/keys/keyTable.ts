export type KeyGroup = 'Scorecard' | 'Marking reps' | 'Picture' | 'Anywhere';

/** Every act that has a key: the one place where keys are given out. */
export const keyTable = [
  { id: 'cellLeft', group: 'Scorecard', chords: ['ArrowLeft'], label: 'One rep to the left' },
  { id: 'cellRight', group: 'Scorecard', chords: ['ArrowRight'], label: 'One rep to the right' },
  { id: 'cellUp', group: 'Scorecard', chords: ['ArrowUp'], label: 'One criterion up' },
  { id: 'cellDown', group: 'Scorecard', chords: ['ArrowDown'], label: 'One criterion down' },
  { id: 'cellFirst', group: 'Scorecard', chords: ['Home'], label: 'The whole set' },
  { id: 'cellLast', group: 'Scorecard', chords: ['End'], label: 'The last rep' },
  { id: 'fine', group: 'Scorecard', chords: ['F'], label: 'Fine: looked at, nothing to say' },
  { id: 'keep', group: 'Scorecard', chords: ['K'], label: 'Keep: praise at this frame' },
  { id: 'prefer', group: 'Scorecard', chords: ['1'], label: 'Prefer: one stroke' },
  { id: 'adjust', group: 'Scorecard', chords: ['2'], label: 'Adjust: two strokes' },
  { id: 'correct', group: 'Scorecard', chords: ['3'], label: 'Correct: three strokes' },
  { id: 'stop', group: 'Scorecard', chords: ['4'], label: 'Stop: four strokes, crossed' },
  { id: 'fineRest', group: 'Scorecard', chords: ['Shift+F'], label: 'All that is not marked yet is fine' },
  { id: 'nextUnseen', group: 'Scorecard', chords: ['U'], label: 'Next cell not looked at yet' },
  { id: 'chooseRep', group: 'Scorecard', chords: ['X'], label: 'Choose this rep too, to mark several at once' },
  { id: 'copyFlag', group: 'Scorecard', chords: ['C'], label: 'The same flag on the next rep' },
  { id: 'nameFault', group: 'Scorecard', chords: ['Enter'], label: 'Name the fault of this cell' },
  { id: 'note', group: 'Scorecard', chords: ['N'], label: 'Write a note to this cell' },
  { id: 'goToFlag', group: 'Scorecard', chords: ['G'], label: 'Go to the frame of this cell' },
  { id: 'remove', group: 'Scorecard', chords: ['Delete', 'Backspace'], label: 'Take away the flag or the tick' },
  { id: 'markStart', group: 'Marking reps', chords: ['S'], label: 'A rep starts at this frame' },
  { id: 'markLongEnd', group: 'Marking reps', chords: ['L'], label: 'Its long end is at this frame' },
  { id: 'markEnd', group: 'Marking reps', chords: ['E'], label: 'It ends at this frame' },
  { id: 'removeRep', group: 'Marking reps', chords: ['Shift+Delete', 'Shift+Backspace'], label: 'Take away this rep' },
  { id: 'play', group: 'Picture', chords: ['Space'], label: 'Play or pause' },
  { id: 'frameBack', group: 'Picture', chords: ['Shift+ArrowLeft'], label: 'One frame back' },
  { id: 'frameOn', group: 'Picture', chords: ['Shift+ArrowRight'], label: 'One frame on' },
  { id: 'framesBack', group: 'Picture', chords: ['PageUp'], label: 'Ten frames back' },
  { id: 'framesOn', group: 'Picture', chords: ['PageDown'], label: 'Ten frames on' },
  { id: 'slower', group: 'Picture', chords: ['Shift+ArrowDown'], label: 'Slower' },
  { id: 'faster', group: 'Picture', chords: ['Shift+ArrowUp'], label: 'Faster' },
  { id: 'playBackwards', group: 'Picture', chords: ['Shift+Space'], label: 'Play backwards' },
  { id: 'loop', group: 'Picture', chords: ['R'], label: 'Repeat this rep' },
  { id: 'rangeFirst', group: 'Picture', chords: ['A'], label: 'A range to repeat begins here' },
  { id: 'rangeLast', group: 'Picture', chords: ['B'], label: 'The range ends here' },
  { id: 'loopRange', group: 'Picture', chords: ['Shift+R'], label: 'Repeat the range' },
  { id: 'ghost', group: 'Picture', chords: ['H'], label: 'Hold: the rep before, at the same phase' },
  { id: 'draw', group: 'Picture', chords: ['D'], label: 'Draw on the picture' },
  { id: 'closer', group: 'Picture', chords: ['+', '='], label: 'Closer' },
  { id: 'further', group: 'Picture', chords: ['-'], label: 'Further away' },
  { id: 'wholePicture', group: 'Picture', chords: ['0'], label: 'The whole picture' },
  { id: 'stripCloser', group: 'Picture', chords: ['Mod+PageUp'], label: 'Strip: less of the clip, larger' },
  { id: 'stripFurther', group: 'Picture', chords: ['Mod+PageDown'], label: 'Strip: more of the clip' },
  { id: 'panLeft', group: 'Picture', chords: ['Mod+ArrowLeft'], label: 'See more of the left' },
  { id: 'panRight', group: 'Picture', chords: ['Mod+ArrowRight'], label: 'See more of the right' },
  { id: 'panUp', group: 'Picture', chords: ['Mod+ArrowUp'], label: 'See more of the top' },
  { id: 'panDown', group: 'Picture', chords: ['Mod+ArrowDown'], label: 'See more of the bottom' },
  { id: 'compare', group: 'Picture', chords: ['Shift+C'], label: 'Beside an earlier clip, at the same phase' },
  { id: 'previousClip', group: 'Picture', chords: ['Shift+PageUp'], label: 'Previous clip' },
  { id: 'nextClip', group: 'Picture', chords: ['Shift+PageDown'], label: 'Next clip' },
  { id: 'nextSession', group: 'Anywhere', chords: ['Shift+N'], label: 'Next session due' },
  { id: 'theme', group: 'Anywhere', chords: ['Shift+D'], label: 'Light, dark, or as the system' },
  { id: 'undo', group: 'Anywhere', chords: ['Mod+Z'], label: 'Undo' },
  { id: 'redo', group: 'Anywhere', chords: ['Mod+Shift+Z', 'Mod+Y'], label: 'Redo' },
  { id: 'history', group: 'Anywhere', chords: ['Mod+H'], label: 'What was done, and back to any of it' },
  { id: 'letter', group: 'Anywhere', chords: ['W'], label: 'Write the letter' },
  { id: 'palette', group: 'Anywhere', chords: ['/'], label: 'Find an act by its name' },
  { id: 'keySheet', group: 'Anywhere', chords: ['?'], label: 'Show and change the keys' },
] as const satisfies readonly KeyEntry[];

export type KeyEntry = {
  readonly id: string;
  readonly group: KeyGroup;
  readonly chords: readonly string[];
  readonly label: string;
};

export type KeyId = (typeof keyTable)[number]['id'];

export const keyGroups: readonly KeyGroup[] = ['Scorecard', 'Marking reps', 'Picture', 'Anywhere'];
