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

/** This machine. */
export function thisMachine(): Machine {
  return { platform: process.platform, userId: process.getuid?.() ?? null, environment: process.env };
}
