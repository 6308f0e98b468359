import type { CommandGroupId } from '../../engine/wording/english/desk/commandGroups.ts';
import { statusState } from '../bridge/statusState.ts';
import { sayReasons } from '../words/sayReasons.ts';

/** Groups of the key sheet, in its order. */
export const commandGroups = [
  'scorecard',
  'reps',
  'measuring',
  'picture',
  'arranging',
  'anywhere',
] as const satisfies readonly CommandGroupId[];

/**
 * Everything of a command that people see or can choose, the same on every screen. What is read is said in the desk's
 * language at each call.
 */
export type CommandFace = {
  /** Kept in the window's profile beside a key that a person chose: never renamed. */
  readonly id: string;
  readonly group: CommandGroupId;
  /** What it does, as palette and key sheet say it. */
  readonly label: () => string;
  /** Words that it is found by besides those of its label. */
  readonly otherWords?: () => string;
  /** The usual chords, such as "Shift+F"; the first one is shown. Without any, a person can still choose one. */
  readonly keys: readonly string[];
  /** The words on its button; without them it has none. */
  readonly button?: () => string;
  /** Left out of the palette: it means something only while its key is held down. */
  readonly palette?: 'unlisted';
  /** Whether it may run in a session that came from another coach's Rackside, where nothing may change. */
  readonly readOnly: 'allowed' | 'refused';
};

/** What every screen can tell its commands. */
export type CommandContext = { readonly readOnly: boolean };

/** Whether a command can run now; if not, a sentence in the desk's language that says why. */
export type Availability = { readonly can: true } | { readonly can: false; readonly because: string };

/** A key pressed once, or its repetition while it is held down. */
export type Press = 'pressed' | 'held';

/** Something a person can ask of a screen, by key, palette or button. It knows only the context handed to it. */
export type Command<C extends CommandContext> = CommandFace & {
  /** Without it the command can always run. */
  readonly when?: (context: C) => Availability;
  readonly run: (context: C, press: Press) => void | Promise<void>;
  /** What else is to be done where its key was pressed and it can't run. */
  readonly onRefusedKey?: (context: C) => void;
};

export const available: Availability = { can: true };

export const unavailable = (because: string): Availability => ({ can: false, because });

/** The first condition that fails; available where none does. */
export const allOf = (...conditions: readonly Availability[]): Availability =>
  conditions.find((condition) => !condition.can) ?? available;

/** Whether a command can run in a context. */
export function availabilityOf<C extends CommandContext>(command: Command<C>, context: C): Availability {
  if (context.readOnly && command.readOnly === 'refused') return unavailable(sayReasons('fromAnotherCoach'));
  return command.when?.(context) ?? available;
}

/** A command together with the context of the screen that offers it. */
export type BoundCommand = {
  readonly face: CommandFace;
  readonly availability: () => Availability;
  /** Runs it; where it can't run now, the status line says why. */
  readonly run: (press: Press) => void;
  /** The same for its key. */
  readonly runByKey: (press: Press) => void;
};

/** Runs a command in a context; where it can't run now, the status line says why instead. */
export function runCommand<C extends CommandContext>(command: Command<C>, context: C, press: Press = 'pressed'): void {
  const availability = availabilityOf(command, context);
  const { refuse, forgetLast } = statusState.getState();
  if (!availability.can) return refuse(availability.because);
  forgetLast();
  void command.run(context, press);
}

/** Binds commands to the context they will run in. */
export const bindCommands = <C extends CommandContext>(
  commands: readonly Command<C>[],
  context: C,
): readonly BoundCommand[] =>
  commands.map((command) => ({
    face: command,
    availability: () => availabilityOf(command, context),
    run: (press) => runCommand(command, context, press),
    runByKey: (press) => {
      const { can } = availabilityOf(command, context);
      runCommand(command, context, press);
      if (!can) command.onRefusedKey?.(context);
    },
  }));

const known = new Map<string, CommandFace>();

/**
 * Makes the commands of a screen known to key sheet and key choice; screens may share commands. Throws where two
 * commands share an id or a usual key: that is a mistake in their definitions.
 */
export function registerCommands(commands: readonly CommandFace[]): void {
  for (const command of commands) {
    if (known.get(command.id) === command) continue;
    const rival = [...known.values()].find(
      ({ id, keys }) => id === command.id || keys.some((key) => command.keys.includes(key)),
    );
    if (rival !== undefined) throw new Error(`The commands "${rival.id}" and "${command.id}" share an id or a key.`);
    known.set(command.id, command);
  }
}

/** Every command of every screen, in the order they were registered. */
export const registeredCommands = (): readonly CommandFace[] => [...known.values()];
