/** The hints of the review, one at a time; values are keys. */
export const hints = {
  hint: 'Hint',
  step: '{back} and {on} step frame by frame; {play} plays, {backwards} plays backwards.',
  mark: '{left} {up} {down} {right} move around the scorecard. {prefer}, {adjust}, {correct} and {stop} flag what is wrong, {keep} praises, {fine} marks fine.',
  rest: '{rest} marks everything that is left as fine; {next} goes to the next cell to look at.',
  measure: '{measure} measures this clip, {all} every clip of the session; {panel} shows measures and suggestions.',
  find: '{palette} finds any action by name; {sheet} shows all keys, which can be changed there.',
  next: 'Next hint',
  noMore: 'No more hints',
} as const;

export type HintMessageId = keyof typeof hints;
