/** Narrating a clip. */
export const narration = {
  narration: 'Narration',
  before:
    '{voice, select, self {I record my voice over this clip while I play, step, slow down, zoom and draw. My voice stays in the library on this computer until I hand it over or save it as a video.} other {Record your voice over this clip while you play, step, slow down, zoom and draw. Your voice stays in the library on this computer until you hand it over or save it as a video.}} The microphone is on only while recording.',
  record: 'Record',
  pause: 'Pause',
  goOn: 'Resume',
  keep: 'Keep what was recorded',
  time: '{phase, select, asking {Waiting for the microphone} recording {Recording {now}} paused {Paused at {now}} keeping {Saving} listening {{now} of {whole}} other {{whole}}}',
  done: 'Done',
  whileRecording:
    'Recording. All keys for the picture work as usual; {voice, select, self {I will see} other {the trainee will see}} exactly what is on screen.',
  whilePaused: 'Paused. What happens now is not recorded.',
  whileListening: 'The picture follows the recording. Any key that moves the picture stops it.',
  kept: 'Recorded. It leaves this computer only if it is saved as a video or ticked at the handover.',
  interrupted: 'A recording of this clip was interrupted. Keep what there is, or delete it.',
  deleteAsked:
    'Delete this narration? Its recording is removed from this computer for good, and undo can’t bring it back.',
  drawnThen: 'Drawn while speaking',
  keepIt: 'Keep it',
  deleteIt: 'Delete for good',
  deleted: 'The narration and its recording were deleted.',
  noMicrophone:
    'No microphone could be used, so nothing was recorded; connect one, allow access in the system settings, and try again.',
  notHeard:
    'The recording could not be played; the clip and its flags are as they were. Try again, or delete it and record another.',
  filmName: '{clip} narrated',
  filmBegun: 'The video is being made; see the jobs.',
} as const;

export type NarrationMessageId = keyof typeof narration;
