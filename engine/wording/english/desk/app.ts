/** Around every screen. */
export const app = {
  opening: 'Opening the library…',
  tryAgain: 'Try again',
} as const;

export type AppMessageId = keyof typeof app;
