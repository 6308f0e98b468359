import type { CommandFace } from './command.ts';

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
