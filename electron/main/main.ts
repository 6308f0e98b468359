import { existsSync } from 'node:fs';
import { writeFile } from 'node:fs/promises';
import path from 'node:path';
import { app, type BrowserWindow, Menu, protocol, session } from 'electron';
import type { Language } from '../../engine/language/language.ts';
import { closeToOthers } from '../backend/files/ownerAlone.ts';
import { errorFacts, openLog } from '../backend/log/log.ts';
import { channels } from '../contract/bridge.ts';
import type { AnyEvent } from '../contract/events.ts';
import { readBuildFacts } from './about/buildFacts.ts';
import { runtimeFacts } from './about/runtimeFacts.ts';
import { backendPlace } from './backend/backendPlace.ts';
import { startBackend } from './backend/startBackend.ts';
import { nativeDialogs } from './bridge/nativeDialogs.ts';
import { serveBridge } from './bridge/serveBridge.ts';
import { chooseFromFile, chosenPathsFile } from './bridge/systemDialogs.ts';
import { windowAnswers } from './bridge/windowAnswers.ts';
import { commandWords } from './command/commandWords.ts';
import { runCommand } from './command/runCommand.ts';
import { answer } from './page/answer.ts';
import { type Ending, type EndingParts, endingOf } from './window/ending.ts';
import { keepLanguage, readLanguage } from './window/keptLanguage.ts';
import { afterOpening, keepLibraries, readLibraries } from './window/keptLibraries.ts';
import { goOffline, lockContents, lockSession } from './window/lockdown.ts';
import { menuTemplate } from './window/menu.ts';
import { microphoneGate } from './window/microphone.ts';
import { filesNamedIn, keepNamedFiles } from './window/namedFiles.ts';
import { openWindow } from './window/openWindow.ts';
import { type OtherLibraryParts, openOtherLibrary } from './window/otherLibrary.ts';
import { portableFolder } from './window/portableFolder.ts';
import { forgetRecentFiles, keepRecentFilesApart } from './window/recentFiles.ts';

const tools = process.env.RACKSIDE_TOOLS === '1' ? 'with-tools' : 'without-tools';
const portable = portableFolder({
  executable: app.getPath('exe'),
  platform: process.platform,
  environment: process.env,
  exists: existsSync,
});
if (portable !== null) app.setPath('userData', portable);
let window: BrowserWindow | null = null;
let ending: Ending | null = null;
const chosenFolder = path.join(app.getPath('userData'), 'chosen-files');

goOffline(app.commandLine);
keepRecentFilesApart(process.platform, process.env, chosenFolder);
// As the root user of Linux the sandbox can't start, and asking for it would stop every child process.
if (!app.commandLine.hasSwitch('no-sandbox')) app.enableSandbox();
// Must happen before the app is ready, in the same turn.
protocol.registerSchemesAsPrivileged([
  { scheme: 'app', privileges: { standard: true, secure: true, supportFetchAPI: true, stream: true } },
]);
app.on('web-contents-created', (_event, contents) => lockContents(contents));

const named = keepNamedFiles(() => tellPage({ name: 'fileNamed', data: {} }));
const command = commandWords(process.argv, process.env);
if (command !== null) {
  void runCommand(app, backendPlace(app.getAppPath(), process.platform, process.env).appFolder, command);
} else if (app.requestSingleInstanceLock()) {
  app.on('second-instance', (_event, args, folder) => {
    showWindow();
    named.add(filesNamedIn(args, folder));
  });
  app.on('open-file', (event, file) => {
    event.preventDefault();
    named.add([file]);
  });
  named.add(filesNamedIn(process.argv, process.cwd()));
  app
    .whenReady()
    .then(open)
    .catch((error: unknown) => {
      // A program that shows nothing must not stay and keep the next start from showing something.
      process.stderr.write(`The window could not be opened: ${error instanceof Error ? error.stack : String(error)}\n`);
      app.exit(1);
    });
} else {
  process.stderr.write('Rackside is open already; its window was brought to the front.\n');
  app.quit();
}

function open(): void {
  // Whoever started the window hears that its program runs.
  const { RACKSIDE_STARTED: mark } = process.env;
  if (mark !== undefined) void writeFile(mark, '').catch(() => undefined);
  closeToOthers(app.getPath('userData'));
  forgetRecentFiles(process.platform, chosenFolder);
  app.on('quit', () => forgetRecentFiles(process.platform, chosenFolder));
  const appFolder = app.getAppPath();
  const dist = path.join(appFolder, 'dist');
  const usualLibrary = path.join(app.getPath('userData'), 'library');
  const librariesFile = path.join(app.getPath('userData'), 'libraries.json');
  const libraries = readLibraries(librariesFile);
  const libraryFolder = process.env.RACKSIDE_LIBRARY ?? libraries.open ?? usualLibrary;
  const logFile = path.join(app.getPath('userData'), 'rackside-window.log');
  const log = openLog(logFile);
  log.info('opened', { commit: readBuildFacts(appFolder)?.commit ?? 'checkout', runtime: process.versions.electron });
  process.on('uncaughtExceptionMonitor', (error) => log.error('the window’s host failed', errorFacts(error)));
  const noteLibraries = (error: unknown): void =>
    log.error('which library is opened could not be kept', errorFacts(error));
  // One that the environment names is opened this once.
  if (process.env.RACKSIDE_LIBRARY === undefined)
    void keepLibraries(librariesFile, afterOpening(libraries, path.resolve(libraryFolder), usualLibrary)).catch(
      noteLibraries,
    );
  const place = backendPlace(appFolder, process.platform, process.env);
  const chosenBefore = process.env.RACKSIDE_LIBRARY === undefined && libraries.open !== null;
  const library = chosenBefore ? ('known' as const) : undefined;
  const backend = startBackend(place, { libraryFolder: path.resolve(libraryFolder), library }, log);

  const microphone = microphoneGate();
  lockSession(session.defaultSession, tools, microphone);
  protocol.handle('app', (request) => answer(request, { folder: path.join(dist, 'renderer'), ask: backend.ask }));
  const languageFile = path.join(app.getPath('userData'), 'language.json');
  let language = readLanguage(languageFile, app.getLocale());
  const chosen = chosenPathsFile(process.env);
  const dialogs =
    chosen === null
      ? nativeDialogs(
          () => window,
          () => language,
        )
      : chooseFromFile(chosen);
  const other: OtherLibraryParts = {
    app,
    file: librariesFile,
    usual: usualLibrary,
    choose: () => dialogs.whichFolder('openLibrary'),
    args: process.argv.slice(1).filter((word) => filesNamedIn(['', word], '/').length === 0),
  };
  const showMenu = (): void => {
    const chooseLanguage = (chosen: Language): void => {
      void speak(chosen);
      tellPage({ name: 'languageChosen', data: { language: chosen } });
    };
    const template = menuTemplate({
      platform: process.platform,
      tools,
      language,
      chooseLanguage,
      recentLibraries: libraries.recent,
      openLibrary: (folder) => void openOtherLibrary(folder, other).catch(noteLibraries),
      showAbout: () => tellPage({ name: 'aboutAsked', data: {} }),
    });
    Menu.setApplicationMenu(Menu.buildFromTemplate(template));
  };
  const speak = async (chosen: Language): Promise<void> => {
    language = chosen;
    showMenu();
    await keepLanguage(languageFile, chosen).catch((error: unknown) => {
      log.error('the language of the desk could not be kept', errorFacts(error));
    });
  };
  showMenu();

  serveBridge({
    backend,
    windowAnswers: windowAnswers({
      dialogs,
      ask: backend.ask,
      keepLanguage: speak,
      runtime: () =>
        runtimeFacts({ appPath: appFolder, dataFolder: app.getPath('userData'), versions: process.versions }),
      namedFile: named.take,
      logFile,
    }),
    microphone,
    page: () => (window === null || window.isDestroyed() ? null : window.webContents),
  });

  window = openWindow(path.join(dist, 'preload.cjs'), () => language, { log, logFile });
  // A page that is loaded anew records nothing.
  window.webContents.on('did-start-navigation', ({ isMainFrame, isSameDocument }) => {
    if (isMainFrame && !isSameDocument) microphone.shut();
  });
  window.webContents.on('render-process-gone', () => microphone.shut());
  window.on('closed', () => {
    microphone.shut();
    window = null;
  });
  app.on('window-all-closed', () => app.quit());

  const parts: EndingParts = {
    close: () => backend.close(),
    quit: () => app.quit(),
    exit: () => app.exit(0),
    startAgain: () => app.relaunch(),
    after: (delayMs, run) => void setTimeout(run, delayMs),
  };
  const end = endingOf(parts);
  ending = end;
  app.on('will-quit', (event) => {
    if (end.mustWait()) event.preventDefault();
  });
}

function tellPage(event: AnyEvent): void {
  if (window !== null && !window.isDestroyed()) window.webContents.send(channels.event, event);
}

/** Another start wants the window: it comes to the front, or anew once this program has ended. */
function showWindow(): void {
  if (window === null) return ending?.wantedAgain();
  if (window.isMinimized()) window.restore();
  window.show();
  window.focus();
}
