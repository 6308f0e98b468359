/** What can go wrong with sessions, trainees, their letters, and comparing judgements. */
export const sessions = {
  sessionGone: 'This session is not in the library; nothing was changed.',
  sessionOfAnother:
    'This session belongs to another trainee, so nothing was added; choose a session of the clip’s trainee.',
  readOnlySession:
    'This session came from another coach’s Rackside and can’t be changed here; start a blind second look to judge it yourself.',
  sessionHasClips: 'This session has clips, so it was not removed.',
  traineeGone: 'This trainee is not in the library; nothing was changed.',
  entryGone: 'This exercise is no longer in the session; nothing was changed.',
  cantAlign:
    'Neither the sound nor the reps show how “{clip}” and “{lead}” line up, so nothing was changed; mark the same moment in both to line them up by hand.',
  pairElsewhere:
    '“{clip}” and “{lead}” are not clips of the same exercise, so they were not paired; move one to the other’s exercise first.',
  pairTaken: '“{clip}” or “{lead}” is already paired with another clip, so nothing was changed; unpair it first.',
  notPaired: '“{clip}” is not paired with another clip, so there was nothing to unpair.',
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
    'This also changed the session “{title}” of {date}, where something has been done since, so nothing was changed; undo or redo that there first.',
  nothingToRedoAtDesk: 'Nothing was undone here, so there is nothing to redo.',
  mergeSent:
    'The letter of {title, select, none {the session} other {“{title}”}} was sent, and would be lost with the emptied session, so nothing was merged; merge the other session into this one, or move its exercises.',
  notInBin: 'That is no longer in the bin, so nothing was deleted.',
  nothingToUndoAtDesk: 'There is nothing to undo on the desk: no session was removed, moved, merged or renamed.',
  secondLookStays: 'A second look keeps the clips and the trainee of the first session, so nothing was moved.',
  mergeElsewhere:
    'These two are in different sessions, so they were not merged; move one to the other’s session first.',
  mergeOtherExercise: 'Only two entries of one exercise can be merged; nothing was changed.',
  mergeOtherDay:
    'Only two sessions of one trainee on one day can be merged, so nothing was changed; change the date first.',
  notesTooLongToMerge:
    'The notes of the two sessions are too long together, so the sessions were not merged; shorten the notes first.',
} as const;
