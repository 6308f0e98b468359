import path from 'node:path';
import { app, BrowserWindow, dialog, nativeTheme, screen } from 'electron';
import type { Language } from '../../../engine/language/language.ts';
import type { Log } from '../../backend/log/log.ts';
import { pageAddress } from '../../contract/addresses.ts';
import { isOwnAddress } from '../page/ownAddress.ts';
import { type DrawnWindow, mostDrawingMs, showWhenDrawn } from './lateWindow.ts';
import { pagePreferences } from './lockdown.ts';
import { sayDialogs } from './sayWindow.ts';

/** Colours of paper, as in the page's own style: what shows before the page has drawn itself. */
const paper = { light: '#efe8da', dark: '#211d17' };
const reloads = { most: 3 };

/**
 * Opens the desk's window in its language and shows it when the page has drawn itself. A page that crashes is loaded again, a few
 * times: everything it showed is in the library.
 */
export function openWindow(
  preload: string,
  language: () => Language,
  { log, logFile }: { readonly log: Log; readonly logFile: string },
): BrowserWindow {
  const { width, height } = screen.getPrimaryDisplay().workAreaSize;
  const window = new BrowserWindow({
    width: Math.min(1440, width),
    height: Math.min(900, height),
    minWidth: Math.min(960, width),
    minHeight: Math.min(600, height),
    show: false,
    backgroundColor: nativeTheme.shouldUseDarkColors ? paper.dark : paper.light,
    title: 'Rackside',
    icon: path.join(app.getAppPath(), 'renderer', 'pictures', 'mark.png'),
    webPreferences: pagePreferences(preload),
  });
  const drawn: DrawnWindow = {
    onDrawn: (listener) => void window.once('ready-to-show', listener),
    onClosed: (listener) => void window.once('closed', listener),
    isDestroyed: () => window.isDestroyed(),
    show: () => window.show(),
  };
  showWhenDrawn(drawn, {
    limitMs: mostDrawingMs,
    onLate: () => {
      log.error('the page has not drawn itself');
      void dialog.showMessageBox(window, { type: 'error', message: sayDialogs(language())('lateWindow', { logFile }) });
    },
  });
  // Where the page has left all the same, what it showed is in the library.
  window.webContents.on('did-navigate', (_event, address) => {
    if (isOwnAddress(address)) return;
    log.error('page left and is loaded again');
    void window.loadURL(pageAddress(language()));
  });
  let reloaded = 0;
  window.webContents.on('render-process-gone', (_event, { reason }) => {
    if (reason !== 'clean-exit') log.error('page stopped', { reason });
    if (reason === 'clean-exit' || reloaded >= reloads.most || window.isDestroyed()) return;
    reloaded += 1;
    process.stderr.write(`The page stopped (${reason}) and is loaded again\n`);
    void window.loadURL(pageAddress(language()));
  });
  void window.loadURL(pageAddress(language()));
  return window;
}
