/** What is wrong with a folder or zip that should be a handover. */
const why = `{why, select,
  noList {it has no list of its files}
  noReview {its review is missing}
  reviewChanged {its review was changed after it was handed over}
  footageOutside {its review names footage outside of it}
  clipMissing {a clip is missing or cut short}
  clipChanged {a clip was changed on its way}
  clipTooLong {a clip is longer than it says}
  clipDamaged {a clip in it is damaged}
  textTooLong {one of its texts is far too long}
  textUnreadable {one of its texts can’t be read}
  link {it contains a link}
  noZip {it is not a zip, or is cut short}
  tooManyFiles {it has far too many files}
  listDamaged {its list of files is damaged}
  growsTooMuch {unpacked it would be far too large}
  fileDamaged {a file in it is damaged}
  twice {it has the same file twice}
  locked {a file in it is encrypted}
  other {it is incomplete}}`;

/** What can go wrong while a session is handed over, or while another coach's handover is imported. */
export const handover = {
  noHandover: `“{file}” can’t be imported as a handover: ${why}, so nothing was imported; ask for it again.`,
  notOpened: '“{file}” could not be opened; check the path and try again.',
  headNotFollowed:
    'The head in “{clip}” could not be followed, so nothing of this clip was handed over; measure it with its joints, or add a box.',
  originalLostFrames:
    'The copy of “{clip}” without metadata lost frames, so the original was left out; send the file yourself.',
  repTooLong:
    'The rep is too long for such a small file, so no loop was made of it; set its edges, or send the annotated clip.',
  footageUnnamed:
    'The review does not say where the footage of “{clip}” is, so its notes have no pictures; give the clip its path.',
  footageWrong:
    '“{file}” is not the footage that was reviewed, so its notes have no pictures; give the clip the right path.',
  handedFootageChanged:
    'The file of “{clip}” has been changed on the disk since it came in, so its notes have no pictures; add the filmed file again and hand over once more.',
  footageNotInLibrary:
    'The footage of “{clip}” is not in the library, so its notes have no pictures; put the file back and hand over again.',
  folderNotWritten:
    'The handover could not be written to “{folder}”, and nothing half done was left there; check that the folder can be written to and has room.',
  namesToCheck:
    '{count, plural, one {# place} other {# places}} in the session of {trainee} ({date}) may hold the hidden name, so nothing was handed over; check {count, plural, one {it} other {them}} under “Hand over”.',
  neverHandedOver: 'No version {version} of this session was handed over; nothing was written.',
  keptFileMissing: 'The file “{file}” is missing, so nothing was written; restore a backup of it.',
  keptFileChanged:
    'The file “{file}” is no longer what was handed over, so nothing was written; restore a backup of it.',
} as const;
