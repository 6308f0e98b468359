/** Groups of commands, as the key sheet heads them. */
export const commandGroups = {
  scorecard: 'Scorecard',
  reps: 'Reps',
  measuring: 'Measuring',
  picture: 'Picture',
  anywhere: 'Anywhere',
  arranging: 'Sessions and clips',
} as const;

export type CommandGroupId = keyof typeof commandGroups;
