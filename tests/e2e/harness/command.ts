import { spawn } from 'node:child_process';
import path from 'node:path';
import { rootFolder } from '../../../electron/launch/folders.ts';
import { runtimeArguments, runtimeEnvironment, thisMachine } from '../../../electron/launch/machine.ts';

export type LaunchOptions = {
  readonly executable: string;
  readonly environment: NodeJS.ProcessEnv;
  /** Holds the app's profile and its library. */
  readonly folder: string;
  /** A sound file (WAV) that is heard in place of a microphone; without one there is none. */
  readonly heard?: string | undefined;
};

/** The file that answers the native dialogs of an app on a folder. */
export const chosenPathsFile = (folder: string): string => path.join(folder, 'chosen.json');

/** How the built app is started on a folder of its own. */
export function appCommand({ environment, folder, heard }: LaunchOptions): {
  readonly args: readonly string[];
  readonly env: NodeJS.ProcessEnv;
} {
  const machine = thisMachine();
  const args = [
    ...runtimeArguments(machine),
    `--user-data-dir=${path.join(folder, 'profile')}`,
    '--force-device-scale-factor=1',
    ...(heard === undefined
      ? []
      : ['--use-fake-device-for-media-stream', `--use-file-for-fake-audio-capture=${heard}`]),
    rootFolder,
  ];
  const env = {
    ...runtimeEnvironment(machine),
    ...environment,
    RACKSIDE_TEST: '1',
    RACKSIDE_CHOSEN_PATHS: chosenPathsFile(folder),
    RACKSIDE_LIBRARY: path.join(folder, 'library'),
  };
  return { args, env };
}

/** Starts the app once more on a folder where it runs already, and gives what that start says and its exit code. */
export function startAgain(options: LaunchOptions): Promise<{ readonly code: number | null; readonly said: string }> {
  const { args, env } = appCommand(options);
  return new Promise((resolve, reject) => {
    const child = spawn(options.executable, args, { env, stdio: ['ignore', 'ignore', 'pipe'] });
    let said = '';
    child.stderr.setEncoding('utf8').on('data', (text: string) => {
      said += text;
    });
    child.once('error', reject);
    child.once('close', (code) => resolve({ code, said }));
  });
}
