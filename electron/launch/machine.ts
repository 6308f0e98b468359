import os from 'node:os';
import path from 'node:path';

/** As package.json has it. */
const appName = 'Rackside';

export type Machine = {
  readonly platform: string;
  /** Numeric user id; null where there is none. */
  readonly userId: number | null;
  readonly environment: Readonly<Record<string, string | undefined>>;
};

/** Whether a window can appear: on Linux only with a display server. */
export function hasDisplay(machine: Machine): boolean {
  if (machine.platform !== 'linux') return true;
  return [machine.environment.DISPLAY, machine.environment.WAYLAND_DISPLAY].some((name) => (name ?? '') !== '');
}

/**
 * Arguments for the runtime, before the app's folder. The browser's sandbox can't start for the root user of Linux and is
 * switched off there and nowhere else.
 */
export function runtimeArguments(machine: Machine): readonly string[] {
  return machine.platform === 'linux' && machine.userId === 0 ? ['--no-sandbox'] : [];
}

/** The environment for the runtime: without the variables that turn it into a plain Node. */
export function runtimeEnvironment(machine: Machine): Record<string, string | undefined> {
  const { ELECTRON_RUN_AS_NODE: _asNode, NODE_OPTIONS: _options, ...rest } = machine.environment;
  return { ...rest, RACKSIDE_NODE: process.execPath };
}

/** Where the window's runtime keeps what is the app's own: its profile, and the log of the window. */
export function profileFolder({ platform, environment }: Machine): string {
  const home = os.homedir();
  const { XDG_CONFIG_HOME: chosen, APPDATA: roaming } = environment;
  if (platform === 'darwin') return path.join(home, 'Library', 'Application Support', appName);
  if (platform === 'win32') return path.join(roaming ?? path.join(home, 'AppData', 'Roaming'), appName);
  return path.join(chosen !== undefined && path.isAbsolute(chosen) ? chosen : path.join(home, '.config'), appName);
}

/** This machine. */
export function thisMachine(): Machine {
  return { platform: process.platform, userId: process.getuid?.() ?? null, environment: process.env };
}

/**
 * Advice for when the runtime ended because its sandbox can't start: Linux systems that keep user namespaces from
 * ordinary programs need the runtime's own helper to belong to root.
 *
 * @param signal the signal that ended the runtime, null when it ended otherwise
 * @returns one sentence, or null when the end was of another kind
 */
export function sandboxTrouble(machine: Machine, executable: string, signal: string | null): string | null {
  if (machine.platform !== 'linux' || machine.userId === 0 || signal !== 'SIGTRAP') return null;
  const helper = path.join(path.dirname(executable), 'chrome-sandbox');
  return (
    'The window could not start, probably because this system does not let its sandbox use user namespaces; nothing was changed. Allow it once with: ' +
    `sudo chown root:root "${helper}" && sudo chmod 4755 "${helper}"`
  );
}
