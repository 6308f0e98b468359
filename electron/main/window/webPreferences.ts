import type { WebPreferences } from 'electron';

/**
 * How the page runs: in a sandbox, apart from the preload script, without Node and without anything it does not need. Every
 * window is made with these.
 *
 * @param preload path of the built preload script
 */
export function pagePreferences(preload: string): WebPreferences {
  return {
    preload,
    sandbox: true,
    contextIsolation: true,
    nodeIntegration: false,
    nodeIntegrationInWorker: false,
    nodeIntegrationInSubFrames: false,
    webSecurity: true,
    allowRunningInsecureContent: false,
    experimentalFeatures: false,
    webviewTag: false,
    navigateOnDragDrop: false,
    plugins: false,
    spellcheck: false,
    safeDialogs: true,
    // A clip goes on being marked while the window is behind another one.
    backgroundThrottling: false,
  };
}
