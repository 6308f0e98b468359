/** Where a command stands on the key sheet. */
export const commandGroups = ['Scorecard', 'Marking reps', 'Measuring', 'Picture', 'Anywhere'] as const;
export type CommandGroup = (typeof commandGroups)[number];

/** Everything of a command that people see or can choose, the same on every screen. */
export type CommandFace = {
  /** Kept in the window's profile beside a key that a person chose: never renamed. */
  readonly id: string;
  readonly group: CommandGroup;
  /** What it does, as palette and key sheet say it. */
  readonly label: string;
  /** The usual chords, such as "Shift+F"; the first one is shown. Without any, a person can still choose one. */
  readonly keys: readonly string[];
  /** The words on its button; without them it has none. */
  readonly button?: string;
  /** Left out of the palette: it means something only while its key is held down. */
  readonly palette?: 'unlisted';
  /** Whether it may run in a session that came from another desk, where nothing may change. */
  readonly readOnly: 'allowed' | 'refused';
};

/** What every screen can tell its commands. */
export type CommandContext = { readonly readOnly: boolean };

/** Whether a command can run now; if not, a sentence that says why. */
export type Availability = { readonly can: true } | { readonly can: false; readonly because: string };

/** A key pressed once, or its repetition while it is held down. */
export type Press = 'pressed' | 'held';

/** Something a person can ask of a screen, by key, palette or button. It knows only the context handed to it. */
export type Command<C extends CommandContext> = CommandFace & {
  /** Without it the command can always run. */
  readonly when?: (context: C) => Availability;
  readonly run: (context: C, press: Press) => void | Promise<void>;
};

export const available: Availability = { can: true };

export const unavailable = (because: string): Availability => ({ can: false, because });

const notMine = unavailable('This session came from another desk: it can be read here, not changed.');

/** The first condition that fails; available where none does. */
export const allOf = (...conditions: readonly Availability[]): Availability =>
  conditions.find((condition) => !condition.can) ?? available;

/** Whether a command can run in a context. */
export function availabilityOf<C extends CommandContext>(command: Command<C>, context: C): Availability {
  if (context.readOnly && command.readOnly === 'refused') return notMine;
  return command.when?.(context) ?? available;
}
