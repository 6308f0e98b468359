import { statusState } from '../bridge/statusState.ts';
import {
  type Availability,
  availabilityOf,
  type Command,
  type CommandContext,
  type CommandFace,
  type Press,
} from './command.ts';

/** A command together with the context of the screen that offers it. */
export type BoundCommand = {
  readonly face: CommandFace;
  readonly availability: () => Availability;
  /** Runs it; where it can't run now, the status line says why. */
  readonly run: (press: Press) => void;
};

/** Runs a command in a context; where it can't run now, the status line says why instead. */
export function runCommand<C extends CommandContext>(command: Command<C>, context: C, press: Press = 'pressed'): void {
  const availability = availabilityOf(command, context);
  const { refuse, forgetRefusal } = statusState.getState();
  if (!availability.can) return refuse(availability.because);
  forgetRefusal();
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
  }));
