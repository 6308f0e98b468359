import type { AppMessageId } from '../../english/desk/app.ts';

export const app: Readonly<Record<AppMessageId, string>> = {
  opening: 'Die Bibliothek wird geöffnet …',
  tryAgain: 'Noch einmal versuchen',
};
