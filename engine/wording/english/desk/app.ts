/** Around every screen. */
export const app = {
  opening: 'Opening the library…',
  tryAgain: 'Try again',
  sessionUnread: 'This session could not be opened',
  toDesk: 'Back to the desk',
  /** Of the window; it names nobody, because the system keeps it where others read it. */
  windowTitle:
    '{screen, select, desk {Desk} inbox {Inbox} review {Review} letter {Letter} handover {Hand over} trainees {{voice, select, self {People} other {Trainees}}} bin {Bin} trainee {{voice, select, self {My training} other {Trainee}}} compare {Compare} agreement {Agreement} other {Start}} – Rackside',
} as const;

export type AppMessageId = keyof typeof app;
