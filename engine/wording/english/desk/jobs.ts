/** What is running, and whether all is saved. */
export const jobs = {
  savedState: 'Save status',
  doneState: 'Last action',
  saving: 'Saving',
  saved: 'Saved',
  notSaved: 'Not saved',
  dismiss: 'Dismiss',
  running: '{count, plural, one {# job} other {# jobs}}',
  failedCount: '{count} failed',
  restarted: 'Rackside restarted its library. Everything saved is still there.',

  waiting: 'waiting',
  runningState: 'running',
  done: 'done',
  failed: 'failed',
  cancelled: 'cancelled',
  progress: 'Progress: {job}',
  cancel: 'Cancel',
  tryAgain: 'Try again',

  title: 'Jobs',
  none: 'Nothing is running.',
  pause: 'Pause measuring',
  goOn: 'Resume measuring',
  failedJobs: 'Failed jobs',
  retryAll: 'Try all again',
  dismissAll: 'Dismiss all',
  cancelOf: 'Cancel: {job}',
  tryAgainOf: 'Try again: {job}',
  dismissOf: 'Dismiss: {job}',
  moveFirst: 'Move to the front: {job}',
  moveUp: 'Move up: {job}',
  moveDown: 'Move down: {job}',
  paused: 'Measuring is paused',

  endedSaid: '{state, select, done {Done} failed {Failed} other {Cancelled}}: {job}',
} as const;

export type JobsMessageId = keyof typeof jobs;
