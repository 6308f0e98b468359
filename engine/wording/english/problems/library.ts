/** What can go wrong with the library as a whole. */
export const library = {
  isOpenAlready: 'The library is already open and was left as it is.',
  noLibraryYet: 'There is no library in this folder yet; create one first.',
  libraryThere: 'There is already a library in “{folder}”; it was left as it is.',
  libraryNotWritable:
    'The library in “{folder}” could not be opened for writing, so nothing was changed; check the folder and the free space on its disk.',
  libraryReadOnly:
    'The library in “{folder}” is read-only, so it was not opened and nothing was changed; make that folder writable and try again, or open a copy that can be written.',
  libraryAway:
    'The library in “{folder}” can’t be found, so nothing was opened; connect its disk or put the folder back and try again, or open another library from the menu.',
  libraryGone:
    'The library is no longer in “{folder}”, so this was not saved; what was saved before is still in that folder, wherever it is now. Put it back, or connect its disk again, and start Rackside again.',
  libraryBusy:
    'The library in “{folder}” is open in another Rackside, so nothing was changed; close that one and try again.',
  noLibraryFile: '“{file}” is not a Rackside library, so it was not opened or changed; choose another folder.',
  libraryNewer:
    'The library in “{folder}” was used by a newer Rackside, so this one leaves it alone; install the newer version to open it.',
  libraryUnknown:
    'The library was made by a version of Rackside that this one does not know, so nothing was changed; open it with that version.',
  libraryDamaged:
    'The library in “{folder}” is damaged and was neither opened nor changed; its clips are safe, and the “backups” folder beside it may hold a good copy.',
  becameDamaged: 'The library has become damaged on its disk, so this was not done; close Rackside and check the disk.',
  sessionDamaged:
    'A disk fault changed part of this session, so it is neither shown nor changed; its clips and all other sessions are safe, and the library’s “backups” folder may hold a good copy.',
  historyDamaged:
    'A disk fault changed the history of this session, so nothing was undone or shown; the clips are safe, and the library’s “backups” folder may hold a good copy.',
  partDamaged:
    'A disk fault changed what the library holds here, so it is not used; the clips and everything else are safe, and the library’s “backups” folder may hold a good copy.',
  recordingDamaged:
    'A disk fault changed what was measured of this clip, so it is not used; the clip and its flags are safe. Measure it again.',
  insideLibrary: 'That path is inside the library itself, so nothing was written; choose another.',
  shippedUnreadable:
    'The exercise library that comes with Rackside can’t be read ({place}), but your own library is safe; install Rackside again or mend that file.',
  rubricUnfit:
    'This rubric can’t judge the exercise library ({place}), so nothing was graded by it; add what is missing.',
  noRubricVersion: 'There is no version {version} of the rubric here; nothing was changed.',
  folderGone: 'The folder “{folder}” does not exist, so nothing was written; choose another.',
  isFolder: '“{file}” is a folder, so nothing was written; give the name of a file.',
  notWritten:
    '“{file}” could not be written to “{folder}”, and nothing was changed there; check that the folder can be written to and has room.',
} as const;
