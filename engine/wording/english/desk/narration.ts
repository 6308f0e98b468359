/** Speaking over a clip. */
export const narration = {
  narration: 'Narration',
  before:
    '{voice, select, self {I record my voice over this clip: playing, stepping, slowing down, zooming and drawing as I speak. My voice stays in the library on this computer until I hand it over or save it as a film.} other {Record your voice over this clip: play, step, slow down, zoom and draw as you speak. Your voice stays in the library on this computer until you hand it over or save it as a film.}} The microphone is asked for when recording starts.',
  record: 'Record',
  pause: 'Pause',
  goOn: 'Go on',
  keep: 'Keep what was recorded',
  time: '{phase, select, asking {Waiting for the microphone} recording {Recording {now}} paused {Paused at {now}} keeping {Saving} listening {{now} of {whole}} other {{whole}}}',
  done: 'Done',
  whileRecording:
    'Recording. All keys of the picture work as usual; {voice, select, self {I hear} other {the trainee will see}} exactly what is on screen now.',
  whilePaused: 'Paused. What happens now is not recorded.',
  whileListening: 'The picture follows the recording. Any key that moves the picture ends it.',
  kept: 'Recorded. It leaves this computer only as a film that is saved, or with a tick when handing over.',
  interrupted: 'A recording of this clip was interrupted. Keep what is there, or delete it.',
  deleteAsked: 'Delete this narration? The recording is removed from this computer for good; undo can’t bring it back.',
  drawnThen: 'Drawn while speaking',
  keepIt: 'Keep it',
  deleteIt: 'Delete for good',
  deleted: 'The narration and its recording were deleted.',
  noMicrophone:
    'No microphone could be used, so nothing was recorded; connect one, allow it in the system’s settings, and try again.',
  notHeard: 'The recording could not be played; the clip and its flags are as they were.',
  filmName: '{clip} narrated',
  filmBegun: 'The film is being made; see the jobs.',
} as const;

export type NarrationMessageId = keyof typeof narration;
