import type { CommandGroupId } from '../../english/desk/commandGroups.ts';

export const commandGroups: Readonly<Record<CommandGroupId, string>> = {
  scorecard: 'Wertungskarte',
  reps: 'Wiederholungen',
  measuring: 'Messen',
  picture: 'Bild',
  anywhere: 'Überall',
  arranging: 'Einheiten und Clips',
};
