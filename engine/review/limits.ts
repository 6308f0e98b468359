/** The most that a review holds: of entries in a session, of the others in an entry or, for reps, in a clip. */
export const mostInReview = { entries: 100, clips: 100, flags: 5000, ticks: 5000, reps: 500 } as const;
