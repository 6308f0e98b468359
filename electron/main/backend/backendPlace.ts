import path from 'node:path';

/** Where the backend lies. */
export type BackendPlace = {
  /** Holds `dist/`, `seeds/` and `migrations/`. */
  readonly appFolder: string;
  readonly bundle: string;
  /** A Node program, for a runtime whose own is too old. */
  readonly node: string;
};

/**
 * Where the backend lies: in a package beside the archive with the window's files, as plain files, because programs and a
 * Node of its own can't be read from inside one; in a checkout where everything lies.
 *
 * @param appPath what the runtime was given as the app: an archive (`app.asar`) or a folder
 * @param environment may name a Node program in a checkout; a package uses its own
 */
export function backendPlace(
  appPath: string,
  platform: string,
  environment: Readonly<Record<string, string | undefined>>,
): BackendPlace {
  const isPackaged = path.extname(appPath) === '.asar';
  const appFolder = isPackaged ? path.join(path.dirname(appPath), 'backend') : appPath;
  const named = isPackaged ? undefined : environment.RACKSIDE_NODE;
  const own = isPackaged
    ? path.join(appFolder, platform === 'win32' ? 'node.exe' : 'node')
    : path.join(appFolder, 'node_modules', '.bin', 'node');
  return { appFolder, bundle: path.join(appFolder, 'dist', 'backend.mjs'), node: named ?? own };
}
