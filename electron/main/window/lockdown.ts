import type { Session, WebContents } from 'electron';
import { isOwnAddress, isPreviewAddress, parseAddress } from '../page/ownAddress.ts';

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

/** Whether a permission is granted to an address. */
export function mayUse(permission: string, address: string | null | undefined): boolean {
  return granted.has(permission) && isOwnAddress(address);
}

/** Locks a browser session: no permissions, no devices, no network. */
export function lockSession(session: Session, tools: 'with-tools' | 'without-tools'): void {
  session.setPermissionRequestHandler((contents, permission, answer) => answer(mayUse(permission, contents?.getURL())));
  session.setPermissionCheckHandler((_contents, permission, origin) => mayUse(permission, origin));
  session.setDevicePermissionHandler(() => false);
  session.setSpellCheckerEnabled(false);
  session.webRequest.onBeforeRequest((details, answer) => answer({ cancel: !mayLoad(details.url, tools) }));
  session.on('will-download', (event) => event.preventDefault());
}

/** Keeps a page where it is: no other address, no new window, and no embedded page except a previewed document. */
export function lockContents(contents: WebContents): void {
  contents.setWindowOpenHandler(() => ({ action: 'deny' }));
  contents.on('will-attach-webview', (event) => event.preventDefault());
  contents.on('will-navigate', (event) => event.preventDefault());
  contents.on('will-redirect', (event) => event.preventDefault());
  contents.on('will-frame-navigate', (event) => {
    if (event.isMainFrame || !isPreviewAddress(event.url)) event.preventDefault();
  });
}
