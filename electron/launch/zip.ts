import { createRequire } from 'node:module';
import path from 'node:path';
import { pathToFileURL } from 'node:url';
import { rootFolder } from './folders.ts';

type Extractor = { readonly extract: (zip: string, options: { readonly dir: string }) => Promise<void> };

/** Unpacks a zip with the extractor that Electron's package brings, so that no system tool is needed. */
export async function extractZip(zip: string, folder: string): Promise<void> {
  const electronPackage = createRequire(path.join(rootFolder, 'package.json')).resolve('electron/package.json');
  const entry = createRequire(electronPackage).resolve('@electron-internal/extract-zip');
  const { extract }: Extractor = await import(pathToFileURL(entry).href);
  await extract(zip, { dir: folder });
}
