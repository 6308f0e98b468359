/** Colours of everything a trainee reads: ink on warm paper and one chalk accent; at night chalk on a dark board. */
export const paperColours = {
  light: {
    paper: '#fbf7ee',
    card: '#fffdf7',
    ink: '#22201c',
    soft: '#565047',
    rule: '#d8cfbd',
    chalk: '#1f5a70',
    edge: '#8a8172',
  },
  dark: {
    paper: '#1b1a17',
    card: '#24221e',
    ink: '#f1ebdd',
    soft: '#bdb4a4',
    rule: '#4a453b',
    chalk: '#93cbe0',
    edge: '#8f8778',
  },
} as const;

/** The colours of a scheme as custom properties of CSS: `--paper`, `--ink`, … */
export const colourVariables = (scheme: keyof typeof paperColours): string =>
  Object.entries(paperColours[scheme])
    .map(([name, colour]) => `--${name}: ${colour};`)
    .join(' ');
