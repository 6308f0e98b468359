/** What can go wrong with video files, measuring them, and the programs that read and write them. */
export const media = {
  notUnderstood:
    '“{file}” does not say how large its picture is or how its time is counted, so nothing was changed; save it again as MP4 in a video editor, then try that copy.',
  noTimes:
    '“{file}” does not say when each of its frames is shown, so nothing was changed; save it again as MP4 in a video editor, then try that copy.',
  singlePicture: '“{file}” is a single picture without movement, so nothing was changed; choose a video.',
  notAFile: '“{file}” is not a file, so nothing was changed; choose a video file.',
  emptyFile: '“{file}” is empty (0 bytes), so nothing was changed; copy it again from the camera or phone.',
  onlySound: '“{file}” has no moving picture, only sound or data, so nothing was changed; choose a video.',
  cutShort:
    '“{file}” is cut short: {counted, select, fewer {only {whole} of the {stated} frames in its index can be read} other {its data ends too early}}, so nothing was changed; copy it again from the camera or phone.',
  noFrames: '“{file}” has no frames, so nothing was changed; copy it again from the camera or phone.',
  damagedFile:
    '“{file}” is cut short or damaged: the index of its frames can’t be read, so nothing was changed; copy it again from the camera or phone.',
  noVideo: '“{file}” is not a video, so nothing was changed; choose a video file.',
  playableCopyLost:
    '“{file}” has {frames} frames, but only {decoded} could be decoded for a playable copy, so nothing was changed; copy it again from the camera or phone, or save it again as MP4.',
  frameLost:
    '“{file}” has {frames} frames, but number {frame} could not be decoded, so nothing was changed; copy it again from the camera or phone, or save it again as MP4.',
  noFileThere: 'There is no file “{file}”, so nothing was changed; check the name and the folder.',
  fileUnreadable: '“{file}” could not be read; check that the file is still there.',
  changedWhileRead: '“{file}” changed while it was being read; wait until it is complete, then try again.',
  diskFullFor: 'The disk is full, so nothing was made of “{file}”, and the clip is as it was; make room and try again.',
  notDecoded:
    'The frames of “{file}” could not be decoded, and the clip is as it was; play it elsewhere to see whether it is damaged.',
  notEncoded:
    '“{file}” could not be encoded, and the clip is as it was; set FFMPEG_PATH to a full build of ffmpeg and try again.',
  stillsNotEncoded:
    'The stills could not be encoded, and the clip is as it was; set FFMPEG_PATH to a full build of ffmpeg and try again.',
  notWrittenBeside:
    'Nothing could be written beside “{file}”, and the clip is as it was; check that the folder can be written to and has room.',
  toolUnfit:
    '{variable} names a program that does not run as {tool}, so nothing was changed; correct it, or unset it to use the {tool} that comes with Rackside.',
  toolMissing:
    'No {tool} that runs was found, so nothing was changed; run “npm install” again, or set {variable} to one on this computer.',
  noNotices:
    'The third-party notices (THIRD-PARTY.md) are missing from Rackside’s folder; nothing was changed. Install Rackside again to get them back.',
  alreadyInSession: '“{file}” is already in this session, so it was not added again.',
  arrivalGone: 'This clip is no longer in the inbox; nothing was changed.',
  arrivalUnread: '“{file}” has not been read yet, so nothing was added to a session; wait until its picture appears.',
  noFramesInLibrary: 'The footage of “{clip}” is not in the library, so it has no frames.',
  pictureMissing:
    'The {what, select, poster {poster} filmstrip {filmstrip} other {video}} of “{clip}” is not in the library’s folder.',
  footageElsewhere: 'The footage of this clip is not in the library; its flags and grade are.',
  playableCopyToCome: 'A playable copy of this clip is still to be made; see the jobs.',
  playableCopyMissing:
    'The playable copy of “{clip}” is missing from the library’s “clips” folder; put it back to see this clip.',
  clipFileMissing:
    'The file of “{clip}” is missing from the library’s “clips” folder; put it back, or import the clip again, to see it.',
  playableCopyAnew:
    'The playable copy of “{clip}” was lost or changed on the disk, so a new one is being made (see the jobs); the clip itself and its flags are safe.',
  clipFileChanged:
    'The file of “{clip}” has been changed on the disk since it came in, so it is neither shown nor measured; flags and grade are safe. Add the filmed file again, and it is put back.',
  noFootageToCopy: 'The footage is not in the library, so no playable copy was made.',
  nothingToMeasure:
    'The footage of “{clip}” is not in the library, so there is nothing to measure; import the clip first.',
  footageFileMissing: 'The file “clips/{file}” is missing, so “{clip}” was not measured; put it back and try again.',
  jointsUnavailable:
    'Joints can’t be found on this computer, but the clip and its other measures are as they were; install the app again, or measure without joints.',
  measuringCancelled: 'Cancelled; what was measured before stays as it was.',
  voiceNotEncoded:
    'The narration could not be encoded, so it stays as it was recorded; set FFMPEG_PATH to a full build of ffmpeg and try again.',
  nothingToNarrate:
    'The footage of “{clip}” is not in the library, so there is nothing to narrate; import the clip first.',
  narratedAlready: '“{clip}” already has a narration, so nothing was recorded; delete that one first.',
  nothingRecorded:
    'Nothing was recorded for “{clip}”, so there is nothing to keep; check the microphone and record again.',
  notNarrated: '“{clip}” has no narration in the library, so no video was made; record one first.',
  narrationGone: 'This narration is no longer in the library; nothing was changed.',
  narrationKept: 'This narration is finished, so nothing was added to it; delete it to record another.',
} as const;
