import type { CommandLine, Session, WebContents, WebPreferences } from 'electron';
import { isOwnAddress, isPreviewAddress, parseAddress } from '../page/ownAddress.ts';
import { isForSoundAlone, type MediaWish, type MicrophoneGate } from './microphone.ts';

/** What the page may ask of the platform; everything else is refused. */
const granted: ReadonlySet<string> = new Set(['fullscreen', 'clipboard-sanitized-write']);

/** Schemes that never leave the machine: the app's own, and what a page makes in memory. */
const inside: ReadonlySet<string> = new Set(['app:', 'blob:', 'data:']);

/** Whether a request may go out; `tools` = the developer tools are allowed. */
export function mayLoad(address: string, tools: 'with-tools' | 'without-tools'): boolean {
  const scheme = parseAddress(address)?.protocol;
  if (scheme === undefined) return false;
  return inside.has(scheme) || (tools === 'with-tools' && scheme === 'devtools:');
}

/** Who asks for a permission, and what the platform tells of it. */
export type Wish = MediaWish & {
  readonly permission: string;
  readonly address: string | null | undefined;
  readonly isMainFrame: boolean;
};

/** Whether a permission is granted. Sound alone may be captured by the page itself, while the microphone's gate is open. */
export function mayUse({ permission, address, isMainFrame, ...wish }: Wish, microphone: MicrophoneGate): boolean {
  if (!isOwnAddress(address)) return false;
  if (permission === 'media') return isMainFrame && microphone.isOpen() && isForSoundAlone(wish);
  return granted.has(permission);
}

/** Locks a browser session: no permissions, no devices, no network; sound alone while a narration is recorded. */
export function lockSession(session: Session, tools: 'with-tools' | 'without-tools', microphone: MicrophoneGate): void {
  session.setPermissionRequestHandler((contents, permission, answer, details) => {
    const { isMainFrame } = details;
    const wish = 'mediaTypes' in details && details.mediaTypes !== undefined ? { mediaTypes: details.mediaTypes } : {};
    answer(mayUse({ permission, address: contents?.getURL(), isMainFrame, ...wish }, microphone));
  });
  session.setPermissionCheckHandler((_contents, permission, origin, { isMainFrame, mediaType }) =>
    mayUse({ permission, address: origin, isMainFrame, ...(mediaType && { mediaType }) }, microphone),
  );
  session.setDevicePermissionHandler(() => false);
  session.setSpellCheckerEnabled(false);
  session.webRequest.onBeforeRequest((details, answer) => answer({ cancel: !mayLoad(details.url, tools) }));
  session.on('will-download', (event) => event.preventDefault());
}

/**
 * Keeps a page where it is: no other address, no new window, and no embedded page except a previewed document. The page's own
 * line to other machines (WebRTC) gets no socket.
 */
export function lockContents(contents: WebContents): void {
  // The switch of the same name is not heeded by every runtime.
  contents.setWebRTCIPHandlingPolicy('disable_non_proxied_udp');
  contents.setWindowOpenHandler(() => ({ action: 'deny' }));
  contents.on('will-attach-webview', (event) => event.preventDefault());
  contents.on('will-navigate', (event) => event.preventDefault());
  contents.on('will-redirect', (event) => event.preventDefault());
  contents.on('will-frame-navigate', (event) => {
    if (event.isMainFrame || !isPreviewAddress(event.url)) event.preventDefault();
  });
}

/** Switches that keep the runtime itself off every network. */
export const offlineSwitches: readonly (readonly [name: string, value?: string])[] = [
  ['disable-background-networking'],
  ['disable-component-update'],
  ['disable-domain-reliability'],
  ['disable-sync'],
  ['disable-default-apps'],
  ['disable-breakpad'],
  ['no-pings'],
  ['dns-prefetch-disable'],
  ['no-proxy-server'],
  // Whatever still asks for a host finds none.
  ['host-resolver-rules', 'MAP * ~NOTFOUND'],
  ['force-webrtc-ip-handling-policy', 'disable_non_proxied_udp'],
  // A chooser in another process would note in the user's own list of recent files what was chosen.
  ['xdg-portal-required-version', '999'],
  [
    'disable-features',
    'AutofillServerCommunication,CertificateTransparencyComponentUpdater,MediaRouter,NetworkTimeServiceQuerying,OptimizationHints,Translate,WebRtcHideLocalIpsWithMdns',
  ],
];

/** Sets the switches; must run before the app is ready. */
export function goOffline(commandLine: CommandLine): void {
  for (const [name, value] of offlineSwitches) commandLine.appendSwitch(name, value);
}

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
