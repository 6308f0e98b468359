/** Around every screen. */
export const app = {
  opening: 'Opening your library…',
  tryAgain: 'Try again',
} as const;

export type AppMessageId = keyof typeof app;
