/** What can go wrong with any request: the disk, the connection to the backend, a request that is not understood. */
export const requests = {
  asWritten: '{sentence}',
  unforeseen: 'Something went wrong inside Rackside, so this was not done; your library is as it was before.',
  diskFull:
    'The disk that holds {place, select, folder {“{folder}”} other {the library’s folder}} is full, so nothing was saved; make room and try again.',
  diskRefused:
    '{why, select, readOnly {{place, select, folder {“{folder}”} other {The library’s folder}} is read-only, so this was not done; make it writable} noPermission {Rackside has no permission for {place, select, folder {“{folder}”} other {the library’s folder}}, so this was not done; allow access} other {The disk could not be read or written at {place, select, folder {“{folder}”} other {the library’s folder}}, so this was not done; check the disk}} and try again.',
  cancelled: 'Cancelled; nothing half done was left behind.',
  unknownRequest: 'Rackside does not know this request; nothing was changed.',
  refusedRequest: 'The request {request} was refused and nothing was changed: {field} is not valid ({reason}).',
  refusedRequestWhole: 'The request {request} was refused and nothing was changed: it is not valid ({reason}).',
  unknownQuestion: 'The window asked for something unknown; nothing was changed.',
  faultyQuestion: 'The window sent a faulty “{request}” request ({field}); nothing was changed.',
  strangeQuestion: 'The request did not come from the window itself and was refused.',
  notOpenedYet: 'The library has not been opened yet; try again in a moment.',
  closing: 'Rackside is closing, so this was not done; what was saved is safe.',
  stoppedOnce:
    'The part of Rackside that keeps the library stopped and was started again; what was saved is safe, so please do that once more.',
  keepsStopping:
    'The part of Rackside that keeps the library keeps stopping, but what was saved is safe; close Rackside and open it again.',
  jobGone: 'This job is no longer in the list; nothing was changed.',
  jobEnded: 'This job has already ended, so there was nothing to cancel.',
  jobNotInLine: 'This clip is no longer waiting to be measured, so its place was not changed.',
  jobNotFailed: 'This job has not failed, so there was nothing to try again.',
  noNextPage: 'The list can’t continue from there; start again at its first page.',
} as const;
