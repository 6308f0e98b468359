/** What can go wrong with a review file. */
export const reviewFiles = {
  reviewNotOpened: '“{file}” could not be opened; check the path and try again.',
  reviewNoFile: '“{file}” is not a file; give the path of a review file.',
  reviewTooLarge: '“{file}” is larger than the 5 MB a review file may have, so it was not read.',
  reviewNotText: '“{file}” is not UTF-8 text, so it can’t be a review file.',
  reviewNotJson: '“{file}” is not valid JSON, so it can’t be read as a review.',
  reviewFootageWrong: '“{file}” is not the footage that was reviewed, so the session was left out.',
  reviewFootageOutside:
    '“{file}” names footage outside its own folder, so nothing was imported: {paths}; allow {count, plural, one {it} other {them}}, or put the clips beside the review.',
  reviewFrameMisplaced:
    'The review names frame {frame} in clip “{clip}”, which its footage does not have, so the session was left out; check that it is the footage that was reviewed.',
  reviewSecondsMisplaced:
    'The review names {seconds} s in clip “{clip}”, which its footage does not have, so the session was left out; check that it is the footage that was reviewed.',
} as const;
