/** What can go wrong while a clip is judged: flags, reps, drawings, covers, suggestions. */
export const judging = {
  clipGone: 'This clip is no longer in the library; nothing was changed.',
  copyElsewhere: 'A flag can be copied only within its own session; nothing was changed.',
  flagGone: 'This flag is no longer in the session; nothing was changed.',
  notJudgedBy: '{exercise} is not judged by “{criterion}”, so nothing was changed.',
  faultUnknown: '“{fault}” is not a fault of {exercise} under “{criterion}”, so nothing was changed.',
  noFrame: 'The clip “{clip}” has no frame {frame}, so nothing was marked; choose a moment within the clip.',
  repsNotMarked:
    'Rep {rep} is not marked: the clip “{clip}” has {reps, plural, one {# rep} other {# reps}}; nothing was changed.',
  repNotMarked: 'Rep {rep} is not marked in “{clip}”; nothing was changed.',
  noRepStarted:
    'No rep starts before this frame, so {edge, select, stretchedEnd {no stretched end} other {no end}} was set; mark the start first.',
  repStartsHere:
    'A rep starts on this very frame, so {edge, select, stretchedEnd {no stretched end} other {no end}} was set; go further into the rep.',
  noEdge:
    'Rep {rep} of “{clip}” has {edge, select, start {no start} stretchedEnd {no stretched end} other {no end}} to move; nothing was changed.',
  edgeBeyond:
    'The {edge, select, start {start} stretchedEnd {stretched end} other {end}} of rep {rep} can’t go past its neighbours, so it stayed where it was; move those first.',
  reviewFull:
    '{what, select, entries {A session holds {most} exercises at most} clips {An exercise holds {most} clips at most} flags {An exercise holds {most} flags at most} other {A clip holds {most} reps at most}}, so nothing was changed; remove some first, or go on in another session.',
  drawingsFull: 'The clip “{clip}” already has {most} drawings, so none was added; remove one first.',
  drawingGone: 'This drawing is no longer on the clip; nothing was changed.',
  plumbSlants: 'A plumb line is vertical and this one isn’t, so nothing was drawn; draw a line instead.',
  drawingEndsEarly: 'The drawing would end before it starts, so nothing was changed.',
  coverAbsent: 'There is no cover at frame {frame}, so nothing was moved; extend the cover to this frame first.',
  coverPlacesFull: 'The cover already has {most} places, so none was added.',
  coverEndsEarly: 'The cover would end before it starts, so nothing was changed.',
  noCoverPlace: 'The cover has no place of its own at frame {frame}; nothing was changed.',
  onlyCoverPlace: 'This is the cover’s only place, so it was kept; remove the cover itself instead.',
  coverGone: 'This cover is no longer on the clip; nothing was changed.',
  coverFollowsHead: 'This cover follows the lifter’s head and can’t be moved; add a box as well.',
  coversFull: 'The clip “{clip}” already has {most} covers, so none was added; remove one first.',
  headCovered: 'The lifter’s head is already covered in “{clip}”; nothing was changed.',
  nothingToCover: 'The footage of “{clip}” is not in the library, so there is nothing to cover; import the clip first.',
  coverOutside: 'The box lies outside the picture and would cover nothing; nothing was changed.',
  suggestionGone: 'This suggestion is no longer made for the clip, so nothing was changed; look at its measures again.',
  suggestedRepMissing:
    'Measured rep {rep} is not among the clip’s reps, so nothing was flagged; use the measured reps first.',
  noRepsMeasured:
    'No reps were measured in “{clip}”, so its reps stay as they are; measure it first, or mark them by hand.',
  movementGone: 'That movement is no longer offered in “{clip}”, so no rep was added; mark the rep by hand.',
  clicksFull: '“{clip}” already has {most} clicks, so none was added; remove the earlier ones first.',
  nothingToFrame:
    'The footage of “{clip}” is not in the library, so there is nothing to turn or trim; import the clip first.',
  cropOutside: 'The crop goes beyond the picture, so nothing was changed; keep it within the picture.',
  frameOutsideSection:
    'Frame {frame} lies outside the section that “{clip}” shows, so nothing was marked; choose a moment within it.',
  sectionEndsEarly:
    'The section would end before it starts, so the clip was not trimmed; set a later end or an earlier start.',
  judgedOutside: 'Some flags or ticks lie outside the section, so “{clip}” was not trimmed; move or remove them first.',
  narratedAsItIs:
    'The narration of “{clip}” shows its picture as it is now, so nothing was changed; delete the narration first.',
  nothingToSplit: '“{clip}” can’t be split at this frame, so it stays one clip; choose a frame further into it.',
} as const;
