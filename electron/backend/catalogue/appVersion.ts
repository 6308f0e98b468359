import { existsSync, readFileSync } from 'node:fs';
import path from 'node:path';
import * as v from 'valibot';

const packageSchema = v.object({ version: v.string() });

/** The version of the app in a folder, `1.2.3`; `unknown` where the folder doesn't say. */
export function appVersion(appFolder: string): string {
  const file = path.join(appFolder, 'package.json');
  return existsSync(file) ? v.parse(packageSchema, JSON.parse(readFileSync(file, 'utf8'))).version : 'unknown';
}
