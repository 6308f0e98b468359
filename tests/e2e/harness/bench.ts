import { cp, mkdir, mkdtemp, rm } from 'node:fs/promises';
import os from 'node:os';
import path from 'node:path';
import { rootFolder } from '../../../electron/launch/folders.ts';
import { type App, launchApp, type Started } from './app.ts';
import { startAgain } from './command.ts';
import { finishedJob } from './jobs.ts';

/** What every scenario works with: a way to start the app, folders, a place for pictures. */
export type Bench = {
  /** What the app runs in, and what it needs to get a window. */
  readonly runtime: { readonly executable: string; readonly environment: NodeJS.ProcessEnv };
  /** A new empty folder for an app's profile and library. */
  readonly newFolder: (name: string) => string;
  /** Starts the app on a folder; it is ended with the run if the scenario does not do it. */
  readonly launch: (folder: string, measuring?: 'byItself' | 'onDemand', heard?: string) => Promise<App>;
  /** Starts the app in a way of one's own, on a folder for what answers its dialogs. */
  readonly launchBy: (start: () => Promise<Started>, folder: string) => Promise<App>;
  /** Starts the app a second time on a folder where it runs. */
  readonly launchAgain: (folder: string) => ReturnType<typeof startAgain>;
  /** A new folder with a library that holds the demo session; made by the app once, copied after that. */
  readonly demoFolder: (name: string) => Promise<string>;
  /** Saves a picture of the page among the run's artefacts; gives its path. */
  readonly picture: (app: App, name: string) => Promise<string>;
  /** From now on nothing is started any more. */
  readonly end: () => void;
  /** Ends what still runs and removes the folders. */
  readonly clear: () => Promise<void>;
};

/** Every picture has this size, whatever frame the display puts round the window. */
const viewport = { width: 1440, height: 900 };

export const artefactsFolder = path.join(rootFolder, 'artefacts');

export async function createBench(executable: string, environment: NodeJS.ProcessEnv): Promise<Bench> {
  const home = await mkdtemp(path.join(os.tmpdir(), 'rackside-e2e-'));
  await mkdir(artefactsFolder, { recursive: true });
  const running = new Set<App>();
  let folders = 0;
  let ended = false;
  let demo: Promise<string> | null = null;

  const newFolder = (name: string): string => {
    folders += 1;
    return path.join(home, `${folders}-${name}`);
  };
  const shown = async (app: App): Promise<App> => {
    running.add(app);
    await app.page.setViewportSize(viewport);
    return app;
  };
  const mayStart = (): boolean => !ended;
  const launch: Bench['launch'] = async (folder, measuring = 'onDemand', heard = undefined) =>
    shown(await launchApp({ executable, environment, folder, heard, mayStart, measuring }));
  const makeDemo = async (): Promise<string> => {
    const folder = newFolder('demo');
    const app = await launch(folder);
    const { jobId } = await app.ask('library.create', { contents: 'demo', voice: 'coach' });
    if (jobId !== null) await finishedJob(app, jobId);
    await app.close();
    return folder;
  };

  return {
    runtime: { executable, environment },
    newFolder,
    launch,
    launchBy: async (start, folder) => shown(await launchApp({ executable, environment, folder, mayStart, start })),
    launchAgain: (folder) => startAgain({ executable, environment, folder }),
    demoFolder: async (name) => {
      demo ??= makeDemo();
      const folder = newFolder(name);
      await cp(path.join(await demo, 'library'), path.join(folder, 'library'), { recursive: true });
      return folder;
    },
    picture: async (app, name) => {
      const file = path.join(artefactsFolder, `${name}.png`);
      await app.page.screenshot({ path: file, animations: 'disabled' });
      return file;
    },
    end: () => {
      ended = true;
    },
    clear: async () => {
      ended = true;
      for (const app of running) await app.kill().catch(() => {});
      await rm(home, { recursive: true, force: true });
    },
  };
}
