/** What can go wrong with sessions, trainees, their letters, and comparing judgements. */
export const sessions = {
  sessionGone: 'This session is not in the library; nothing was changed.',
  sessionOfAnother: 'This session is another trainee’s, so nothing was brought in; choose one of theirs.',
  readOnlySession:
    'This session came from another coach’s Rackside and can’t be changed here; start a blind second look to judge it yourself.',
  sessionHasClips: 'This session has clips, so it was not removed.',
  traineeGone: 'This trainee is not in the library; nothing was changed.',
  entryGone: 'This exercise is no longer in the session; nothing was changed.',
  cantAlign:
    'Neither the sound nor the reps tell how “{clip}” and “{lead}” lie together, so nothing was changed; show the same moment in both and lay them together by hand.',
  pairElsewhere:
    '“{clip}” and “{lead}” are not two clips of one exercise, so they can’t show one set; move one to the other’s exercise first.',
  pairTaken:
    '“{clip}” or “{lead}” already shares its set with another clip, so nothing was changed; take it out of that set first.',
  notPaired: '“{clip}” shares its set with no other clip, so there was nothing to take apart.',
  entryElsewhereClip: 'This exercise belongs to another session, so no clip was added.',
  entryElsewhereGrade: 'This exercise belongs to another session, so no grade was changed.',
  clipElsewhere: 'This clip belongs to another session, so your place was not remembered.',
  noExerciseNamed: 'No clip was added, because it is not known which exercise the clips show; choose one.',
  exerciseUnknown: 'The exercise library has no “{exercise}”, so nothing was changed.',
  fixedParagraph:
    'Cautions and the closing line stay as they are, so nothing was changed. Add your words in another paragraph.',
  noParagraph: 'The letter no longer has this paragraph, so nothing was changed.',
  letterNotSent: 'No version {version} of this letter was sent; nothing was changed.',
  letterChanged:
    'Version {version} of this letter is no longer what was sent: its file was changed outside Rackside; restore a backup to see it.',
  letterUnreadable: 'This letter can no longer be read, so nothing was changed; restore a backup to see it.',
  noLetterForSecondLook:
    'A second look is a check on your own judging and has no letter; use the letter of the first session.',
  secondLookOfSecond: 'This is a second look already; start another one from the first session.',
  nothingJudged: 'Nothing has been judged in this session yet, so there is nothing to look at again.',
  secondLookOpen: 'A second look at this session is already under way; finish that one first.',
  noSecondLook: 'There is no second look at this session yet; start one first.',
  nothingShared:
    'The two reviews have no clip of the same exercise in common, so they can’t be compared; choose two of the same clips.',
  sameSession: 'This is the same session twice, which always agrees; choose another one.',
  onlySheetFormat: 'Only the sheet can be written as {format}, so nothing was written; choose html, pdf, md or txt.',
  noSuchClip: 'The session has no such clip, so nothing was written; choose one of its own.',
  nothingToUndo: 'There is nothing to undo in this session.',
  nothingToRedo: 'There is nothing to redo in this session.',
  otherSessionChanged:
    'This also changed the session “{title}” of {date}, where something was done since, so nothing was changed; undo or redo that there first.',
  nothingToUndoAtDesk: 'No session was removed, moved, merged or renamed here that undo could take back.',
  secondLookStays: 'A second look keeps the clips and the trainee of its first session, so nothing was moved.',
  mergeElsewhere:
    'These two stand in different sessions, so they were not merged; move one to the other’s session first.',
  mergeOtherExercise: 'These are not two entries of one exercise, so they were not merged.',
  mergeOtherDay: 'These are not two sessions of one trainee and day, so they were not merged; change the date first.',
  notesTooLongToMerge: 'The notes of both sessions together are too long, so they were not merged; shorten one first.',
} as const;
